import type { Celsius } from '../../units/temperature';
import { boilOff } from './boilOff';
import { ASSUMED_CONDUCTIVITY, ASSUMED_CONTACT, FIBRE_HEAT, FIBRE_PER_M3, WATER_HEAT } from './bundle';
import { conduct, findSurfaceC, type Slab } from './conduct';

/** What is pressed, and how. */
export interface Press {
  /** The whole section between the plates, mm. */
  readonly thicknessMm: number;
  /** What the tool is set to, °C. */
  readonly plateC: Celsius;
  /** How warm the hair is before, °C. */
  readonly startC: Celsius;
  /** Where water boils here, °C. */
  readonly boilingC: Celsius;
  /** Water in the hair, kg for each kg of dry hair: about 0.1 is dry to the touch, 0.3 is full without a drop on it. */
  readonly regain: number;
  /** For so long the metal stays on any one place at each press, s. */
  readonly contactS: number;
  /** How often it is pressed; once where nothing is said. */
  readonly presses?: number;
}

/** One moment under the plates. */
export interface PressMoment {
  readonly atS: number;
  readonly surfaceC: number;
  readonly coreC: number;
  /** Share of the water that is left in the whole section, from 1 to 0; 0 where there was none. */
  readonly waterLeft: number;
  /** What went in so far through one side, J/m². */
  readonly heatJ: number;
}

/** How finely it is reckoned: cells from core to surface, and steps from beginning to end. */
export interface Fineness {
  readonly cells: number;
  readonly steps: number;
}

/**
 * Coarse enough to be drawn while a finger moves. Against twice as fine the end is off by less than 4 °C and 1 % of the water
 * whatever section is pressed at 200 °C, once or four times, but by up to 20 °C in the middle as its last drop goes; on the way the core by less
 * than 3 °C after the first twentieth, the surface by less than 4 °C on average: where water boils off there it may jump
 * by ten for a moment, since the water's edge goes from cell to cell (tests/evidence/press.test.ts).
 */
export const drawnFineness: Fineness = { cells: 48, steps: 960 };

/** From one press to the next on the same place, s. Assumed because a hand needs about that long to go back to the top of a section. */
export const ASSUMED_BETWEEN_PRESSES_S = 3;

/** How long does it all take, s, the pauses between presses with it? */
export const findPressTime = ({ contactS, presses = 1 }: Pick<Press, 'contactS' | 'presses'>): number =>
  presses * contactS + (presses - 1) * ASSUMED_BETWEEN_PRESSES_S;

/** Presses and the pauses between them, in their order: each with its steps, all of about one length. */
function listSpans(
  press: Press,
  steps: number,
): readonly { readonly seconds: number; readonly steps: number }[] {
  const whole = findPressTime(press);
  const share = (seconds: number) => ({ seconds, steps: Math.max(1, Math.round((steps * seconds) / whole)) });
  const { presses = 1 } = press;
  return Array.from({ length: 2 * presses - 1 }, (_, at) =>
    share(at % 2 === 0 ? press.contactS : ASSUMED_BETWEEN_PRESSES_S),
  );
}

const dryHeat = FIBRE_PER_M3 * FIBRE_HEAT;

/** Boils away what each cell cannot hold: changes their temperatures, water and heat in place, and gives their water together. */
function boilCells(hereC: number[], water: number[], heat: number[], boilingC: number): number {
  let left = 0;
  for (let at = 0; at < hereC.length; at += 1) {
    const here = boilOff({ hereC: hereC[at] as number, water: water[at] as number }, boilingC, dryHeat);
    hereC[at] = here.hereC;
    water[at] = here.water;
    heat[at] = dryHeat + here.water * WATER_HEAT;
    left += here.water;
  }
  return left;
}

/**
 * How hot do surface and core of a section get while the plates lie on it, once or several times?
 * One-dimensional conduction from both plates towards the middle, with the latent heat of the water that boils away; one
 * moment for each step, the first before anything went in, handed out one by one so that a slow tablet may pause. Between two presses heat only spreads inside, none leaves.
 * Sorption heat, steam that carries heat on, and hair that is squeezed thinner are left out. Checked by
 * tests/evidence/press.test.ts: the exact series of a slab, the balance of heat with evaporation, and second order.
 */
export function* stepPress(
  press: Press,
  { cells, steps }: Fineness = drawnFineness,
): Generator<PressMoment, void> {
  const pressed: Slab = {
    halfM: press.thicknessMm / 2000,
    conductivity: ASSUMED_CONDUCTIVITY,
    contact: ASSUMED_CONTACT,
    plateC: press.plateC,
  };
  const released: Slab = { ...pressed, contact: 0 };
  const full = FIBRE_PER_M3 * press.regain;
  const water = new Array<number>(cells).fill(full);
  const heat = new Array<number>(cells).fill(dryHeat + full * WATER_HEAT);
  let hereC: readonly number[] = new Array<number>(cells).fill(press.startC);
  let [atS, heatJ] = [0, 0];
  yield { atS, surfaceC: press.startC, coreC: press.startC, waterLeft: full === 0 ? 0 : 1, heatJ };
  for (const [index, span] of listSpans(press, steps).entries()) {
    const slab = index % 2 === 0 ? pressed : released;
    const seconds = span.seconds / span.steps;
    for (let step = 0; step < span.steps; step += 1) {
      const conducted = conduct(slab, hereC, heat, seconds);
      const after = [...conducted.afterC];
      heatJ += conducted.heatJ;
      const left = boilCells(after, water, heat, press.boilingC);
      hereC = after;
      atS += seconds;
      yield {
        atS,
        surfaceC: findSurfaceC(slab, cells, after[cells - 1] as number),
        coreC: after[0] as number,
        waterLeft: full === 0 ? 0 : left / cells / full,
        heatJ,
      };
    }
  }
}

/** All of them at once. */
export const pressHair = (press: Press, fineness?: Fineness): readonly PressMoment[] => [
  ...stepPress(press, fineness),
];

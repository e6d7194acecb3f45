/** A slab between two equal plates, halved at its middle: cells of one size, from the core (first) to the surface (last). */
export interface Slab {
  /** From core to surface, m. */
  readonly halfM: number;
  /** W/(m·K). */
  readonly conductivity: number;
  /** Between plate and surface, W/(m²·K). */
  readonly contact: number;
  readonly plateC: number;
}

const sizeOf = ({ halfM }: Slab, cells: number): number => halfM / cells;

/** From the middle of the outermost cell to the plate, W/(m²·K): half a cell of hair and the touch, one after the other; none where nothing touches. */
const reachPlate = (slab: Slab, sizeM: number): number =>
  1 / (1 / slab.contact + sizeM / (2 * slab.conductivity));

/** How much heat goes in at the surface, W/m², while its outermost cell is at this temperature? */
const findFlux = (slab: Slab, cells: number, outermostC: number): number =>
  reachPlate(slab, sizeOf(slab, cells)) * (slab.plateC - outermostC);

/** How hot is the surface itself, °C? It lies between its outermost cell and the plate; with no plate on it, it is as that cell. */
export const findSurfaceC = (slab: Slab, cells: number, outermostC: number): number =>
  outermostC + (findFlux(slab, cells, outermostC) * sizeOf(slab, cells)) / (2 * slab.conductivity);

/** Where the first of the two stages of a step ends: there both have the same matrix. Exact: 2 − √2. */
const GAMMA = 2 - Math.SQRT2;
/** The share of what flows at beginning, stage and end of a step in all that flows. Exact: √2 ÷ 4 twice, and the rest. */
const shares = { begin: Math.SQRT2 / 4, stage: Math.SQRT2 / 4, end: 1 - Math.SQRT2 / 2 } as const;

/** What flows into each cell from both sides, W/m². */
function findInflow(slab: Slab, hereC: readonly number[]): readonly number[] {
  const last = hereC.length - 1;
  const inner = slab.conductivity / sizeOf(slab, hereC.length);
  const fromPlate = findFlux(slab, hereC.length, hereC[last] as number);
  const inflow = new Array<number>(hereC.length).fill(0);
  for (let at = 0; at <= last; at += 1) {
    const here = hereC[at] as number;
    const fromLeft = at === 0 ? 0 : inner * ((hereC[at - 1] as number) - here);
    const fromRight = at === last ? fromPlate : inner * ((hereC[at + 1] as number) - here);
    inflow[at] = fromLeft + fromRight;
  }
  return inflow;
}

/** At which temperatures does each cell hold what is `known`, with `share` of what flows at these very temperatures? */
function solveCells(
  slab: Slab,
  known: readonly number[],
  stored: readonly number[],
  share: number,
): readonly number[] {
  const last = known.length - 1;
  const inner = (share * slab.conductivity) / sizeOf(slab, known.length);
  const outer = share * reachPlate(slab, sizeOf(slab, known.length));
  const upper = new Array<number>(known.length).fill(0);
  const solved = new Array<number>(known.length).fill(0);
  let upperLeft = 0;
  let solvedLeft = 0;
  for (let at = 0; at <= last; at += 1) {
    const left = at === 0 ? 0 : inner;
    const right = at === last ? outer : inner;
    const pivot = (stored[at] as number) + left + right - left * upperLeft;
    const told = (known[at] as number) + (at === last ? outer * slab.plateC : 0);
    solvedLeft = (told + left * solvedLeft) / pivot;
    upperLeft = at === last ? 0 : right / pivot;
    upper[at] = upperLeft;
    solved[at] = solvedLeft;
  }
  for (let at = last - 1; at >= 0; at -= 1) {
    solved[at] = (solved[at] as number) + (upper[at] as number) * (solved[at + 1] as number);
  }
  return solved;
}

/** After a step: temperatures, °C, and what went in at the surface, J/m². */
export interface Conducted {
  readonly afterC: readonly number[];
  readonly heatJ: number;
}

/**
 * One step of conduction: temperatures, °C, of each cell after so many seconds, from those before it and what a cubic
 * metre of each takes, J/(m³·K). No heat crosses the middle, and none the surface while nothing touches it. The first
 * 2 − √2 of a step by the trapezoidal rule (Crank and Nicolson, Proc. Camb. Phil. Soc. 43:50–67, 1947), the rest by differences
 * backwards (from memory: Bank and others, IEEE Trans. Electron Devices 32:1992–2007, 1985): of second order in step and
 * cell, and a cold section that meets a hot plate does not ring around its heat. What goes in at the surface is exactly
 * what the cells take up. Rows are solved in place: it is reckoned a thousand times while a finger lifts. Checked by
 * tests/evidence/press.test.ts against the exact series of a slab.
 */
export function conduct(
  slab: Slab,
  beforeC: readonly number[],
  heat: readonly number[],
  seconds: number,
): Conducted {
  const cells = beforeC.length;
  const sizeM = sizeOf(slab, cells);
  const stored = new Array<number>(cells).fill(0);
  const known = new Array<number>(cells).fill(0);
  const inflow = findInflow(slab, beforeC);
  for (let at = 0; at < cells; at += 1) {
    stored[at] = ((heat[at] as number) * sizeM) / seconds;
    known[at] = (stored[at] as number) * (beforeC[at] as number) + (GAMMA / 2) * (inflow[at] as number);
  }
  const stageC = solveCells(slab, known, stored, GAMMA / 2);
  const whole = GAMMA * (2 - GAMMA);
  for (let at = 0; at < cells; at += 1) {
    const mixedC = (stageC[at] as number) - (1 - GAMMA) ** 2 * (beforeC[at] as number);
    known[at] = ((stored[at] as number) * mixedC) / whole;
  }
  const afterC = solveCells(slab, known, stored, GAMMA / 2);
  const flux = (hereC: readonly number[]) => findFlux(slab, cells, hereC[cells - 1] as number);
  const mean = shares.begin * flux(beforeC) + shares.stage * flux(stageC) + shares.end * flux(afterC);
  return { afterC, heatJ: mean * seconds };
}

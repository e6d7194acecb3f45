import type { Celsius } from '../../units/temperature';
import { FIBRE_PER_M3, LATENT_HEAT } from './bundle';
import type { Press, PressMoment } from './press';

/**
 * Above which temperature of the hair itself does a press do much, °C? Assumed because ten cycles at 122 °C did little, and
 * the next that was measured, 144 °C, did (published: Dussaud, Rana, Lam, J. Cosmet. Sci. 64:119–131, 2013): where between
 * the two it begins nobody measured, and at the lower end no middle is called too cool that may do.
 */
export const ASSUMED_WORKS_ABOVE_C = 122;

/** Boiling that stops for less than this share of a press went on. Assumed because the water's edge goes from cell to cell, and the stairs of that are no pauses. */
const ASSUMED_BOILS_ON_SHARE = 0.1;

/** A stretch of the time, s. */
export interface Span {
  readonly fromS: number;
  readonly toS: number;
}

/** Temperatures are told in whole degrees, so half of one below counts as there, °C. Exact: rounding. */
const AS_SHOWN_C = 0.5;

/** What a press, or several, did to a section. */
export interface PressRead {
  /** At the end of the last press, °C. */
  readonly surfaceC: number;
  readonly coreC: number;
  /** When the middle first was hot enough for a press to do much, s; null where it never was. */
  readonly worksAtS: number | null;
  /** While water boiled away somewhere in it. */
  readonly boiling: readonly Span[];
  /** While the surface was at `tooHotC` or above. */
  readonly tooHot: readonly Span[];
  /** Share of its water that is left. */
  readonly waterLeft: number;
  /** Share of the heat that went in and left again with the steam. */
  readonly steamShare: number;
}

/**
 * In which stretches did this hold from one moment to the next? Two that are no further apart than `withinS` are one:
 * the edge of the water goes from cell to cell, and nothing boils while the next one gets warm.
 */
function listSpans(
  moments: readonly PressMoment[],
  withinS: number,
  holds: (before: PressMoment, after: PressMoment) => boolean,
): readonly Span[] {
  const spans: Span[] = [];
  for (const [at, after] of moments.entries()) {
    const before = moments[at - 1];
    if (before === undefined || !holds(before, after)) continue;
    const last = spans.at(-1);
    const goesOn = last !== undefined && before.atS - last.toS <= withinS;
    if (goesOn) spans.pop();
    spans.push({ fromS: goesOn ? last.fromS : before.atS, toS: after.atS });
  }
  return spans;
}

/** How long is it together, s? */
export const sumSpans = (spans: readonly Span[]): number =>
  spans.reduce((sum, { fromS, toS }) => sum + toS - fromS, 0);

/**
 * What do these moments tell? As exact as the moments are; a stretch begins and ends with one of their steps, and boiling
 * that stops for a moment went on.
 * Checked by tests/shared/heat/press/readPress.test.ts.
 */
export function readPress(
  { thicknessMm, regain, contactS }: Pick<Press, 'thicknessMm' | 'regain' | 'contactS'>,
  moments: readonly PressMoment[],
  tooHotC: Celsius,
): PressRead {
  const end = moments.at(-1);
  const waterLeft = end?.waterLeft ?? 0;
  const steamJ = (FIBRE_PER_M3 * regain * (1 - waterLeft) * LATENT_HEAT * thicknessMm) / 2000;
  return {
    surfaceC: end?.surfaceC ?? Number.NaN,
    coreC: end?.coreC ?? Number.NaN,
    worksAtS: moments.find(({ coreC }) => coreC > ASSUMED_WORKS_ABOVE_C)?.atS ?? null,
    boiling: listSpans(
      moments,
      contactS * ASSUMED_BOILS_ON_SHARE,
      (before, after) => after.waterLeft < before.waterLeft,
    ),
    tooHot: listSpans(
      moments,
      0,
      (before, after) => Math.min(before.surfaceC, after.surfaceC) >= tooHotC - AS_SHOWN_C,
    ),
    waterLeft,
    steamShare: end === undefined || end.heatJ === 0 || regain === 0 ? 0 : steamJ / end.heatJ,
  };
}

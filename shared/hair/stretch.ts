import { accept, type Result, refuse } from '../result';

/** What did the wet strand do when the pull was let go? */
export type StretchReturn = 'springsBack' | 'staysLong' | 'snaps';

/** From best to worst. */
export const stretchVerdicts = ['sound', 'slow', 'gummy', 'broken'] as const;
export type StretchVerdict = (typeof stretchVerdicts)[number];

/** Why a measured stretch was refused: the ruler was misread, or nothing was pulled. */
export type StretchRefusal = 'notFinite' | 'notALength' | 'shorterThanRest' | 'notPulled';

/**
 * From which stretch on does wet hair give without resistance? %
 * published: Caucasian hair, Negro hair, and wool: similarities and differences, J. Soc. Cosmet. Chem. 17:769–787,
 * 1966, Table I.
 */
export const POST_YIELD_FROM_PERCENT = 27;

/** At which stretch did wet hair break, on average? %. published: the same table. Never a target for a pull. */
export const MEAN_BREAK_PERCENT = 51;

/**
 * From how far on is a light pull too far? %
 * Assumed because a light pull is meant to end between 20 and 30 %, and sound hair starts to give only at 27 %: hair
 * that runs past 30 % without effort has lost its resistance.
 */
export const ASSUMED_LIGHT_PULL_LIMIT_PERCENT = 30;

function explainLengths(...lengthsMm: readonly number[]): StretchRefusal | undefined {
  if (!lengthsMm.every(Number.isFinite)) return 'notFinite';
  return lengthsMm.every((length) => length > 0) ? undefined : 'notALength';
}

/**
 * How far did it stretch?
 * % of the length at rest (curls pulled straight first), from two readings in millimetres; 0 or more, not rounded.
 * Refuses what cannot be read from a ruler; never refuses a stretch for being long. Exact.
 * Checked by tests/evidence/stretch.test.ts and tests/shared/hair/stretch.test.ts.
 */
export function computeExtensionPercent(restMm: number, pulledMm: number): Result<number, StretchRefusal> {
  const fault = explainLengths(restMm, pulledMm);
  if (fault) return refuse(fault);
  if (pulledMm < restMm) return refuse('shorterThanRest');
  return accept(((pulledMm - restMm) / restMm) * 100);
}

/**
 * How much of the stretch did it give back?
 * % of the stretch: 100 is all of it, 0 none. Shorter than at rest (a curl springing) counts as all, longer than when
 * pulled (it went on running) as none. Refuses a strand that was not pulled. Exact.
 * Checked by tests/evidence/stretch.test.ts and tests/shared/hair/stretch.test.ts.
 */
export function computeReturnPercent(
  restMm: number,
  pulledMm: number,
  releasedMm: number,
): Result<number, StretchRefusal> {
  const fault = explainLengths(restMm, pulledMm, releasedMm);
  if (fault) return refuse(fault);
  if (pulledMm <= restMm) return refuse('notPulled');
  const percent = ((pulledMm - releasedMm) / (pulledMm - restMm)) * 100;
  return accept(Math.min(Math.max(percent, 0), 100));
}

/** The verdict of a pull without a ruler: how it came back, and whether it went past the limit of a light pull. */
export function judgePull(returned: StretchReturn, hasGoneTooFar: boolean): StretchVerdict {
  if (returned === 'snaps') return 'broken';
  if (hasGoneTooFar) return 'gummy';
  return returned === 'staysLong' ? 'slow' : 'sound';
}

/**
 * What does the wet stretch say of this strand?
 * Snapped is broken. Past 30 % on a light pull is gummy, whatever it did afterwards. Stayed long is slow. The ruler
 * is optional. An observed stretch is never refused; only a figure that is none, or below zero, is.
 * Return matters more than length: heat lowers the stress and hardly the stretch at break (published: Christian et
 * al., J. Cosmet. Sci. 62:15–27, 2011, Table III). A worse observation never gives a better verdict.
 * Checked by tests/evidence/stretch.test.ts and tests/shared/hair/stretch.test.ts.
 */
export function judgeStretch(observed: {
  readonly returned: StretchReturn;
  readonly extensionPercent?: number;
}): Result<StretchVerdict, StretchRefusal> {
  const { returned, extensionPercent = 0 } = observed;
  if (!Number.isFinite(extensionPercent)) return refuse('notFinite');
  if (extensionPercent < 0) return refuse('shorterThanRest');
  return accept(judgePull(returned, extensionPercent > ASSUMED_LIGHT_PULL_LIMIT_PERCENT));
}

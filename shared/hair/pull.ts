import { accept, type Result, refuse } from '../result';
import type { NumberField } from '../units/numberField';
import {
  ASSUMED_LIGHT_PULL_LIMIT_PERCENT,
  computeExtensionPercent,
  computeReturnPercent,
  judgeStretch,
  type StretchRefusal,
  type StretchReturn,
  type StretchVerdict,
} from './stretch';

/**
 * From how far on is a light pull far enough to tell? %
 * Assumed because the station asks for a pull to between 20 and 30 %: what springs back from less was hardly pulled.
 */
export const ASSUMED_LIGHT_PULL_FROM_PERCENT = 20;

/**
 * How much of its stretch gives hair back that springs back? %
 * Assumed because two readings to a millimetre each leave a fifth of the lightest pull of the shortest strand in doubt,
 * and sound hair gives back all of it: published, cited in Practical Modern Hair Science (2012) ch. 7 p. 229, for hair
 * in water stretched by 15 % (repeat force −0.33 %). That it does so from 20 to 30 %, and as far as it is still wet on
 * the glass, is not published: this rests on it.
 */
export const ASSUMED_SPRINGS_BACK_FROM_PERCENT = 80;

/**
 * From which length at rest on does a ruler tell how a strand came back? mm
 * Assumed because the lightest pull of 50 mm is 10 mm, of which two readings to a millimetre leave a fifth in doubt, all
 * that ASSUMED_SPRINGS_BACK_FROM_PERCENT allows for; of 20 mm it is 4 mm, and the half.
 */
export const ASSUMED_SHORTEST_REST_MM = 50;

/** So far off may one reading be, mm. Assumed because the ruler has a mark for each millimetre and hair lies beside it. */
export const ASSUMED_READING_OFF_MM = 1;

/** The longest strand that is read, mm. Assumed because what is longer than a metre and a half is a slip. */
export const ASSUMED_LONGEST_STRAND_MM = 1500;

/**
 * Beyond which stretch was the ruler rather misread? %
 * Assumed because wet hair broke at 51 % on average (MEAN_BREAK_PERCENT), and twice that is hardly hair: it is asked
 * for anew, and kept if it was so, for what was seen is never refused.
 */
export const ASSUMED_SLIP_FROM_PERCENT = 100;

/** What may be read of a ruler: from 1 mm on, so that nothing at all is said to be too low. */
export const pullField = {
  quantity: 'millimetres',
  min: 1,
  max: ASSUMED_LONGEST_STRAND_MM,
} as const satisfies NumberField;

/** Three readings of one wet strand, in mm from where it is held: at rest, as far as it was pulled, let go. */
export interface PullReadings {
  readonly restMm: number;
  /** null: it snapped before this was read. */
  readonly pulledMm: number | null;
  /** null: it snapped. */
  readonly backMm: number | null;
}

/** What the ruler says of a strand: its readings, figures in % and the answers a person would tap; nothing is rounded. */
export interface PulledStrand extends PullReadings {
  /** null where nobody read how far it went. */
  readonly extensionPercent: number | null;
  /** null where it snapped. */
  readonly returnPercent: number | null;
  /** So many % more or less may that be, by two readings that are ASSUMED_READING_OFF_MM off; null where it snapped. */
  readonly returnOffPercent: number | null;
  readonly returned: StretchReturn;
  readonly hasGonePast: boolean;
  readonly verdict: StretchVerdict;
  /** It sprang back from so light a pull that this says nothing. */
  readonly isTooLight: boolean;
  /** It sprang back, and is so short that a millimetre more or less would say something else. */
  readonly isTooShort: boolean;
  /** The longest reading, pulled or let go, beyond the rest, %: where that is hardly hair, it is asked for anew. */
  readonly longestPercent: number | null;
  readonly isDoubtful: boolean;
}

/** Up to where is it to be pulled? The two marks, mm from where it is held; there is no mark beyond the second. */
export const findPullMarksMm = (restMm: number): { readonly fromMm: number; readonly toMm: number } => ({
  fromMm: restMm * (1 + ASSUMED_LIGHT_PULL_FROM_PERCENT / 100),
  toMm: restMm * (1 + ASSUMED_LIGHT_PULL_LIMIT_PERCENT / 100),
});

/**
 * What do three readings say?
 * A stretch is never refused for being long; a reading that is no length, and a pull that ends before the rest, are.
 * Where nothing was stretched, or nobody read how far, there is no return to read. Exact. Too light and too short are
 * said of a strand that sprang back and of no other: what stays long, ran past the limit or snapped is never withheld.
 * Checked by tests/shared/hair/pull.test.ts.
 */
export function readPull(readings: PullReadings): Result<PulledStrand, StretchRefusal> {
  const figures = computeFigures(readings);
  if (!figures.ok) return figures;
  const { extensionPercent, returnPercent, longestPercent } = figures.value;
  const returned = nameReturn(returnPercent);
  const verdict = judgeStretch({ returned, ...(extensionPercent === null ? {} : { extensionPercent }) });
  if (!verdict.ok) return refuse(verdict.error);
  const isSound = verdict.value === 'sound';
  return accept({
    ...readings,
    ...figures.value,
    isDoubtful: longestPercent !== null && longestPercent > ASSUMED_SLIP_FROM_PERCENT,
    returned,
    hasGonePast: extensionPercent !== null && extensionPercent > ASSUMED_LIGHT_PULL_LIMIT_PERCENT,
    verdict: verdict.value,
    isTooLight: isSound && extensionPercent !== null && extensionPercent < ASSUMED_LIGHT_PULL_FROM_PERCENT,
    isTooShort: isSound && readings.restMm < ASSUMED_SHORTEST_REST_MM,
  });
}

type Figures = Pick<
  PulledStrand,
  'extensionPercent' | 'returnPercent' | 'returnOffPercent' | 'longestPercent'
>;

function computeFigures({ restMm, pulledMm, backMm }: PullReadings): Result<Figures, StretchRefusal> {
  if (pulledMm === null) {
    const rest = computeExtensionPercent(restMm, restMm);
    if (!rest.ok) return rest;
    if (backMm !== null) return refuse('notPulled');
    return accept({
      extensionPercent: null,
      returnPercent: null,
      returnOffPercent: null,
      longestPercent: null,
    });
  }
  const extension = computeExtensionPercent(restMm, pulledMm);
  if (!extension.ok) return extension;
  const back = backMm === null ? accept<number | null>(null) : computeReturnPercent(restMm, pulledMm, backMm);
  if (!back.ok) return back;
  const longest = computeExtensionPercent(restMm, Math.max(pulledMm, backMm ?? pulledMm));
  if (!longest.ok) return longest;
  return accept({
    extensionPercent: extension.value,
    returnPercent: back.value,
    returnOffPercent: back.value === null ? null : ((2 * ASSUMED_READING_OFF_MM) / (pulledMm - restMm)) * 100,
    longestPercent: longest.value,
  });
}

function nameReturn(returnPercent: number | null): StretchReturn {
  if (returnPercent === null) return 'snaps';
  return returnPercent >= ASSUMED_SPRINGS_BACK_FROM_PERCENT ? 'springsBack' : 'staysLong';
}

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
 * Assumed because sound hair gives back all of it, and two readings to a millimetre each leave a fifth of the lightest
 * pull of 5 cm in doubt.
 */
export const ASSUMED_SPRINGS_BACK_FROM_PERCENT = 80;

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
  readonly pulledMm: number;
  /** null: it snapped. */
  readonly backMm: number | null;
}

/** What the ruler says of a strand: its readings, figures in % and the answers a person would tap; nothing is rounded. */
export interface PulledStrand extends PullReadings {
  readonly extensionPercent: number;
  /** null where it snapped. */
  readonly returnPercent: number | null;
  readonly returned: StretchReturn;
  readonly hasGonePast: boolean;
  readonly verdict: StretchVerdict;
  /** It sprang back from so light a pull that this says nothing. */
  readonly isTooLight: boolean;
  /** The longest reading, pulled or let go, beyond the rest, %: where that is hardly hair, it is asked for anew. */
  readonly longestPercent: number;
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
 * Where nothing was stretched there is no return to read. Exact.
 * Checked by tests/shared/hair/pull.test.ts.
 */
export function readPull({ restMm, pulledMm, backMm }: PullReadings): Result<PulledStrand, StretchRefusal> {
  const extension = computeExtensionPercent(restMm, pulledMm);
  if (!extension.ok) return extension;
  const back = backMm === null ? accept<number | null>(null) : computeReturnPercent(restMm, pulledMm, backMm);
  if (!back.ok) return back;
  const returned = nameReturn(back.value);
  const verdict = judgeStretch({ returned, extensionPercent: extension.value });
  if (!verdict.ok) return refuse(verdict.error);
  const longest = computeExtensionPercent(restMm, Math.max(pulledMm, backMm ?? pulledMm));
  if (!longest.ok) return longest;
  return accept({
    restMm,
    pulledMm,
    backMm,
    extensionPercent: extension.value,
    longestPercent: longest.value,
    isDoubtful: longest.value > ASSUMED_SLIP_FROM_PERCENT,
    returnPercent: back.value,
    returned,
    hasGonePast: extension.value > ASSUMED_LIGHT_PULL_LIMIT_PERCENT,
    verdict: verdict.value,
    isTooLight: returned === 'springsBack' && extension.value < ASSUMED_LIGHT_PULL_FROM_PERCENT,
  });
}

function nameReturn(returnPercent: number | null): StretchReturn {
  if (returnPercent === null) return 'snaps';
  return returnPercent >= ASSUMED_SPRINGS_BACK_FROM_PERCENT ? 'springsBack' : 'staysLong';
}

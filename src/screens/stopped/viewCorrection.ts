import type { Consultation } from '../../../machines/consultation/consultation';
import type { Settings } from '../../../shared/records/settings';
import type { Correctable, WayStep } from '../../../shared/records/steps';
import { zones } from '../../../shared/records/zones';
import type { Voided } from '../../words/en/leaving';
import { tryOut } from '../isOpenNow';
import { screenOf, stepOf } from '../screenOf';

export interface CorrectionView {
  /** Where she would be then; null where another stop still holds her. */
  readonly backAt: WayStep | null;
  readonly isStillStopped: boolean;
  readonly voided: readonly Voided[];
}

/**
 * What would taking this answer back ask again, and what would it void? Tried out on the real chart, written nowhere;
 * null where it would not be taken. Checked in tests/src/screens/stopped/correction.test.tsx.
 */
export function viewCorrection(
  consultation: Consultation,
  answer: Correctable,
  settings: Settings,
  nowMs: number,
): CorrectionView | null {
  const raw = { type: 'CORRECTED', answers: { answer, code: 'wrongTap', words: '-' } } as const;
  const after = tryOut(consultation, raw, settings, nowMs);
  if (after === null) return null;
  const was = consultation.state.context.facts;
  const is = after.state.context.facts;
  const isVoided: Readonly<Record<Voided, boolean>> = {
    strands: zones.some((zone) => was.strands[zone] === 'current' && is.strands[zone] !== 'current'),
    decision: was.decided !== null && is.decided === null,
    bowl: zones.some((zone) => was.bowls[zone] === 'weighed' && is.bowls[zone] !== 'weighed'),
  };
  return {
    backAt: stepOf(after.state),
    isStillStopped: screenOf(after.state) === 'stopped',
    voided: (Object.keys(isVoided) as Voided[]).filter((each) => isVoided[each]),
  };
}

import type { UnitSettings } from '../units/quantity';
import type { RawEvent } from './classify';
import { askForms } from './forms/asked';
import type { AskedToday } from './nothingNew';
import type { ConsultationRecord } from './record';
import { askSteps } from './steps';
import { writeForm } from './writeForm';

/**
 * Back on another day, and all else as it was told: which taps is that?
 * Reactions, scalp and age as asked today, every step confirmed again, and the tested strands kept. For whoever stands
 * beyond the client step; what stops her today stops there, and a strand that no longer counts is tested again.
 * Checked in tests/seeds/fullHeadLightening.test.ts.
 */
export const tellAnotherDay = (
  { answers, strands }: ConsultationRecord,
  { reactions, scalp, ageBand }: Pick<AskedToday, 'reactions' | 'scalp' | 'ageBand'>,
  units: UnitSettings,
): readonly RawEvent[] => [
  { type: 'REOPENED', answers: { step: 'client' } },
  {
    type: 'ANSWERED',
    step: 'client',
    answers: {
      ...writeForm(askForms.client, answers.client ?? {}, units),
      reactions,
      scalp,
      ageBand,
    },
  },
  ...askSteps.map((step): RawEvent => ({ type: 'STEP_CONFIRMED', answers: { step } })),
  ...(strands.length > 0 ? [{ type: 'OUTCOME_KEPT' } as const] : []),
];

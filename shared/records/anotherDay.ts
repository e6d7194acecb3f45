import type { UnitSettings } from '../units/quantity';
import type { RawEvent } from './classify';
import { askForms } from './forms/asked';
import type { AskedToday } from './nothingNew';
import type { ConsultationRecord } from './record';
import { askSteps, type WayStep } from './steps';
import { writeForm } from './writeForm';

/** Of the steps that ask, those that were behind her. */
const listBehind = (here: WayStep) => {
  const at = (askSteps as readonly WayStep[]).indexOf(here);
  return at === -1 ? askSteps : askSteps.slice(0, at);
};

/**
 * Back on another day, and all else as it was told: which taps is that?
 * Reactions, scalp and age as asked today, the steps behind her confirmed again, and beyond the strand test the tested
 * strands kept. For whoever stands beyond the client step, at `here`; what stops her today stops there, and a strand
 * that no longer counts is tested again.
 * Checked in tests/seeds/fullHeadLightening.test.ts.
 */
export const tellAnotherDay = (
  { answers, strands }: ConsultationRecord,
  { reactions, scalp, ageBand }: Pick<AskedToday, 'reactions' | 'scalp' | 'ageBand'>,
  units: UnitSettings,
  here: WayStep,
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
  ...listBehind(here).map((step): RawEvent => ({ type: 'STEP_CONFIRMED', answers: { step } })),
  ...(strands.length > 0 && (here === 'decision' || here === 'mix')
    ? [{ type: 'OUTCOME_KEPT' } as const]
    : []),
];

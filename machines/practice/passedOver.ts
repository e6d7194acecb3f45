import type { ConsultationEvent } from '../../shared/records/event';
import type { ConsultationRecord } from '../../shared/records/record';
import type { Settings } from '../../shared/records/settings';
import { type AskStep, askSteps } from '../../shared/records/steps';
import { listFindingsShown } from './finish';
import { judgeFlags } from './flagsSeen';
import type { Flag, Lesson } from './lesson';
import type { PracticeRecord } from './practiceEvent';
import { readTruth } from './readTruth';
import { findStepOf } from './toldTruly';

/** With which step is everything asked that shows this flag? null where no question shows it. */
function findLastStep({ asks }: Flag): AskStep | null {
  const steps = asks.map(findStepOf).filter((step) => step !== null);
  return askSteps.findLast((step) => steps.includes(step)) ?? null;
}

/**
 * Which flags did the answers of this step leave standing, that nobody was told of yet? For the hint when the step is done.
 * Checked in tests/machines/practice/passedOver.test.ts.
 */
export function listPassedOver(
  lesson: Lesson,
  { hints }: Pick<PracticeRecord, 'hints'>,
  { record, log }: { readonly record: ConsultationRecord; readonly log: readonly ConsultationEvent[] },
  step: AskStep,
  settings: Settings,
): readonly Flag[] {
  const truth = readTruth(lesson);
  if (!truth.ok) return [];
  const flags = lesson.flags.filter((flag) => findLastStep(flag) === step && !hints.includes(flag.id));
  const shown = listFindingsShown(log, settings);
  return judgeFlags(flags, [], { record, truth: truth.value, settings, shown })
    .filter(({ how }) => how === 'missed')
    .map(({ flag }) => flag);
}

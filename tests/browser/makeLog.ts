import { advance, beginConsultation, type Consultation } from '../../machines/consultation/consultation';
import type { StoryStep } from '../../seeds/story';
import { classify, type RawEvent } from '../../shared/records/classify';
import type { Settings } from '../../shared/records/settings';

/** What "3 days ago" on the screen comes to at this moment. */
const sayTime = (raw: RawEvent, atMs: number): RawEvent =>
  raw.answers?.putOnAtMs === '3d'
    ? ({ ...raw, answers: { ...raw.answers, putOnAtMs: atMs - 3 * 24 * 3_600_000 } } as RawEvent)
    : raw;

/** A story through judge and chart alone, as the station would take it; throws at the first refusal. */
export function playAlone(
  steps: readonly StoryStep[],
  startAtMs: number,
  settings: Settings,
  id = 'story',
): Consultation {
  let atMs = startAtMs;
  return steps.reduce((consultation, { afterMs, by, raw }) => {
    atMs += afterMs;
    const context = { settings, settingsId: 0, atMs, by, inheritsStop: false };
    const event = classify(consultation.record, sayTime(raw, atMs), context);
    const next = event.ok ? advance(consultation, event.value) : event;
    if (!next.ok) throw new Error(`${raw.type}: ${JSON.stringify(next.error)}`);
    return next.value;
  }, beginConsultation(id));
}

/** The steps before the first of this type. */
export const stepsBefore = (steps: readonly StoryStep[], type: string): readonly StoryStep[] =>
  steps.slice(
    0,
    steps.findIndex(({ raw }) => raw.type === type),
  );

/** How long these steps take. */
export const lengthOf = (steps: readonly StoryStep[]): number =>
  steps.reduce((sum, { afterMs }) => sum + afterMs, 0);

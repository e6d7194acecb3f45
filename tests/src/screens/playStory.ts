import { advance, beginConsultation, type Consultation } from '../../../machines/consultation/consultation';
import { endsIronedWet } from '../../../seeds/endsIronedWet';
import { classify, type RawEvent } from '../../../shared/records/classify';
import type { Settings } from '../../../shared/records/settings';

/** A consultation so far, and the moment of its last tap. */
export interface Played {
  readonly consultation: Consultation;
  readonly atMs: number;
}

export const settings: Settings = endsIronedWet.settings;

/** One more tap, judged and let through as the station would; a refused one breaks the test off. */
export function tap(played: Played, afterMs: number, raw: RawEvent, by = 'Opal'): Played {
  const atMs = played.atMs + afterMs;
  const event = classify(played.consultation.record, raw, {
    settings,
    settingsId: 0,
    by,
    atMs,
    inheritsStop: false,
  });
  if (!event.ok) throw new Error(`${raw.type} refused: ${JSON.stringify(event.error)}`);
  const next = advance(played.consultation, event.value);
  if (!next.ok) throw new Error(`${raw.type} not now: ${JSON.stringify(played.consultation.state.value)}`);
  return { consultation: next.value, atMs };
}

const isThe = (step: (typeof endsIronedWet.steps)[number], type: string, zone?: string): boolean =>
  step.raw.type === type && (zone === undefined || step.raw.answers?.zone === zone);

/** The story of the ends ironed wet, up to and including its first tap of this type (and zone). */
export function playUntil(
  type: RawEvent['type'] | 'whole',
  zone?: string,
  instead?: Record<string, unknown>,
): Played {
  const last = endsIronedWet.steps.findIndex((step) => isThe(step, type, zone));
  if (last === -1 && type !== 'whole') throw new Error(`the story has no ${type}`);
  const steps = type === 'whole' ? endsIronedWet.steps : endsIronedWet.steps.slice(0, last + 1);
  return steps.reduce<Played>(
    (played, { afterMs, by, raw }, index) =>
      tap(
        played,
        afterMs,
        index === last && instead !== undefined
          ? ({ ...raw, answers: { ...raw.answers, ...instead } } as RawEvent)
          : raw,
        by,
      ),
    { consultation: beginConsultation('story'), atMs: endsIronedWet.startAtMs },
  );
}

/** The story up to the first time a step was confirmed. */
export function playUntilConfirmed(step: string): Played {
  const last = endsIronedWet.steps.findIndex(
    (each) => each.raw.type === 'STEP_CONFIRMED' && each.raw.answers?.step === step,
  );
  return endsIronedWet.steps
    .slice(0, last + 1)
    .reduce<Played>((played, { afterMs, by, raw }) => tap(played, afterMs, raw, by), {
      consultation: beginConsultation('story'),
      atMs: endsIronedWet.startAtMs,
    });
}

const soundOutcome = (zone: string): RawEvent => ({
  type: 'OUTCOME_RECORDED',
  answers: { zone, fibre: 'sound', stretch: 'springsBack', level: '7', wentPast30: 'no', evenness: 'even' },
});

const bowl = (zone: string, developerPercent: string): RawEvent => ({
  type: 'BOWL_WEIGHED',
  answers: {
    zone,
    shades: [{ shade: 'Sandbar', parts: '1' }],
    colourG: '40',
    line: 'Sandbar powder',
    batch: 'B-17',
    developerPercent,
    ratio: '2',
    heat: 'none',
    minutes: '15',
  },
});

/** The same client, had both strands come out sound: a bowl is on the lengths and another one on the ends. */
export const playBothOn = (): Played => playBoth('on');

/** The same, as far as the decision for both. */
export const playBothDecided = (): Played => playBoth('decided');

function playBoth(until: 'decided' | 'on'): Played {
  const minute = 60_000;
  const off = (zone: string): RawEvent => ({ type: 'STRAND_TAKEN_OFF', answers: { zone, why: 'timeIsUp' } });
  const events: readonly RawEvent[] = [
    off('ends'),
    off('lengths'),
    soundOutcome('ends'),
    soundOutcome('lengths'),
    { type: 'DECIDED', answers: { decision: 'smallerLift' } },
    bowl('lengths', '3'),
    { type: 'BOWL_APPLIED', answers: { zone: 'lengths', skinFirst: 'calm' } },
    bowl('ends', '3'),
    { type: 'BOWL_APPLIED', answers: { zone: 'ends', skinFirst: 'calm' } },
  ];
  const played = until === 'on' ? events : events.slice(0, -4);
  return played.reduce<Played>(
    (before, raw, index) => tap(before, index === 0 ? 25 * minute : minute, raw),
    playUntil('STRAND_STARTED', 'lengths'),
  );
}

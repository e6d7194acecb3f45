import fc from 'fast-check';
import {
  advance,
  beginConsultation,
  type Consultation,
} from '../../../../machines/consultation/consultation';
import { classify, type RawEvent } from '../../../../shared/records/classify';
import { last } from '../../../shared/records/returning';
import { nameWay } from '../chartUnderTest';
import { type Deviation, deviationNames, deviations } from './deviations';
import { goOnward, type Scene } from './onward';
import { dayMs, hourMs, minuteMs, settingsById, startAtMs, tap } from './rawTaps';

/** One step as it is drawn: shrinks towards going onward after a few minutes. */
export interface DrawnStep {
  readonly does: 'onward' | 'setClock' | 'changeSettings' | Deviation;
  readonly after: 'minutes' | 'anHour' | 'aDay' | 'aMonth';
  readonly detail: number;
}

export interface DrawnWalk {
  readonly bowlsMeant: number;
  readonly inheritsStop: boolean;
  /** She is back for the gloss of last time, and somebody said so. */
  readonly isBack?: boolean;
  readonly steps: readonly DrawnStep[];
}

const waitMs = { minutes: 3 * minuteMs, anHour: hourMs, aDay: dayMs, aMonth: 29 * dayMs } as const;
/** By how much somebody sets the tablet's clock back; what a walk does with it is announced. */
const shiftsMs = [-minuteMs * 20, -hourMs, -3 * dayMs, -9 * dayMs] as const;
/** Two strands in three lie until their time is up; the others come off after a few minutes. */
const untilDueMs = 20 * minuteMs;
/** Half of those who were away come back on another day. */
const overnightMs = 15 * hourMs;

/** Refused nearly everywhere, and therefore drawn more often. */
const rarelyTaken = ['extendClock', 'extendClock', 'extendClock', 'lookStinging', 'discard'] as const;

/** Biased towards the way through: a uniform walk never weighs a bowl, and would prove nothing. */
export const drawnWalks: fc.Arbitrary<DrawnWalk> = fc.record({
  bowlsMeant: fc.constantFrom(1, 2, 3, 4),
  inheritsStop: fc.oneof(
    { weight: 9, arbitrary: fc.constant(false) },
    { weight: 1, arbitrary: fc.constant(true) },
  ),
  steps: fc.array(
    fc.record({
      does: fc.oneof(
        { weight: 30, arbitrary: fc.constant('onward' as const) },
        { weight: 14, arbitrary: fc.constantFrom(...deviationNames, ...rarelyTaken) },
        { weight: 6, arbitrary: fc.constantFrom('setClock' as const, 'changeSettings' as const) },
      ),
      after: fc.oneof(
        { weight: 120, arbitrary: fc.constant('minutes' as const) },
        { weight: 2, arbitrary: fc.constantFrom('anHour' as const, 'aDay' as const) },
        { weight: 1, arbitrary: fc.constant('aMonth' as const) },
      ),
      detail: fc.nat(11),
    }),
    { minLength: 45, maxLength: 100, size: 'max' },
  ),
});

/** What came of one drawn step. */
export interface LivedStep {
  readonly raw: RawEvent;
  readonly isAccepted: boolean;
}

export interface LivedWalk {
  readonly consultation: Consultation;
  readonly inheritsStop: boolean;
  readonly steps: readonly LivedStep[];
  /** The consultation after each accepted event. */
  readonly stages: readonly Consultation[];
}

/** Lives a drawn walk, event for event through the door and the chart. Stops at an ending. */
export function live({ bowlsMeant, inheritsStop, isBack, steps }: DrawnWalk): LivedWalk {
  const lastTime = isBack === true ? last : null;
  let consultation = beginConsultation('walk');
  let [atMs, settingsId] = [startAtMs, 0];
  const lived: LivedStep[] = [];
  const stages: Consultation[] = [];
  for (const { does, after, detail } of steps) {
    if (consultation.record.ended !== null) break;
    atMs += waitMs[after];
    const settings = settingsById[settingsId] ?? settingsById[0];
    if (settings === undefined) throw new Error('no settings');
    if (does === 'changeSettings') {
      settingsId = detail % settingsById.length;
      continue;
    }
    const shiftMs = shiftsMs[detail % shiftsMs.length] ?? 0;
    if (does === 'setClock') atMs += shiftMs;
    if (does === 'onward' && nameWay(consultation.state) === 'strandTest.processing' && detail > 3) {
      atMs += untilDueMs;
    }
    if (does === 'onward' && consultation.record.parked !== null && detail > 5) atMs += overnightMs;
    const raw = choose(does, { consultation, settings, atMs, bowlsMeant, lastTime }, detail, shiftMs);
    const context = { settings, settingsId, atMs, by: 'Opal', inheritsStop, lastTime };
    const event = classify(consultation.record, raw, context);
    const next = event.ok ? advance(consultation, event.value) : event;
    lived.push({ raw, isAccepted: next.ok });
    if (!next.ok) {
      // A clock that nobody could set was not set.
      if (does === 'setClock') atMs -= shiftMs;
      continue;
    }
    consultation = next.value;
    stages.push(consultation);
  }
  return { consultation, inheritsStop, steps: lived, stages };
}

const choose = (does: DrawnStep['does'], scene: Scene, detail: number, shiftMs: number): RawEvent => {
  if (does === 'setClock') return tap('CLOCK_CORRECTED', { shiftMs: String(shiftMs) });
  if (does === 'onward' || does === 'changeSettings') return goOnward(scene);
  return deviations[does](scene, detail);
};

/** A walk to read, a line for each event that was accepted. */
export const tellWalk = ({ consultation, inheritsStop }: LivedWalk): string =>
  [
    `settings by id, inherits a stop: ${inheritsStop}`,
    ...consultation.log.map(
      ({ type, atMs, settingsId, payload }) =>
        `${new Date(atMs).toISOString()} (${settingsId}) ${type} ${JSON.stringify(payload)}`,
    ),
  ].join('\n');

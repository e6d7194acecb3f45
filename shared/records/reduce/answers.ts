import { rules } from '../../judgement/rules';
import { msPerMinute } from '../../units/time';
import { endClocks } from '../clock';
import { findDampSince, findStretchAt } from '../damp';
import type { PayloadOf } from '../event';
import type { Answers } from '../forms/asked';
import { findTodayAt } from '../passedDay';
import { formHistoryKey } from '../planKey';
import type { BowlRecord, ConsultationRecord, Stamp } from '../record';
import { listAbsoluteAnswers } from '../standingStop';
import type { AskStep, Correctable } from '../steps';
import type { Reducers } from './reducers';
import { undecide } from './undecide';

/** How long the incompatibility test stands: common practice, no source; the maker's method comes first. */
export const INCOMPATIBILITY_MS = 30 * msPerMinute;

const makeIncompatibilityClock = (stamp: Stamp, count: number) => ({
  id: `incompatibility-${count}`,
  kind: 'incompatibility' as const,
  zone: null,
  startedAtMs: stamp.atMs,
  looks: null,
  dueAtMs: stamp.atMs + INCOMPATIBILITY_MS,
  limitAtMs: stamp.atMs + INCOMPATIBILITY_MS,
  lookedAtMs: [],
  acknowledgedAtMs: null,
  endedAtMs: null,
});

/**
 * The step without the answers that stopped it, which are asked anew; what else was said stays. All of it goes where
 * every answer was the wrong client's, and where no single one stops.
 */
const forgetAbsolute = (answers: Answers, step: AskStep, code: string): Answers => {
  const { [step]: said, ...others } = answers;
  const wrong = listAbsoluteAnswers(step, answers);
  if (said === undefined || wrong.length === 0 || code === 'wrongClient') return others;
  return {
    ...answers,
    [step]: Object.fromEntries(Object.entries(said).filter(([name]) => !wrong.includes(name))),
  };
};

/** Takes the answer back that was wrong, so that it is asked anew, and with it what somebody judged of that step. */
const takeBack = (
  record: ConsultationRecord,
  { answer, code }: PayloadOf<'CORRECTED'>,
): Partial<ConsultationRecord> => {
  if (answer === 'inherited') return { inheritedStop: false };
  if (answer === 'incompatibility') return { incompatibility: null };
  if (answer === 'skinTest' && code === 'wrongClient') {
    const notHers = record.skinTest?.skinTestId;
    return {
      skinTest: null,
      notHerSkinTests: [...record.notHerSkinTests, ...(notHers === undefined ? [] : [notHers])],
    };
  }
  if (answer === 'skinTest') {
    return record.skinTest?.seen === 'reaction'
      ? { skinTest: { ...record.skinTest, seen: 'notReadYet' } }
      : { skinTest: null };
  }
  return {
    answers: forgetAbsolute(record.answers, answer, code),
    overrides: record.overrides.filter(({ rule }) => rules[rule].step !== answer),
  };
};

/** Nothing that was tested under a stop stands for anything; a test of the cutting goes on, unless it was the answer. */
const voidStrands = (
  record: ConsultationRecord,
  answer: Correctable,
  atMs: number,
): Partial<ConsultationRecord> => ({
  strands: record.strands.map((strand) => ({ ...strand, isVoid: true })),
  clocks: endClocks(record.clocks, atMs, ({ kind }) =>
    kind === 'incompatibility' ? answer === 'incompatibility' : true,
  ),
  ...undecide(record),
});

/** A stop leaves nothing standing by: what was weighed is to be thrown away. */
const throwWeighed = (bowls: readonly BowlRecord[]): readonly BowlRecord[] =>
  bowls.map((bowl) => (bowl.state === 'weighed' ? { ...bowl, state: 'thrown' } : bowl));

/** A reading keeps what a clock set back added to the age of the same test, here or in its own record. */
const findOlderByMs = ({ skinTest }: ConsultationRecord, noted: PayloadOf<'SKIN_TEST_NOTED'>): number =>
  Math.max(noted.olderByMs ?? 0, skinTest?.putOnAtMs === noted.putOnAtMs ? skinTest.olderByMs : 0);

/** What is said of the client and her hair before, between and after strands. */
export const answerReducers = {
  OPENED: (_record, event, stamp) => ({
    ticket: event.payload.ticket,
    chair: event.payload.chair,
    stylist: event.payload.stylist === '' ? stamp.by : event.payload.stylist,
    opened: stamp,
    inheritedStop: event.tokens.inherits,
    lastTime: event.payload.lastTime ?? null,
  }),
  ANSWERED: (record, { payload, tokens, atMs }) => {
    const overrides = record.overrides.filter(
      ({ rule }) => rules[rule].step === null || tokens.rules.includes(rule),
    );
    return {
      answers: { ...record.answers, [payload.step]: payload.answers },
      ...(payload.step === 'client' ? { todayAtMs: findTodayAt(record, payload.answers, atMs) } : {}),
      ...(payload.step === 'feelHair'
        ? {
            dampSinceMs: findDampSince(record, payload.answers, atMs),
            stretchAtMs: findStretchAt(record, payload.answers, atMs),
          }
        : {}),
      ...(tokens.bearsOnPlan ? undecide({ ...record, overrides }) : { overrides }),
      ...(tokens.said === 'absolute' ? { bowls: throwWeighed(record.bowls) } : {}),
    };
  },
  STEP_CONFIRMED: () => ({}),
  REOPENED: undecide,
  SKIN_TEST_NOTED: (record, { payload }, stamp) => ({
    skinTest: {
      ...payload,
      ...stamp,
      readAtMs: payload.readAtMs ?? stamp.atMs,
      olderByMs: findOlderByMs(record, payload),
    },
    ...(payload.seen === 'reaction' ? { bowls: throwWeighed(record.bowls) } : {}),
  }),
  OVERRIDDEN: (record, event, stamp) => ({
    overrides: [...record.overrides, { ...event.payload, ...stamp }],
    judged: [...record.judged, { ...event.payload, ...stamp }],
  }),
  CORRECTED: (record, event, stamp) => {
    const back = takeBack(record, event.payload);
    return {
      ...back,
      corrections: [...record.corrections, { ...event.payload, ...stamp }],
      ...(event.tokens.voids ? voidStrands({ ...record, ...back }, event.payload.answer, stamp.atMs) : {}),
    };
  },
  INCOMPATIBILITY_STARTED: (record, _event, stamp) => ({
    incompatibility: {
      ...stamp,
      seen: 'running',
      historyKey: formHistoryKey(record.answers),
      keptSinceMs: null,
    },
    clocks: [
      ...endClocks(record.clocks, stamp.atMs, ({ kind }) => kind === 'incompatibility'),
      makeIncompatibilityClock(
        stamp,
        1 + record.clocks.filter(({ kind }) => kind === 'incompatibility').length,
      ),
    ],
  }),
  INCOMPATIBILITY_READ: (record, event, stamp) => ({
    incompatibility: {
      ...stamp,
      seen: event.payload.seen,
      historyKey: formHistoryKey(record.answers),
      keptSinceMs: stamp.atMs,
    },
    clocks: endClocks(record.clocks, stamp.atMs, ({ kind }) => kind === 'incompatibility'),
    ...(event.payload.seen === 'reacted' ? { bowls: throwWeighed(record.bowls) } : {}),
  }),
} satisfies Partial<Reducers>;

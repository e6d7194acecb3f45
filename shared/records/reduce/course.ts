import { shiftClock } from '../clock';
import { formPlanKey } from '../planKey';
import { findBowl, findStrand, type StrandRecord } from '../record';
import type { Reducers } from './reducers';
import { undecide } from './undecide';

/** Setting the clock back makes no outcome younger; where two clocks disagree, it counts as the older. */
const ageOutcome = (strand: StrandRecord, shiftMs: number): StrandRecord =>
  strand.outcome === null
    ? strand
    : { ...strand, outcome: { ...strand.outcome, atMs: strand.outcome.atMs + Math.min(0, shiftMs) } };

/** Where the consultation goes: decided, parked, looked at, ended, and what the clock did. */
export const courseReducers = {
  DECIDED: (record, { payload, tokens }, stamp) => ({
    decision: {
      ...stamp,
      decision: payload.decision,
      suggested: tokens.suggested,
      planKey: formPlanKey(record.answers),
    },
  }),
  PLAN_CHANGED: undecide,
  LOOKED: (record, { payload }, stamp) => {
    const look = { ...payload, ...stamp };
    const clockId =
      payload.of === 'strand'
        ? findStrand(record, payload.zone)?.clock
        : findBowl(record, payload.zone)?.clock;
    return {
      strands: record.strands.map((strand) =>
        payload.of === 'strand' && strand.clock === clockId
          ? { ...strand, looks: [...strand.looks, look] }
          : strand,
      ),
      bowls: record.bowls.map((bowl) =>
        payload.of === 'head' && bowl.clock === clockId ? { ...bowl, looks: [...bowl.looks, look] } : bowl,
      ),
      clocks: record.clocks.map((clock) =>
        clock.id === clockId
          ? { ...clock, lookedAtMs: [...clock.lookedAtMs, stamp.atMs], acknowledgedAtMs: stamp.atMs }
          : clock,
      ),
    };
  },
  PARKED: (_record, { payload }) => ({ parked: { untilAtMs: payload.untilAtMs } }),
  RESUMED: () => ({ parked: null }),
  REACTION_SUSPECTED: (_record, _event, stamp) => ({ reaction: { ...stamp, signs: [], care: null } }),
  NO_REACTION: () => ({ reaction: null }),
  REACTION_RECORDED: (_record, { payload }, stamp) => ({
    reaction: { ...stamp, signs: payload.signs, care: null },
  }),
  CARE_GIVEN: (record, { payload }, stamp) => ({
    reaction: record.reaction && { ...record.reaction, care: payload.care },
    ended: { ...stamp, how: 'reaction', reason: null },
  }),
  CALLED_OFF: (_record, { payload }, stamp) => ({
    ended: { ...stamp, how: 'calledOff', reason: payload.reason },
  }),
  WE_SAID_NO: (_record, { payload }, stamp) => ({
    ended: { ...stamp, how: 'weSaidNo', reason: payload.reason },
  }),
  CLIENT_SAID_NO: (_record, { payload }, stamp) => ({
    ended: { ...stamp, how: 'clientSaidNo', reason: payload.reason },
  }),
  CLOCK_EXTENDED: (record, { payload }) => ({
    clocks: record.clocks.map((clock) =>
      clock.id === payload.clock
        ? { ...clock, dueAtMs: clock.dueAtMs + payload.minutes * 60_000, acknowledgedAtMs: null }
        : clock,
    ),
  }),
  ALARM_ACKNOWLEDGED: (record, { payload }, stamp) => ({
    clocks: record.clocks.map((clock) =>
      clock.id === payload.clock ? { ...clock, acknowledgedAtMs: stamp.atMs } : clock,
    ),
  }),
  CLOCK_CORRECTED: (record, { payload }) => ({
    clocks: record.clocks.map((clock) => shiftClock(clock, payload.shiftMs)),
    skinTest: record.skinTest && {
      ...record.skinTest,
      putOnAtMs: record.skinTest.putOnAtMs + payload.shiftMs,
    },
    strands: record.strands.map((strand) => ageOutcome(strand, payload.shiftMs)),
  }),
} satisfies Partial<Reducers>;

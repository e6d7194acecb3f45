import { msPerMinute } from '../../units/time';
import { type Clock, moveClock, shiftClock } from '../clock';
import type { LastTime } from '../lastTime';
import { askAnew } from '../passedDay';
import { formPlanKey } from '../planKey';
import {
  type BowlRecord,
  type ConsultationRecord,
  findBowl,
  findStrand,
  type SkinTestRecord,
  type StrandRecord,
} from '../record';
import { isRinsedSinceTold } from '../rinsedSinceTold';
import type { Reducers } from './reducers';
import { undecide } from './undecide';

/** Setting the clock back makes no strand younger: when it came off is moved with the clock. */
const ageStrand = (strand: StrandRecord, shiftMs: number): StrandRecord =>
  strand.ended === null
    ? strand
    : { ...strand, ended: { ...strand.ended, atMs: strand.ended.atMs + shiftMs } };

/** The same for the strands of last time, which may still be carried. */
const ageLastTime = (lastTime: LastTime, shiftMs: number): LastTime => ({
  ...lastTime,
  zones: lastTime.zones.map((zone) => ({ ...zone, strandAtMs: zone.strandAtMs + shiftMs })),
});

/**
 * Where two clocks disagree, a skin test has waited for the shorter time and lapses after the longer; a reading stamped
 * ahead of the corrected clock has to be done again.
 */
const doubtSkinTest = (skinTest: SkinTestRecord, shiftMs: number, atMs: number): SkinTestRecord => ({
  ...skinTest,
  olderByMs: skinTest.olderByMs - shiftMs,
  seen: skinTest.seen === 'nothing' && skinTest.readAtMs > atMs ? 'notReadYet' : skinTest.seen,
});

const noteLook = (clock: Clock, atMs: number): Clock => ({
  ...clock,
  lookedAtMs: [...clock.lookedAtMs, atMs],
  acknowledgedAtMs: atMs,
});

const isOnHead = ({ kind, endedAtMs }: Clock): boolean => kind === 'head' && endedAtMs === null;

/** Hair that breaks has had its time, whatever the maker allows, and all that is on that head with it: it is rinsed now. */
const endTime = (clock: Clock, atMs: number): Clock => ({
  ...clock,
  dueAtMs: Math.min(clock.dueAtMs, atMs),
  limitAtMs: Math.min(clock.limitAtMs, atMs),
  acknowledgedAtMs: null,
});

/** No water ran after all: what is on has been on since it was begun. */
const putBackOn = (record: ConsultationRecord): Pick<ConsultationRecord, 'bowls' | 'clocks'> => {
  const back = record.bowls.filter((bowl) => isRinsedSinceTold(record, bowl));
  return {
    bowls: record.bowls.map((bowl) =>
      back.includes(bowl) ? { ...bowl, state: 'on' as const, rinsedSeq: null } : bowl,
    ),
    clocks: record.clocks.map((clock) =>
      back.some((bowl) => bowl.clock === clock.id) ? { ...clock, endedAtMs: null } : clock,
    ),
  };
};

/** Is it on, or may it be on still, since water was only said to run over it after a reaction was told? */
const mayBeOn = (record: ConsultationRecord, bowl: BowlRecord): boolean =>
  record.modelVersion >= 5 && (bowl.state === 'on' || isRinsedSinceTold(record, bowl));

/**
 * The clocks after the tablet's own was moved. One that was ended by water since a reaction was told goes with it, so that
 * both the water and, should it be on after all, the bowl have run for as long as they did.
 */
const shiftClocks = (record: ConsultationRecord, shiftMs: number): readonly Clock[] =>
  record.clocks.map((clock) =>
    record.bowls.some((bowl) => bowl.clock === clock.id && mayBeOn(record, bowl))
      ? moveClock(clock, shiftMs)
      : shiftClock(clock, shiftMs),
  );

const shiftTime = (atMs: number | null, shiftMs: number): number | null =>
  atMs === null ? null : atMs + shiftMs;

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
      ...(payload.stinging === 'yes'
        ? { reaction: record.reaction ?? { ...stamp, signs: [], care: null } }
        : {}),
      strands: record.strands.map((strand) =>
        payload.of === 'strand' && strand.clock === clockId
          ? { ...strand, looks: [...strand.looks, look] }
          : strand,
      ),
      bowls: record.bowls.map((bowl) =>
        payload.of === 'head' && bowl.clock === clockId ? { ...bowl, looks: [...bowl.looks, look] } : bowl,
      ),
      clocks: record.clocks.map((clock) => {
        const looked = clock.id === clockId ? noteLook(clock, stamp.atMs) : clock;
        return payload.hair === 'breaking' && isOnHead(clock) ? endTime(looked, stamp.atMs) : looked;
      }),
    };
  },
  PARKED: (_record, { payload, atMs }) => ({
    // Whoever is away is not under the dryer.
    dampSinceMs: null,
    parked: { atMs, untilAtMs: payload.untilAtMs },
  }),
  RESUMED: (record, { tokens }) => ({
    parked: null,
    ...(tokens.asksAnew ? { ...askAnew(record), stretches: [] } : {}),
  }),
  REACTION_SUSPECTED: (_record, _event, stamp) => ({ reaction: { ...stamp, signs: [], care: null } }),
  NO_REACTION: (record, { payload }, stamp) => {
    const { reaction, dismissed } = record;
    return {
      ...(payload.stillOn === 'yes' ? putBackOn(record) : {}),
      reaction: null,
      dismissed:
        reaction === null
          ? dismissed
          : [
              ...dismissed,
              { ...stamp, why: payload.why, suspected: { atMs: reaction.atMs, by: reaction.by } },
            ],
    };
  },
  REACTION_RECORDED: ({ reaction }, { payload }, stamp) => ({
    reaction:
      reaction === null || reaction.signs.length === 0
        ? { ...stamp, signs: payload.signs, care: null }
        : { ...reaction, signs: addSigns(reaction.signs, payload.signs) },
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
        ? { ...clock, dueAtMs: clock.dueAtMs + payload.minutes * msPerMinute, acknowledgedAtMs: null }
        : clock,
    ),
  }),
  ALARM_ACKNOWLEDGED: (record, { payload }, stamp) => ({
    clocks: record.clocks.map((clock) =>
      clock.id === payload.clock ? { ...clock, acknowledgedAtMs: stamp.atMs } : clock,
    ),
  }),
  CLOCK_CORRECTED: (record, { payload, atMs }) => ({
    skinTest: record.skinTest && doubtSkinTest(record.skinTest, payload.shiftMs, atMs),
    clocks: shiftClocks(record, payload.shiftMs),
    // A cutting is looked at again so long after it was read, whatever the wall said in between.
    incompatibility: record.incompatibility && {
      ...record.incompatibility,
      keptSinceMs: shiftTime(record.incompatibility.keptSinceMs, payload.shiftMs),
    },
    dampSinceMs: shiftTime(record.dampSinceMs, payload.shiftMs),
    todayAtMs: shiftTime(record.todayAtMs, payload.shiftMs),
    stretchAtMs: shiftTime(record.stretchAtMs, payload.shiftMs),
    strands: record.strands.map((strand) => ageStrand(strand, payload.shiftMs)),
    lastTime: record.lastTime && ageLastTime(record.lastTime, payload.shiftMs),
    // Neither a bowl that waits or is on nor a client who is away grows younger with the clock.
    bowls: record.bowls.map((bowl) => ({
      ...bowl,
      atMs: bowl.atMs + (bowl.state === 'weighed' || mayBeOn(record, bowl) ? payload.shiftMs : 0),
      allOnAtMs: shiftTime(bowl.allOnAtMs, payload.shiftMs),
    })),
    parked: record.parked && { ...record.parked, atMs: record.parked.atMs + payload.shiftMs },
  }),
} satisfies Partial<Reducers>;

/** What was seen before and what shows now, each once; "not clear yet" goes as soon as anything is. */
const addSigns = (before: readonly string[], now: readonly string[]): readonly string[] => {
  const all = [...new Set([...before, ...now])];
  return all.length === 1 ? all : all.filter((sign) => sign !== 'unclear');
};

import { listCarried } from '../../judgement/carried';
import { msPerMinute } from '../../units/time';
import { type Clock, endClocks } from '../clock';
import type { StrandAnswers } from '../forms/test';
import { findSigns, findWorst, gradeOutcome } from '../gradeOutcome';
import type { LastZone } from '../lastTime';
import { formPlanKey } from '../planKey';
import { type ConsultationRecord, findStrand, type Stamp, type StrandRecord } from '../record';
import type { Zone } from '../zones';
import type { Reducers } from './reducers';
import { undecide } from './undecide';

/** A strand is first looked at after two minutes: common practice, no source. */
export const FIRST_LOOK_MS = 2 * msPerMinute;

const makeStrandClock = (id: string, answers: StrandAnswers, stamp: Stamp): Clock => ({
  id,
  kind: 'strand',
  zone: answers.zone,
  startedAtMs: stamp.atMs,
  looks: { firstAfterMs: FIRST_LOOK_MS, everyMs: Number(answers.lookEveryMin) * msPerMinute },
  dueAtMs: stamp.atMs + answers.minutes * msPerMinute,
  limitAtMs: stamp.atMs + answers.makersLimitMin * msPerMinute,
  lookedAtMs: [],
  acknowledgedAtMs: null,
  endedAtMs: null,
});

/** The record with its newest strand of this zone changed. */
const changeStrand = (
  record: ConsultationRecord,
  zone: Zone,
  change: (strand: StrandRecord) => StrandRecord,
): readonly StrandRecord[] => {
  const strand = findStrand(record, zone);
  return record.strands.map((each) => (each === strand ? change(each) : each));
};

/** Whole minutes by its own clock, which a change of the tablet's clock moves along; never beyond what it was set to. */
const countMinutes = ({ startedAtMs, dueAtMs, endedAtMs }: Clock, atMs: number): number =>
  Math.floor((Math.min(endedAtMs ?? atMs, dueAtMs) - startedAtMs) / msPerMinute);

/** Ends the strand of this zone and its clock. */
const endStrand = (
  record: ConsultationRecord,
  zone: Zone,
  how: 'takenOff' | 'broke' | 'discarded',
  why: string | null,
  stamp: Stamp,
): Partial<ConsultationRecord> => {
  const clock = record.clocks.find(({ id }) => id === findStrand(record, zone)?.clock);
  const minutesOn = clock === undefined ? 0 : countMinutes(clock, stamp.atMs);
  return {
    strands: changeStrand(record, zone, (strand) => ({
      ...strand,
      why,
      ended: { ...stamp, how },
      minutesOn,
    })),
    clocks: endClocks(record.clocks, stamp.atMs, ({ id }) => id === clock?.id),
  };
};

/**
 * Last time's strand as it stands for today: the same mix, as old as the strand itself, fibre as then, and today's wet
 * stretch.
 */
const carryStrand = (
  record: ConsultationRecord,
  last: LastZone,
  number: number,
  stamp: Stamp,
): StrandRecord => ({
  ...last.strand,
  ...stamp,
  heat: last.bowl.heat,
  number,
  clock: `carried-${last.strand.zone}-${number}`,
  planKey: formPlanKey(record.answers),
  looks: [],
  missedLooksAtMs: [],
  why: null,
  ended: { ...stamp, atMs: last.strandAtMs, how: 'takenOff' },
  minutesOn: last.minutesOn,
  outcome: { ...last.outcome, ...stamp, stretch: 'springsBack', wentPast30: 'no', grade: last.grade },
  retracted: null,
  carried: {
    fromId: record.lastTime?.id ?? '',
    maxDeveloperPercent: last.bowl.developerPercent,
    maxMinutes: last.bowl.minutes,
  },
  isVoid: false,
});

/** What happens to strands, off the head. */
export const strandReducers = {
  STRAND_STARTED: (record, { payload }, stamp) => {
    const number = record.strands.length + 1;
    const clock = `strand-${payload.zone}-${number}`;
    const strand: StrandRecord = {
      ...payload,
      ...stamp,
      number,
      clock,
      planKey: formPlanKey(record.answers),
      looks: [],
      missedLooksAtMs: [],
      why: null,
      ended: null,
      minutesOn: null,
      outcome: null,
      retracted: null,
      carried: null,
      isVoid: false,
    };
    return {
      strands: [...record.strands, strand],
      clocks: [...record.clocks, makeStrandClock(clock, payload, stamp)],
      ...undecide(record),
    };
  },
  STRAND_TAKEN_OFF: (record, { payload }, stamp) =>
    endStrand(record, payload.zone, 'takenOff', payload.why, stamp),
  STRAND_DISCARDED: (record, { payload }, stamp) =>
    endStrand(record, payload.zone, 'discarded', payload.why, stamp),
  STRAND_BROKE: (record, { payload }, stamp) => endStrand(record, payload.zone, 'broke', null, stamp),
  OUTCOME_RECORDED: (record, { payload }, stamp) => ({
    strands: changeStrand(record, payload.zone, (strand) => ({
      ...strand,
      outcome: { ...payload, ...stamp, grade: gradeOutcome(payload, findSigns(strand)) },
    })),
    ...undecide(record),
  }),
  OUTCOME_CARRIED: (record, _event, stamp) => ({
    strands: [
      ...record.strands,
      ...listCarried(record).map((last, index) =>
        carryStrand(record, last, record.strands.length + 1 + index, stamp),
      ),
    ],
    ...undecide(record),
  }),
  OUTCOME_KEPT: () => ({}),
  OUTCOME_RETRACTED: (record, { payload }) => ({
    strands: changeStrand(record, payload.zone, (strand) => ({
      ...strand,
      outcome: null,
      retracted: findWorst([strand.retracted, strand.outcome?.grade ?? null]),
    })),
    ...undecide(record),
  }),
} satisfies Partial<Reducers>;

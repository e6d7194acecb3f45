import { findLimits } from '../../judgement/limits';
import { nameProven } from '../../judgement/mixes';
import { findLookEveryMin, judgeRisk } from '../../judgement/risk';
import { ASSUMED_TONER_MAX_MIN } from '../../judgement/tonerLimits';
import { msPerMinute } from '../../units/time';
import { type BowlProof, findProof } from '../bowlProof';
import { type Clock, endClocks } from '../clock';
import type { EventOf } from '../event';
import { askAnew } from '../passedDay';
import {
  type BowlRecord,
  type ConsultationRecord,
  findBowl,
  findStrand,
  type Stamp,
  type StrandRecord,
} from '../record';
import { findTonerProof } from '../tonerProof';
import type { Zone } from '../zones';
import type { Reducers } from './reducers';

/** Before model 5 somebody looked at every head each five minutes: common practice, no source. */
const BEFORE_MODEL_5_MIN = 5;

/**
 * After how many minutes does somebody look at this head, and ask whether it stings? As often as at its strand: every 3
 * min when the hair is suspect, else 5: common practice, no source.
 */
export const findHeadLookMin = (record: Pick<ConsultationRecord, 'answers' | 'modelVersion'>): number =>
  record.modelVersion < 5 ? BEFORE_MODEL_5_MIN : Number(findLookEveryMin(judgeRisk(record)));

/**
 * A bowl that is shorter than the time to its first look is looked at after this share of it. Assumed because in the middle
 * something shows already, and half of the time is left to act on it.
 */
export const ASSUMED_SHORT_LOOK_SHARE = 0.5;

/** When is it first looked at, where its first look would fall on its end or after it? */
const findFirstLookMs = ({ minutes }: BowlRecord, lookMs: number, modelVersion: number): number =>
  modelVersion >= 5 && minutes * msPerMinute <= lookMs
    ? minutes * msPerMinute * ASSUMED_SHORT_LOOK_SHARE
    : lookMs;

const makeHeadClock = (
  id: string,
  bowl: BowlRecord,
  stamp: Stamp,
  lookMs: number,
  modelVersion: number,
): Clock => ({
  id,
  kind: 'head',
  zone: bowl.zone,
  startedAtMs: stamp.atMs,
  looks: { firstAfterMs: findFirstLookMs(bowl, lookMs, modelVersion), everyMs: lookMs },
  dueAtMs: stamp.atMs + bowl.minutes * msPerMinute,
  limitAtMs: stamp.atMs + bowl.maxMinutes * msPerMinute,
  lookedAtMs: [],
  acknowledgedAtMs: null,
  endedAtMs: null,
});

/** The record's bowls with the newest one of this zone changed. */
const changeBowl = (
  record: ConsultationRecord,
  zone: Zone,
  change: Partial<BowlRecord>,
): readonly BowlRecord[] => {
  const bowl = findBowl(record, zone);
  return record.bowls.map((each) => (each === bowl ? { ...each, ...change } : each));
};

const findCarried = (
  { answers }: ConsultationRecord,
  strand: StrandRecord | undefined,
): BowlProof['carried'] =>
  strand === undefined || strand.carried === null
    ? null
    : { strandAtMs: strand.ended?.atMs ?? 0, service: answers.client?.service ?? '' };

/**
 * How long may this bowl stay on, min? As it was said when it was weighed, whatever table and chance say today, and never
 * longer than its strand proved. Before model 5 nobody kept it: it is reckoned, and never less than was weighed.
 * Checked in tests/machines/consultation/keptLimit.test.ts.
 */
const findMaxMinutes = (
  record: ConsultationRecord,
  strand: StrandRecord,
  { payload, tokens, atMs }: EventOf<'BOWL_WEIGHED'>,
): number =>
  Math.min(
    tokens.maxMinutes ?? Math.max(payload.minutes, findLimits(record, strand, atMs).maxMinutes),
    nameProven(strand).minutes,
  );

/** A bowl that was just weighed: nothing has become of it. */
const standing = {
  state: 'weighed',
  clock: null,
  allOnAtMs: null,
  rinsedSeq: null,
  looks: [],
  missedLooksAtMs: [],
  isSkinNotCalm: false,
} as const;

/** What happens to bowls, from the scale to the basin. */
export const bowlReducers = {
  BOWL_WEIGHED: (record, event, stamp) => {
    const { payload } = event;
    const strand = findStrand(record, payload.zone);
    const bowl: BowlRecord = {
      ...payload,
      ...stamp,
      ...standing,
      kind: 'tested',
      toner: null,
      strand: strand?.number ?? 0,
      proof: findProof(strand, record.decision, strand && nameProven(strand), findCarried(record, strand)),
      maxMinutes: strand === undefined ? 0 : findMaxMinutes(record, strand, event),
    };
    return { bowls: [...record.bowls, bowl] };
  },
  TONER_WEIGHED: (record, { payload }, stamp) => {
    const bowl: BowlRecord = {
      ...payload,
      ...stamp,
      ...standing,
      kind: 'toner',
      heat: 'none',
      strand: 0,
      proof: null,
      toner: findTonerProof(record, payload.zone),
      maxMinutes: ASSUMED_TONER_MAX_MIN,
    };
    return { bowls: [...record.bowls, bowl] };
  },
  STRETCH_NOTED: (record, { payload }, stamp) => ({
    stretches: [...record.stretches, { ...payload, ...stamp }],
  }),
  BOWL_THROWN: (record, { payload, tokens }) => ({
    bowls: changeBowl(record, payload.zone, {
      state: 'thrown',
      isSkinNotCalm: payload.why === 'skinNotCalm',
    }),
    ...(tokens.asksSkin ? askAnew(record) : {}),
  }),
  BOWL_APPLIED: (record, { payload }, stamp) => {
    const bowl = findBowl(record, payload.zone);
    if (bowl === undefined) return {};
    const clock = `head-${payload.zone}-${record.bowls.length}`;
    return {
      bowls: changeBowl(record, payload.zone, { state: 'on', clock }),
      clocks: [
        ...record.clocks,
        makeHeadClock(clock, bowl, stamp, findHeadLookMin(record) * msPerMinute, record.modelVersion),
      ],
    };
  },
  BOWL_ALL_ON: (record, { payload }, { atMs }) => ({
    bowls: changeBowl(record, payload.zone, {
      allOnAtMs: findBowl(record, payload.zone)?.allOnAtMs ?? atMs,
    }),
  }),
  BOWL_RINSED: (record, { payload }, stamp) => {
    const clockId = findBowl(record, payload.zone)?.clock;
    return {
      bowls: changeBowl(record, payload.zone, { state: 'rinsed', rinsedSeq: stamp.seq }),
      clocks: endClocks(record.clocks, stamp.atMs, ({ id }) => id === clockId),
    };
  },
  FINISHED: () => ({}),
  PLAN_GIVEN: (_record, { payload }, stamp) => ({
    plan: { ...payload, ...stamp },
    ended: { ...stamp, how: 'done', reason: null },
  }),
} satisfies Partial<Reducers>;

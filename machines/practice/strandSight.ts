import type { Undertone } from '../../shared/chemistry/undertone';
import { isLifting } from '../../shared/judgement/stops';
import type { Answers } from '../../shared/records/forms/asked';
import type { LookAnswers, OutcomeAnswers } from '../../shared/records/forms/test';
import { formPlanKey, readPlanned } from '../../shared/records/planKey';
import { type ConsultationRecord, findBowl, findStrand } from '../../shared/records/record';
import type { Zone } from '../../shared/records/zones';
import { msPerHour, msPerMinute } from '../../shared/units/time';
import type { Lesson } from './lesson';
import { type Coat, findShade, LEVELS, type Shade } from './shade';
import { ASSUMED_NAPE_WEARS, computeWear, findStrength, type Sitting, type Wearing } from './strength';
import { knowHair } from './trueHair';

/** What a look, and at the end the hands, find on a strand. */
export interface StrandSight extends Shade {
  /** As a look tells it. */
  readonly feel: NonNullable<LookAnswers['feel']>;
  /** As an outcome tells it. */
  readonly fibre: OutcomeAnswers['fibre'];
  readonly stretch: OutcomeAnswers['stretch'];
  readonly wentPast30: OutcomeAnswers['wentPast30'];
  /** It has broken in the mix. */
  readonly hasGone: boolean;
}

/** What is seen and felt of what is on the head, and once it is rinsed. */
export interface HeadSight {
  readonly stinging: 'no' | 'yes';
  readonly hair: 'sound' | 'stretchy' | 'breaking';
  readonly level: number;
  readonly undertone: Undertone;
  /** As of a strand: none that could be named where it was only deposited on. */
  readonly hasUndertone: boolean;
  /** Wet, after a light pull, once it is rinsed. */
  readonly stretch: OutcomeAnswers['stretch'];
}

/**
 * From which share of its strength on is hair rough, and from which is it gummy? Assumed because it weakens before it
 * breaks, and a look every three minutes is to be able to see that.
 */
export const ASSUMED_WEAKENS_FROM = { rough: 0.5, gummy: 0.8 } as const;

/** What the fibre says at so much of its strength; 1 and more: it has broken. */
type Held = Pick<StrandSight, 'feel' | 'fibre' | 'stretch' | 'wentPast30'>;
const held = {
  sound: { feel: 'sound', fibre: 'sound', stretch: 'springsBack', wentPast30: 'no' },
  rough: { feel: 'rough', fibre: 'rough', stretch: 'staysLong', wentPast30: 'no' },
  gummy: { feel: 'stretchy', fibre: 'gummy', stretch: 'staysLong', wentPast30: 'yes' },
  broken: { feel: 'stretchy', fibre: 'broken', stretch: 'snaps', wentPast30: 'yes' },
} as const satisfies Record<string, Held>;

function findHeld(shareOfStrength: number): (typeof held)[keyof typeof held] {
  if (shareOfStrength >= 1) return held.broken;
  if (shareOfStrength >= ASSUMED_WEAKENS_FROM.gummy) return held.gummy;
  return shareOfStrength >= ASSUMED_WEAKENS_FROM.rough ? held.rough : held.sound;
}

/**
 * What the mix leaves, and never better than fingers found it before any mix. Roots have grown since: they are as they are
 * worn.
 */
function findWorn({ feelHair }: Answers, zone: Zone, shareOfStrength: number): Held {
  const worn = findHeld(shareOfStrength);
  const before = zone === 'roots' ? 'springsBack' : feelHair?.wetStretch;
  if (before !== 'snaps' && before !== 'staysLong') return worn;
  const atBest = worn === held.sound ? held.rough : worn;
  return before === 'snaps' ? { ...atBest, stretch: 'snaps' } : atBest;
}

/** For how many minutes has this clock run by then? By its own start, which a corrected clock moves along. */
function countMinutes({ clocks }: ConsultationRecord, id: string | null, atMs: number): number {
  const clock = clocks.find((each) => each.id === id);
  if (clock === undefined) return 0;
  return Math.max(0, Math.min(atMs, clock.endedAtMs ?? atMs) - clock.startedAtMs) / msPerMinute;
}

type Mixed = Pick<Wearing, 'developerPercent' | 'heat'>;

/** It lifts as it was planned when it was mixed, whatever the plan is now; where nobody said to which level, as far as it goes. */
function nameCoat(planKey: string, { developerPercent, heat }: Mixed, minutes: number): Coat {
  const { service = 'lighten', targetLevel = LEVELS.lightest } = readPlanned(planKey);
  return { developerPercent, heat, minutes, service, targetLevel, isLifting: isLifting(service) };
}

/** What was on the head of this zone up to then, in its order; a toner only deposits. */
function listCoats(record: ConsultationRecord, zone: Zone, atMs: number): readonly Coat[] {
  return record.bowls
    .filter((bowl) => bowl.zone === zone && (bowl.state === 'on' || bowl.state === 'rinsed'))
    .map((bowl) => {
      const strand = record.strands.find(({ number }) => number === bowl.strand);
      const planKey = strand?.planKey ?? formPlanKey(record.answers);
      const coat = nameCoat(planKey, bowl, countMinutes(record, bowl.clock, atMs));
      return bowl.kind === 'toner' ? { ...coat, isLifting: false } : coat;
    });
}

const sumWear = (coats: readonly Coat[]): number =>
  coats.reduce((sum, coat) => sum + computeWear(coat, coat.minutes), 0);

/**
 * What is seen of the newest strand of this zone, looked at now? null where there is none.
 * Of her true hair, never of what was told of it. The same for the same sitting; what has gone stays gone. What is off the
 * mix stays as it came off. Checked in tests/machines/practice/strandSight.test.ts.
 */
export function seeStrand(
  sitting: Sitting,
  record: ConsultationRecord,
  zone: Zone,
  atMs: number,
): StrandSight | null {
  const strand = findStrand(record, zone);
  if (strand === undefined) return null;
  const { answers } = knowHair(sitting.lesson);
  const own = nameCoat(strand.planKey, strand, countMinutes(record, strand.clock, atMs));
  const coats = [...listCoats(record, zone, strand.atMs), own];
  const wear = sumWear(coats) * (strand.place === 'nape' ? ASSUMED_NAPE_WEARS : 1);
  const share = wear / findStrength(sitting, zone);
  return {
    ...findShade(sitting.lesson, answers, zone, coats),
    ...findWorn(answers, zone, share),
    hasGone: share >= 1,
  };
}

/** What stings or warms under a mix: sore skin, and a glass that reacted. An allergy shows later, or in the breath (comesLater.ts). */
function doesSting({ truth }: Lesson, { client }: Answers): boolean {
  const isSore = ['tight', 'irritated', 'broken'].includes(client?.scalp ?? 'sound');
  const hasTingled = (client?.reactions ?? []).some((each) => each === 'tingled' || each === 'tingledStops');
  return isSore || hasTingled || truth.glass === 'reacted';
}

/**
 * What is seen on the head where the newest bowl of this zone is on, or was rinsed? null where neither.
 * By the same strength as its strands, wherever those were snipped. Checked as seeStrand.
 */
export function seeHead(
  sitting: Sitting,
  record: ConsultationRecord,
  zone: Zone,
  atMs: number,
): HeadSight | null {
  const bowl = findBowl(record, zone);
  if (bowl === undefined || (bowl.state !== 'on' && bowl.state !== 'rinsed')) return null;
  const { answers } = knowHair(sitting.lesson);
  const coats = listCoats(record, zone, atMs);
  const { fibre, stretch } = findWorn(answers, zone, sumWear(coats) / findStrength(sitting, zone));
  const { level, undertone, hasUndertone } = findShade(sitting.lesson, answers, zone, coats);
  const isBreaking = fibre === 'broken' || stretch === 'snaps';
  return {
    stinging: doesSting(sitting.lesson, answers) ? 'yes' : 'no',
    hair: isBreaking ? 'breaking' : fibre === 'gummy' ? 'stretchy' : 'sound',
    level,
    undertone,
    hasUndertone,
    stretch,
  };
}

/** After so many minutes a cutting that reacts shows it. Assumed because it heats and bubbles within minutes. */
export const ASSUMED_GLASS_SHOWS_MIN = 10;

/** What does her cutting do in the glass by now? null where none stands in it. */
export function seeGlass(
  { truth }: Lesson,
  { clocks }: ConsultationRecord,
  atMs: number,
): 'nothing' | 'reacted' | null {
  const clock = clocks.findLast(({ kind }) => kind === 'incompatibility');
  if (clock === undefined) return null;
  const minutes = (Math.min(atMs, clock.endedAtMs ?? atMs) - clock.startedAtMs) / msPerMinute;
  return truth.glass === 'reacted' && minutes >= ASSUMED_GLASS_SHOWS_MIN ? 'reacted' : 'nothing';
}

/** The skin test that she brings, and what is seen of it today; null where she brings none. */
export const seeSkinTest = ({ truth }: Lesson, beganAtMs: number) =>
  truth.skinTest === null
    ? null
    : { putOnAtMs: beganAtMs - Math.round(truth.skinTest.hoursAgo * msPerHour), seen: truth.skinTest.seen };

import type { RuleId } from '../../shared/judgement/rules';
import { isIncompatibilityDue } from '../../shared/judgement/stops';
import type { Debrief } from './debrief';
import type { Flag, FlagId } from './lesson';
import type { Failing } from './passing';

/** How a sitting stands: `notTold` where its lesson was changed since. */
export type SittingResult = 'passed' | 'notPassed' | 'leftOff' | 'underWay' | 'notTold';

/** What a trainer's list reads of a debrief. */
export type ToldInShort = Pick<Debrief, 'isPassed' | 'score' | 'failedBy' | 'flagsDue'> & {
  readonly decision: Pick<Debrief['decision'], 'stops'>;
  readonly map: { readonly true: Pick<Debrief['map']['true'], 'answers'> };
};

/** One sitting, and how it went; null where that cannot be told. */
export interface SittingTold {
  readonly id: string;
  readonly lessonId: string;
  /** null: the lesson is gone, or was changed since. */
  readonly title: string | null;
  readonly by: string;
  /** By the tablet's own clock, ms since 1970-01-01 UTC. */
  readonly beganAtMs: number;
  readonly isExam: boolean;
  /** null: under way. */
  readonly ended: 'finished' | 'leftOff' | null;
  readonly told: ToldInShort | null;
}

/** One row of the list. */
export interface TraineeRow extends Omit<SittingTold, 'told'> {
  readonly result: SittingResult;
  /** 0 to 100; null where it is under way, was left off or cannot be told. */
  readonly score: number | null;
  readonly failedBy: readonly Failing[];
  readonly missed: readonly FlagId[];
}

/** Something that was missed: a red flag, or what a lesson is failed by; in so many of so many sittings that had it. */
export type Miss = { readonly missed: number; readonly of: number } & (
  | { readonly kind: 'flag'; readonly flag: Flag }
  | { readonly kind: 'failing'; readonly failing: Failing }
);

/** What the trainer reads: who did which lesson, the newest first, and what is missed most. */
export interface TraineesTold {
  readonly rows: readonly TraineeRow[];
  /** The most missed first, by how often. */
  readonly misses: readonly Miss[];
  /** So many more things were missed. */
  readonly furtherMisses: number;
}

/** So many misses are named. Assumed because nobody teaches more than a handful of things at a time. */
export const ASSUMED_MISSES_NAMED = 5;

function findResult({ ended, told }: SittingTold): SittingResult {
  if (ended === null) return 'underWay';
  if (ended === 'leftOff') return 'leftOff';
  if (told === null) return 'notTold';
  return told.isPassed ? 'passed' : 'notPassed';
}

function viewRow(sitting: SittingTold): TraineeRow {
  const { told, ...rest } = sitting;
  const result = findResult(sitting);
  const counted = result === 'passed' || result === 'notPassed' ? told : null;
  return {
    ...rest,
    result,
    score: counted?.score ?? null,
    failedBy: counted?.failedBy ?? [],
    missed: (counted?.flagsDue ?? []).filter(({ how }) => how === 'missed').map(({ flag }) => flag.id),
  };
}

/** Could this sitting be failed by it at all? A flag is told by its own name. */
const couldFail: Readonly<Record<Exclude<Failing, 'flagMissed'>, (told: ToldInShort) => boolean>> = {
  stopMissed: ({ decision }) => hasStops(decision.stops),
  stopSigned: ({ decision }) => hasStops(decision.stops),
  glassNotRead: ({ decision, map }) =>
    !hasStops(decision.stops.filter((rule) => rule !== 'stop.incompatibilityReacted')) &&
    isIncompatibilityDue(map.true.answers),
  decision: () => true,
  finish: () => true,
  mix: () => true,
  noLook: () => true,
};
const hasStops = (stops: readonly RuleId[]): boolean => stops.length > 0;
const failingsNamed = Object.keys(couldFail) as readonly (keyof typeof couldFail)[];

function listMisses(all: readonly ToldInShort[]): readonly Miss[] {
  const flags = new Map<FlagId, Extract<Miss, { kind: 'flag' }>>();
  for (const { flag, how } of all.flatMap(({ flagsDue }) => flagsDue)) {
    const { missed, of } = flags.get(flag.id) ?? { missed: 0, of: 0 };
    flags.set(flag.id, { kind: 'flag', flag, missed: missed + (how === 'missed' ? 1 : 0), of: of + 1 });
  }
  const failed = failingsNamed.map((failing): Miss => {
    const failed = all.filter(({ failedBy }) => failedBy.includes(failing));
    const had = all.filter((told) => failed.includes(told) || couldFail[failing](told));
    return { kind: 'failing', failing, missed: failed.length, of: had.length };
  });
  return [...flags.values(), ...failed]
    .filter(({ missed }) => missed > 0)
    .sort((one, other) => other.missed - one.missed || other.missed / other.of - one.missed / one.of);
}

/**
 * Who did which lesson when, and what is missed most? Takes the sittings in the order in which they were begun. A lesson that was left off says nothing of what its trainee would
 * have seen, and counts in no miss; nor does a flag that there was no need to come to. Checked in
 * tests/machines/practice/tellTrainees.test.ts.
 */
export function tellTrainees(sittings: readonly SittingTold[]): TraineesTold {
  const newestFirst = [...sittings].reverse();
  const counted = newestFirst.flatMap(({ ended, told }) =>
    ended === 'finished' && told !== null ? [told] : [],
  );
  const misses = listMisses(counted);
  return {
    rows: newestFirst.map(viewRow),
    misses: misses.slice(0, ASSUMED_MISSES_NAMED),
    furtherMisses: Math.max(0, misses.length - ASSUMED_MISSES_NAMED),
  };
}

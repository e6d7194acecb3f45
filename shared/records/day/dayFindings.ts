import type { RuleId } from '../../judgement/rules';
import { type Break, listBreaks } from '../breaks';
import { listMissed, listOverruns, type Overrun } from '../overruns';
import type { Ending, OutcomeRecord, OverrideRecord } from '../record';
import { type DayEntry, type DayRecords, isWithin, listEntries } from './dayRecords';

interface Whose {
  readonly id: string;
  readonly ticket: string;
}

/** A judgement stop that somebody lifted. */
export interface Lifted extends Whose, OverrideRecord {}

/** One rule that stopped something: for how many clients, and for how many of them it was lifted. */
export interface RuleCount {
  readonly rule: RuleId;
  readonly stopped: number;
  readonly lifted: number;
}

/** Hair that broke or gummed, and whose. */
export interface Broken extends Whose, Break {}

/** A reaction that was told, and what came of it. */
export interface Told extends Whose {
  readonly atMs: number;
  readonly by: string;
  /** Recorded with these signs; said to be none, by whom; or neither yet. */
  readonly came:
    | { readonly of: 'recorded'; readonly signs: readonly string[] }
    | { readonly of: 'none'; readonly by: string; readonly atMs: number; readonly why: string }
    | { readonly of: 'open' };
}

/** A strand or a head that was let run past its time. */
export interface Late extends Whose, Overrun {}

/** How many looks of one client nobody made. */
export interface Missed extends Whose {
  readonly count: number;
}

export interface DayFindings {
  /** What strands counted as, the best first. */
  readonly outcomes: readonly { readonly grade: Grade; readonly count: number }[];
  readonly late: readonly Late[];
  readonly missed: readonly Missed[];
  readonly endings: readonly { readonly how: Ending; readonly count: number }[];
  readonly rules: readonly RuleCount[];
  readonly lifted: readonly Lifted[];
  readonly broken: readonly Broken[];
  readonly told: readonly Told[];
}

type Grade = OutcomeRecord['grade'];
const grades: readonly Grade[] = ['sound', 'rough', 'gummy', 'broken'];

type Entry = DayEntry;

const whose = ({ record: { id, ticket } }: Entry): Whose => ({ id, ticket });

/** What was said to be none, and what stands: recorded with its signs, or not answered yet. */
function listTold(entry: Entry): readonly Told[] {
  const { dismissed, reaction } = entry.record;
  const none = dismissed.map(({ suspected, by, atMs, why }): Told => {
    return { ...whose(entry), ...suspected, came: { of: 'none', by, atMs, why } };
  });
  if (reaction === null) return none;
  const { atMs, by, signs } = reaction;
  const came = signs.length === 0 ? ({ of: 'open' } as const) : ({ of: 'recorded', signs } as const);
  return [...none, { ...whose(entry), atMs, by, came }];
}

const listBroken = (entry: Entry): readonly Broken[] =>
  listBreaks(entry.record).map((found) => ({ ...whose(entry), ...found }));

const listLifted = (entry: Entry): readonly Lifted[] =>
  entry.record.judged.map((lifted) => ({ ...whose(entry), ...lifted }));

/** Which rules stopped her in these days? One that was lifted then did, though it was told before. */
const listRaised = (
  { log, record }: Entry,
  isToday: (one: { readonly atMs: number }) => boolean,
): readonly RuleId[] => [
  ...new Set([
    ...log.filter(isToday).flatMap((event) => (event.type === 'ANSWERED' ? event.tokens.rules : [])),
    ...record.judged.filter(isToday).map(({ rule }) => rule),
  ]),
];

/**
 * What of the day is looked at again: endings, stops that were lifted, strands that gave way, reactions told. All of
 * it as the logs say, of what happened on this day, whenever she was done; an entry that was corrected since stays in it.
 * Checked in tests/shared/records/day/dayFindings.test.ts.
 */
export function gatherFindings(records: DayRecords, nowMs: number): DayFindings {
  const { closed } = records;
  const all: readonly Entry[] = listEntries(records);
  const isToday = ({ atMs }: { readonly atMs: number }): boolean => isWithin(records, atMs);
  const seen = all.flatMap(({ record }) =>
    record.strands.flatMap(({ outcome }) => (outcome !== null && isToday(outcome) ? [outcome.grade] : [])),
  );
  const late = all.flatMap((entry) =>
    listOverruns(entry.record, entry.toldAtMs ?? nowMs).map((overrun) => ({ ...whose(entry), ...overrun })),
  );
  const missed = all.map((entry) => ({
    ...whose(entry),
    count: listMissed(entry.record).filter((atMs) => isWithin(records, atMs)).length,
  }));
  const lifted = all.flatMap(listLifted).filter(isToday);
  const inOrder = <T extends { readonly atMs: number }>(list: readonly T[]): readonly T[] =>
    [...list].sort((one, other) => one.atMs - other.atMs);
  const raised = all.flatMap((entry) => listRaised(entry, isToday));
  const countOf = (rule: RuleId): RuleCount => ({
    rule,
    stopped: raised.filter((each) => each === rule).length,
    lifted: new Set(lifted.filter((each) => each.rule === rule).map(({ id }) => id)).size,
  });
  const hows = [...new Set(closed.map(({ how }) => how))];
  return {
    outcomes: grades
      .map((grade) => ({ grade, count: seen.filter((each) => each === grade).length }))
      .filter(({ count }) => count > 0),
    late: late.filter(({ dueAtMs }) => isToday({ atMs: dueAtMs })),
    missed: missed.filter(({ count }) => count > 0),
    endings: hows.map((how) => ({ how, count: closed.filter((each) => each.how === how).length })),
    rules: [...new Set(raised)].map(countOf),
    lifted: inOrder(lifted),
    broken: inOrder(all.flatMap(listBroken).filter(isToday)),
    told: inOrder(all.flatMap(listTold).filter(isToday)),
  };
}

/** Is this rule lifted more often than it stops? Then its words or the rule itself want another look. */
export const isOftenLifted = ({ stopped, lifted }: RuleCount): boolean => stopped > 1 && 2 * lifted > stopped;

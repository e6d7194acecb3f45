import type { RuleId } from '../../../shared/judgement/rules';
import type { ConsultationEvent } from '../../../shared/records/event';
import type { ConsultationRecord, Ending, OverrideRecord } from '../../../shared/records/record';
import type { Zone } from '../../../shared/records/zones';
import { type DayRecords, nameDay } from './dayRecords';

interface Whose {
  readonly id: string;
  readonly ticket: string;
}

/** A judgement stop that somebody lifted. */
export interface Lifted extends Whose, OverrideRecord {}

/** One rule over the day: for how many clients it stopped something, and for how many of them it was lifted. */
export interface RuleCount {
  readonly rule: RuleId;
  readonly stopped: number;
  readonly lifted: number;
}

/** A strand that broke or went gummy, in which mix. */
export interface Broken extends Whose {
  readonly atMs: number;
  readonly number: number;
  readonly zone: Zone;
  readonly line: string;
  readonly how: 'broke' | 'gummy' | 'broken';
}

/** A reaction that was told, and what came of it. */
export interface Told extends Whose {
  readonly atMs: number;
  readonly by: string;
  /** Recorded with these signs; said to be none, by whom; or neither yet. */
  readonly came:
    | { readonly of: 'recorded'; readonly signs: readonly string[] }
    | { readonly of: 'none'; readonly by: string; readonly atMs: number }
    | { readonly of: 'open' };
}

export interface DayFindings {
  readonly endings: readonly { readonly how: Ending; readonly count: number }[];
  readonly rules: readonly RuleCount[];
  readonly lifted: readonly Lifted[];
  readonly broken: readonly Broken[];
  readonly told: readonly Told[];
}

type Entry = { readonly record: ConsultationRecord; readonly log: readonly ConsultationEvent[] };

const whose = ({ record: { id, ticket } }: Entry): Whose => ({ id, ticket });

const isTelling = (event: ConsultationEvent): boolean =>
  event.type === 'REACTION_SUSPECTED' || (event.type === 'LOOKED' && event.tokens.stings);

/** Every telling of a reaction, and the first answer to it that came after; a second word while one is open is the same. */
function listTold(entry: Entry): readonly Told[] {
  const told: Told[] = [];
  for (const event of entry.log) {
    const last = told.at(-1);
    const isOpen = last?.came.of === 'open';
    if (isTelling(event) && !isOpen) {
      told.push({ ...whose(entry), atMs: event.atMs, by: event.by, came: { of: 'open' } });
    } else if (last !== undefined && isOpen && event.type === 'NO_REACTION') {
      told[told.length - 1] = { ...last, came: { of: 'none', by: event.by, atMs: event.atMs } };
    } else if (last !== undefined && isOpen && event.type === 'REACTION_RECORDED') {
      told[told.length - 1] = { ...last, came: { of: 'recorded', signs: event.payload.signs } };
    }
  }
  return told;
}

const listBroken = (entry: Entry): readonly Broken[] =>
  entry.record.strands.flatMap((strand) => {
    const grade = strand.outcome?.grade ?? strand.retracted;
    const weak = grade === 'gummy' || grade === 'broken' ? grade : null;
    const how = strand.ended?.how === 'broke' ? 'broke' : weak;
    const atMs = strand.ended?.atMs ?? strand.atMs;
    const { number, zone, line } = strand;
    return how === null ? [] : [{ ...whose(entry), atMs, number, zone, line, how }];
  });

const listLifted = (entry: Entry): readonly Lifted[] =>
  entry.log.flatMap((event, seq) =>
    event.type === 'OVERRIDDEN'
      ? [{ ...whose(entry), ...event.payload, atMs: event.atMs, by: event.by, seq }]
      : [],
  );

const listRaised = ({ log }: Entry): readonly RuleId[] => [
  ...new Set(log.flatMap((event) => (event.type === 'ANSWERED' ? event.tokens.rules : []))),
];

/**
 * What of the day is looked at again: endings, stops that were lifted, strands that gave way, reactions told. All of
 * it as the logs say, of what happened on this day; an entry that was corrected since stays in it.
 * Checked in tests/src/screens/day/dayFindings.test.tsx.
 */
export function gatherFindings({ day, closed, open }: DayRecords): DayFindings {
  const all: readonly Entry[] = [...closed, ...open];
  const isToday = ({ atMs }: { readonly atMs: number }): boolean => nameDay(atMs) === day;
  const lifted = all.flatMap(listLifted).filter(isToday);
  const inOrder = <T extends { readonly atMs: number }>(list: readonly T[]): readonly T[] =>
    [...list].sort((one, other) => one.atMs - other.atMs);
  const raised = all.flatMap(listRaised);
  const countOf = (rule: RuleId): RuleCount => ({
    rule,
    stopped: raised.filter((each) => each === rule).length,
    lifted: new Set(lifted.filter((each) => each.rule === rule).map(({ id }) => id)).size,
  });
  const hows = [...new Set(closed.map(({ how }) => how))];
  return {
    endings: hows.map((how) => ({ how, count: closed.filter((each) => each.how === how).length })),
    rules: [...new Set(lifted.map(({ rule }) => rule))].map(countOf),
    lifted: inOrder(lifted),
    broken: inOrder(all.flatMap(listBroken).filter(isToday)),
    told: inOrder(all.flatMap(listTold).filter(isToday)),
  };
}

/** Is this rule lifted more often than it stops? Then its words or the rule itself want another look. */
export const isOftenLifted = ({ stopped, lifted }: RuleCount): boolean => stopped > 1 && 2 * lifted > stopped;

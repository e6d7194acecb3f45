import { findingTable } from '../../shared/chemistry/ingredients/findingTable';
import { listRedFlags, type RedFlag, redFlags } from '../../shared/judgement/risk';
import { isAbsoluteRule, type RuleId, ruleIds } from '../../shared/judgement/rules';
import { judgeSkinTest } from '../../shared/judgement/skinTest';
import { listStops } from '../../shared/judgement/stops';
import type { Answers } from '../../shared/records/forms/asked';
import type { ConsultationRecord } from '../../shared/records/record';
import type { Settings } from '../../shared/records/settings';
import type { Flag, FlagId } from './lesson';
import { isToldTruly } from './toldTruly';

/** One red flag of the lesson: seen, seen after a hint, or missed. */
export interface FlagPart {
  readonly flag: Flag;
  readonly isAbsolute: boolean;
  readonly how: 'seen' | 'hinted' | 'missed';
}

const isRule = (id: FlagId): id is RuleId => ruleIds.some((rule) => rule === id);
const isFinding = (id: FlagId): boolean => findingTable.some((finding) => finding.id === id);
const isRedFlag = (id: FlagId): id is RedFlag => redFlags.some((flag) => flag === id);

/** Does this flag stop for good? */
export const isAbsoluteFlag = ({ id }: Flag): boolean => isRule(id) && isAbsoluteRule(id);

/** What there is to see it by. */
export interface Seeing {
  readonly record: ConsultationRecord;
  readonly truth: Answers;
  readonly settings: Settings;
  /** Findings that stood on the screen: listFindingsShown. */
  readonly shown: ReadonlySet<string>;
}

/**
 * Does the record say it? A stop and a red flag by what was told or read; what a bottle says once it stood on the screen, or
 * where no hot tool is used and there is nothing to say; all else by its questions told truly.
 */
function isSeen({ id, asks }: Flag, { record, truth, settings, shown }: Seeing): boolean {
  if (id === 'stop.skinTestPositive') return record.skinTest?.seen === 'reaction';
  if (id === 'stop.incompatibilityReacted') return record.incompatibility?.seen === 'reacted';
  if (id === 'skinTestLapsed') return judgeSkinTest(record, settings.profile, record.newestAtMs) === 'lapsed';
  if (id === 'incompatible') return record.incompatibility !== null;
  if (isRule(id)) return listStops(record.answers, settings).includes(id);
  if (isRedFlag(id)) return listRedFlags(record.answers).includes(id);
  if (isFinding(id)) return shown.has(id) || record.answers.heatSpray?.finish === 'noHotTool';
  return asks.every((path) => isToldTruly(record.answers, truth, path));
}

/** Which red flags of the lesson does the record say, and for which was a hint shown? Checked in tests/machines/practice/debrief.test.ts. */
export const judgeFlags = (
  flags: readonly Flag[],
  hints: readonly FlagId[],
  seeing: Seeing,
): readonly FlagPart[] =>
  flags.map((flag) => ({
    flag,
    isAbsolute: isAbsoluteFlag(flag),
    how: !isSeen(flag, seeing) ? 'missed' : hints.includes(flag.id) ? 'hinted' : 'seen',
  }));

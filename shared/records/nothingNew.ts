import type { UnitSettings } from '../units/quantity';
import { msPerDay } from '../units/time';
import type { RawEvent } from './classify';
import { askForms } from './forms/asked';
import { hotToolsForm } from './forms/hotTools';
import type { LastTime } from './lastTime';
import type { RawForm } from './readForm';
import { bringUpToDate, countMonths } from './sinceLastTime';
import { type AskStep, askSteps } from './steps';
import { writeForm } from './writeForm';

const { field: lastBleach } = hotToolsForm.lastBleachMonthsAgo;

/** What is asked anew at every visit, whatever was said last time: options of the forms, by name. */
export interface AskedToday {
  readonly reactions: readonly string[];
  readonly scalp: string;
  /** Only where the local profile draws an age line. */
  readonly ageBand?: string;
  readonly nape: string;
  readonly mid: string;
  readonly ends: string;
  readonly breakage: string;
  readonly wetStretch: string;
}

/** What this salon itself put on it last time is history today, and nothing new. */
const ownChemistry: Readonly<Record<string, string>> = {
  lighten: 'lightener',
  liftAndDeposit: 'salonColour',
  depositOnly: 'salonColour',
  gloss: 'gloss',
  tone: 'gloss',
};

/** What last time itself left on the hair; null when nothing was put on. */
export const findOwnChemistry = ({ answers, zones }: LastTime): string | null =>
  zones.length === 0 ? null : (ownChemistry[answers.client?.service ?? ''] ?? null);

function addOwn(last: LastTime): readonly string[] {
  const own = findOwnChemistry(last);
  const told: readonly string[] = last.answers.hotTools?.history ?? [];
  if (own === null) return told;
  return [...new Set([...told.filter((item) => item !== 'none'), own])];
}

/** What lightened it last time counts among the bleaches today, and is the last of them. */
function addBleach(last: LastTime, nowMs: number): RawForm {
  if (findOwnChemistry(last) !== 'lightener') return {};
  const { client, hotTools } = last.answers;
  const before = hotTools?.bleaches ?? 0;
  return {
    bleaches: before === 'unknown' ? before : String(before + 1),
    lastBleachMonthsAgo: String(Math.min(countMonths(last, nowMs), lastBleach.max)),
    bleachReach: before === 0 && client?.reach === 'fullHead' ? 'all' : 'unknown',
  };
}

/** A relaxer, perm or keratin counts as just now for two weeks: common practice, no source. */
const JUST_NOW_MS = 14 * msPerDay;

/** Nothing on it since answers for the last two weeks only once they are over; until then last time's answer stands. */
function tellRelaxed({ answers, endedAtMs }: LastTime, nowMs: number): RawForm {
  const before = answers.hotTools?.relaxedWithinTwoWeeks;
  if (before === undefined) return {};
  return { relaxedWithinTwoWeeks: nowMs - endedAtMs < JUST_NOW_MS ? before : 'no' };
}

/** What is told of each step today, beside what was told last time. */
function listToday(last: LastTime, today: AskedToday, nowMs: number): { readonly [S in AskStep]: RawForm } {
  const { reactions, scalp, ageBand, nape, mid, ends, breakage, wetStretch } = today;
  return {
    client: { reactions, scalp, ageBand },
    hotTools: { history: addOwn(last), ...addBleach(last, nowMs), ...tellRelaxed(last, nowMs) },
    feelHair: { nape, mid, ends, breakage, wetStretch },
    heatSpray: {},
  };
}

/**
 * "Nothing new, all as last time": which taps is that?
 * Every step answered as last time, brought up to date, but for what is asked anew, and confirmed, in order. What was
 * never asked last time stays unanswered, and its step is not taken as said; what stops her today stops there.
 * Checked in tests/shared/records/nothingNew.test.ts.
 */
export function tellNothingNew(
  last: LastTime,
  today: AskedToday,
  units: UnitSettings,
  nowMs: number,
): readonly RawEvent[] {
  const anew = listToday(last, today, nowMs);
  const before = bringUpToDate(last, nowMs);
  return askSteps.flatMap((step): readonly RawEvent[] => [
    {
      type: 'ANSWERED',
      step,
      answers: { ...writeForm(askForms[step], before[step] ?? {}, units), ...anew[step] },
    },
    { type: 'STEP_CONFIRMED', answers: { step } },
  ]);
}

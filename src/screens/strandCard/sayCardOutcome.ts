import { listUndertones, type Undertone } from '../../../shared/chemistry/undertone';
import type { LookAnswers } from '../../../shared/records/forms/test';
import { formatQuantity } from '../../../shared/units/format';
import { sayBottleLimit } from '../bottleAndBowl';
import { viewLevels } from '../strandTest/viewLevels';
import { findCardDecision } from './cardDecision';
import { type CardRow, type Told, tellRow } from './cardRow';

/**
 * What it said between the fingers; that nobody recorded it, where it still is to be. The level wanted stands there
 * anyway.
 */
export function sayOutcome(told: Told): readonly CardRow[] {
  const { strand, words } = told;
  const said = words.strandCard;
  const forms = words.strandTest.forms.outcome;
  const level = tellRow('level', said.level, sayLevel(told));
  const { outcome } = strand;
  if (outcome === null && strand.ended.how === 'discarded') return [level];
  if (outcome === null) {
    const taken = strand.retracted === null ? null : words.strandTest.grades[strand.retracted];
    return [level, tellRow('outcome', said.outcome, said.notRecorded(taken))];
  }
  const { fibre, grade, stretch, wentPast30, evenness } = outcome;
  const graded = grade === fibre ? [] : [said.graded(words.strandTest.grades[grade])];
  const past = wentPast30 === 'yes' ? [said.wentPast] : [];
  return [
    level,
    ...sayUndertone(told),
    tellRow('fibre', said.fibre, [forms.fibre.options[fibre], ...graded].join(' · ')),
    tellRow('stretch', said.stretch, [forms.stretch.options[stretch], ...past].join(' · ')),
    tellRow('evenness', said.evenness, evenness === undefined ? said.none : forms.evenness.options[evenness]),
  ];
}

function sayLevel({ record, strand, units, words }: Told): string {
  const write = (level: number) => formatQuantity(level, 'level', units, words.locale);
  const { seen, target } = viewLevels(record, strand);
  const start = seen.find(({ atMin }) => atMin === 0);
  const reached = strand.outcome?.level;
  return words.strandCard.levels(
    start === undefined ? null : write(start.level),
    reached === undefined ? null : write(reached),
    target === null ? null : write(target),
  );
}

/** The undertone that was seen last; where nobody told one, what this level shows as a rule, which is an estimate. */
function sayUndertone({ strand, words }: Told): readonly CardRow[] {
  const { undertones } = words.strandTest.lift;
  const write = (names: readonly Undertone[]) => names.map((name) => undertones[name]);
  const seen = strand.looks.flatMap(listSeen).at(-1);
  const name = words.strandCard.undertone;
  if (seen !== undefined) return [tellRow('undertone', name, words.strandCard.seenLast(write(seen)))];
  const expected = listUndertones(strand.outcome?.level ?? Number.NaN);
  if (expected.length === 0) return [];
  return [{ key: 'undertone', name, told: words.strandCard.toExpect(write(expected)), isEstimate: true }];
}

/** Empty where the look told none. */
function listSeen({ undertone, level }: LookAnswers): readonly (readonly Undertone[])[] {
  if (undertone === undefined || undertone === 'unknown') return [];
  if (undertone !== 'asExpected') return [[undertone]];
  return typeof level === 'number' ? [listUndertones(level)] : [];
}

/** What was decided, and how strong and how long its zone may be mixed under that. */
export function sayDecision({ record, strand, settings, words, nowMs }: Told): readonly CardRow[] {
  const decided = findCardDecision(record, strand, settings, nowMs);
  if (decided === null) return [];
  const { units } = settings;
  const { name } = words.decision.decisions[decided.decision];
  const { limits } = decided;
  const within =
    limits === null
      ? [words.strandCard.nothingOn(words.general.zones[strand.zone])]
      : [
          sayBottleLimit(limits.maxDeveloperPercent, words, units),
          words.mix.limitMinutes(formatQuantity(limits.maxMinutes, 'minutes', units, words.locale)),
        ];
  return [tellRow('decision', words.strandCard.decision, [name, ...within].join(' · '))];
}

/** Who did what to it: each name once, with the time of what was told and decided. */
export function sayWho({ record, strand, settings, words, nowMs }: Told): string {
  const said = words.strandCard.did;
  const { outcome, ended } = strand;
  const decided = findCardDecision(record, strand, settings, nowMs);
  const { date, time, shortDayAndTime } = words.moments;
  const sayTime = (atMs: number) => (date(atMs) === date(strand.atMs) ? time(atMs) : shortDayAndTime(atMs));
  const acts: readonly (readonly [by: string, did: string])[] = [
    [strand.by, said.started],
    [ended.by, said[ended.how]],
    ...(outcome === null ? [] : [[outcome.by, said.recorded(sayTime(outcome.atMs))] as const]),
    ...(decided === null ? [] : [[decided.by, said.decided(sayTime(decided.atMs))] as const]),
  ];
  const names = [...new Set(acts.map(([by]) => by))];
  return names
    .map((name) =>
      words.strandCard.whoDid(
        name,
        acts.filter(([by]) => by === name).map(([, did]) => did),
      ),
    )
    .join(' · ');
}

import { describe, expect, it } from 'vitest';
import type { Consultation } from '../../../../machines/consultation/consultation';
import { endsIronedWet } from '../../../../seeds/endsIronedWet';
import type { RawEvent } from '../../../../shared/records/classify';
import { closeRecord } from '../../../../shared/records/closedRecord';
import { gatherFindings, isOftenLifted } from '../../../../shared/records/day/dayFindings';
import { type DayRecords, gatherDay } from '../../../../shared/records/day/dayRecords';
import { listMissed } from '../../../../shared/records/overruns';
import { countBack } from '../../../../src/screens/day/dayNames';
import { writeDayTable } from '../../../../src/screens/day/dayTable';
import { type Played, playUntil, playUntilConfirmed, settings, tap } from '../../../src/screens/playStory';

const find = (consultation: Consultation, nowMs: number) =>
  gatherFindings(
    gatherDay(
      { open: new Map([[consultation.id, consultation]]), closed: [], skinTests: [] },
      nowMs,
      countBack(nowMs),
    ),
    nowMs,
  );

const say = (played: Played, ...raws: readonly RawEvent[]): Played =>
  raws.reduce((before, raw) => tap(before, 60_000, raw), played);

describe('what of the day is looked at again', () => {
  it('is nothing on a day that went well', () => {
    const { consultation, atMs } = playUntilConfirmed('client');
    expect(find(consultation, atMs)).toEqual({
      ...{ endings: [], rules: [], lifted: [], broken: [], told: [] },
      ...{ outcomes: [], late: [], missed: [] },
    });
  });

  it('names a strand that broke, with its mix, and once', () => {
    const { consultation, atMs } = playUntil('OUTCOME_RECORDED', 'lengths');
    expect(find(consultation, atMs).broken).toMatchObject([
      { ticket: 'Q.F.', strand: 1, zone: 'ends', mix: { line: 'Sandbar powder' }, how: 'broken' },
    ]);
  });

  it('counts what strands came to, the best first', () => {
    const { consultation, atMs } = playUntil('DECIDED');
    const grades = consultation.record.strands.map(({ outcome }) => outcome?.grade);
    expect(find(consultation, atMs).outcomes).toEqual(
      ['sound', 'rough', 'gummy', 'broken']
        .map((grade) => ({ grade, count: grades.filter((each) => each === grade).length }))
        .filter(({ count }) => count > 0),
    );
    expect(grades.length).toBe(2);
  });

  it('names who was left on too long, by how much, and how many looks nobody made', () => {
    const { consultation, atMs } = playUntil('BOWL_APPLIED');
    const [clock] = consultation.record.clocks.filter(({ kind }) => kind === 'head');
    const dueInMs = (clock?.dueAtMs ?? 0) - atMs;
    expect(find(consultation, atMs + dueInMs + 179_000).late).toEqual([]);
    const found = find(consultation, atMs + dueInMs + 240_000);
    expect(found.late).toMatchObject([{ ticket: 'Q.F.', kind: 'head', zone: 'lengths', overMs: 240_000 }]);
    // A look every 3 min on suspect hair (common practice, no source): seven or eight of 25 min, and some of its strands.
    const [missed] = found.missed;
    expect(missed?.ticket).toBe('Q.F.');
    expect(missed?.count).toBeGreaterThan(find(consultation, atMs).missed[0]?.count ?? 0);
  });

  it('leaves out what was on another day', () => {
    const { consultation, atMs } = playUntil('OUTCOME_RECORDED', 'lengths');
    expect(find(consultation, atMs + 24 * 3_600_000).broken).toEqual([]);
  });

  it('keeps a reaction that was said to be none, by whom, and the one that was recorded after it', () => {
    const none: RawEvent = { type: 'NO_REACTION', answers: { why: 'lookedNothingSeen' } };
    const suspected = say(playUntil('BOWL_APPLIED'), { type: 'REACTION_SUSPECTED' });
    expect(find(suspected.consultation, suspected.atMs).told).toMatchObject([
      { by: 'Opal', came: { of: 'open' } },
    ]);
    const told = say(
      suspected,
      none,
      { type: 'REACTION_SUSPECTED' },
      {
        type: 'REACTION_RECORDED',
        answers: { signs: ['burning'] },
      },
    );
    expect(find(told.consultation, told.atMs).told.map(({ came }) => came)).toEqual([
      { of: 'none', by: 'Opal', atMs: suspected.atMs + 60_000, why: 'lookedNothingSeen' },
      { of: 'recorded', signs: ['burning'] },
    ]);
  });

  it('counts a rule by how often it stopped, and how often it was lifted', () => {
    expect(isOftenLifted({ rule: 'stop.inherited', stopped: 2, lifted: 1 })).toBe(false);
    expect(isOftenLifted({ rule: 'stop.inherited', stopped: 3, lifted: 2 })).toBe(true);
    expect(isOftenLifted({ rule: 'stop.inherited', stopped: 1, lifted: 1 })).toBe(false);
    const said = endsIronedWet.steps.find(({ raw }) => raw.type === 'ANSWERED')?.raw;
    const confirm = (step: string): RawEvent => ({ type: 'STEP_CONFIRMED', answers: { step } });
    const raised = say(
      playUntilConfirmed('heatSpray'),
      { type: 'REOPENED', answers: { step: 'client' } },
      { type: 'ANSWERED', step: 'client', answers: { ...said?.answers, reactions: ['tingled'] } },
      ...['client', 'hotTools', 'feelHair', 'heatSpray'].map(confirm),
    );
    const { raised: rules } = raised.consultation.state.context.facts;
    const [rule] = rules;
    expect(rules).toHaveLength(1);
    const lifted = say(raised, {
      type: 'OVERRIDDEN',
      answers: { rule: rule ?? '', code: 'knowsHerHair', words: 'Tingled once, years ago' },
    });
    const found = find(lifted.consultation, lifted.atMs);
    expect(found.rules).toEqual([{ rule, stopped: 1, lifted: 1 }]);
    expect(found.lifted).toMatchObject([
      { ticket: 'Q.F.', by: 'Opal', rule, code: 'knowsHerHair', words: 'Tingled once, years ago' },
    ]);
  });
});

describe('a visit that goes on over days', () => {
  const dayMs = 24 * 3_600_000;
  const monday = playUntil('OUTCOME_RECORDED', 'lengths');
  const missed = listMissed(monday.consultation.record).length;
  const parked = say(monday, {
    type: 'PARKED',
    answers: { untilAtMs: monday.atMs + 2 * dayMs },
  });
  const wednesday = say(tap(parked, 2 * dayMs, { type: 'RESUMED' }), {
    type: 'CLIENT_SAID_NO',
    answers: { reason: 'changedHerMind' },
  });
  const { record, log } = wednesday.consultation;
  const closed = closeRecord(record, log);
  if (closed === null) throw new Error('she is still open');
  const state = { open: new Map(), closed: [closed], skinTests: [] };
  const at = (back: number) => {
    const records = gatherDay(state, wednesday.atMs, countBack(wednesday.atMs, { back }));
    return { records, ...gatherFindings(records, wednesday.atMs) };
  };

  it('stands on the day on which her strand broke, and not on the one on which she was done', () => {
    expect(at(2).broken).toMatchObject([{ ticket: 'Q.F.', how: 'broken' }]);
    expect(at(2).records.goneOn).toMatchObject([{ record: { ticket: 'Q.F.' } }]);
    expect(at(2).endings).toEqual([]);
    expect(at(1).records.goneOn).toEqual([]);
    expect(at(0)).toMatchObject({ broken: [], endings: [{ how: 'clientSaidNo', count: 1 }] });
    expect(at(0).records.goneOn).toEqual([]);
  });

  it('counts a look nobody made on its own day', () => {
    expect(missed).toBeGreaterThan(0);
    expect(at(2).missed).toMatchObject([{ count: missed }]);
    expect(at(0).missed).toEqual([]);
  });

  it('is in the table of that day, once in that of the week, and there too while she is away', () => {
    const table = (records: DayRecords) => [...writeDayTable(records, settings.units)].join('');
    expect(table(at(2).records)).toContain('Q.F.');
    expect(table(at(1).records)).not.toContain('Q.F.');
    const week = gatherDay(state, wednesday.atMs, countBack(wednesday.atMs, { days: 7 }));
    expect([week.closed.length, week.goneOn.length]).toEqual([1, 0]);
    const away = { ...state, open: new Map([['story', parked.consultation]]), closed: [] };
    const then = gatherDay(away, wednesday.atMs, countBack(wednesday.atMs, { back: 2 }));
    expect([then.open, then.goneOn.length]).toEqual([[], 1]);
    expect(gatherFindings(then, wednesday.atMs).broken).toHaveLength(1);
  });
});

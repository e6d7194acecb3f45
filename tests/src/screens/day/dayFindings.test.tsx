import { describe, expect, it } from 'vitest';
import type { Consultation } from '../../../../machines/consultation/consultation';
import { endsIronedWet } from '../../../../seeds/endsIronedWet';
import type { RawEvent } from '../../../../shared/records/classify';
import { gatherFindings, isOftenLifted } from '../../../../src/screens/day/dayFindings';
import { gatherDay } from '../../../../src/screens/day/dayRecords';
import { type Played, playUntil, playUntilConfirmed, tap } from '../playStory';

const find = (consultation: Consultation, nowMs: number) =>
  gatherFindings(
    gatherDay({ open: new Map([[consultation.id, consultation]]), closed: [], skinTests: [] }, nowMs),
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

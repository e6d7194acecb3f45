import { expect, it } from 'vitest';
import { DecisionScreen } from '../../../../src/screens/decision/DecisionScreen';
import { act, choose, hasAct, layOnBench, press, said, seen, type } from '../bench';
import { playUntil } from '../playStory';

it('decides what is suggested in one tap', async () => {
  const bench = layOnBench(DecisionScreen, playUntil('OUTCOME_RECORDED', 'lengths'));
  expect(seen('[data-suggested]')).toContain('Ends out');
  await press('decide-endsOut');
  expect(bench.way()).toContain('"mix"');
});

it('asks a name, a reason and words before anything freer, and keeps whose they were', async () => {
  const bench = layOnBench(DecisionScreen, playUntil('OUTCOME_RECORDED', 'lengths'));
  await press('show-freer');
  await choose('decision', 'gentler');
  expect(hasAct('decide-gentler')).toBe(false);
  await press('override-freer');
  await press('override');
  expect([said('code'), said('words')]).toEqual(['Still to be answered.', 'Still to be filled in.']);
  expect(bench.consultation().record.overrides).toEqual([]);
  await choose('by', 'Juno');
  await choose('code', 'seniorAgreed');
  await type('words', 'We both pulled it.');
  await press('override');
  expect(bench.consultation().record.overrides).toMatchObject([{ by: 'Juno', words: 'We both pulled it.' }]);
  await press('decide-gentler');
  expect(bench.consultation().record.decision).toMatchObject({
    by: 'Opal',
    decision: 'gentler',
    suggested: 'endsOut',
  });
});

it('says no, and goes on to the ways out', async () => {
  const bench = layOnBench(DecisionScreen, playUntil('OUTCOME_RECORDED', 'lengths'));
  await choose('decision', 'weSayNo');
  await press('decide-weSayNo');
  expect(bench.way()).toContain('"decision"');
  await press('go-on');
  expect(bench.countMore()).toBe(1);
});

it('sends cut hair and mere deposit to a new plan', async () => {
  const bench = layOnBench(DecisionScreen, playUntil('OUTCOME_RECORDED', 'lengths'));
  await choose('decision', 'cutFirst');
  await press('decide-cutFirst');
  expect(document.querySelectorAll('[data-act="change-plan"]')).toHaveLength(1);
  expect(act('change-plan').dataset.kind).toBe('primary');
  await press('change-plan');
  expect(bench.way()).toContain('"client"');
});

it('takes a wrong outcome back by name, but never that a strand broke', async () => {
  const bench = layOnBench(DecisionScreen, playUntil('OUTCOME_RECORDED', 'lengths'));
  expect(hasAct('retract-ends')).toBe(false);
  await press('retract-lengths');
  await choose('code', 'wrongTap');
  await type('words', 'Meant the other one.');
  await press('retract');
  expect(bench.last()).toMatchObject({ type: 'OUTCOME_RETRACTED', by: 'Opal', payload: { zone: 'lengths' } });
});

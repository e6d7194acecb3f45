import { expect, it } from 'vitest';
import { Client } from '../../../../src/screens/ask/Client';
import { DecisionScreen } from '../../../../src/screens/decision/DecisionScreen';
import { findCutCm } from '../../../../src/screens/decision/findCutCm';
import { viewDecision } from '../../../../src/screens/decision/viewDecision';
import { findKnot } from '../../../../src/screens/knot';
import { choose, layOnBench, press, seen } from '../bench';
import { type Played, playUntil, settings, tap } from '../playStory';

const minute = 60_000;
const recorded = playUntil('OUTCOME_RECORDED', 'lengths');
const decided = (decision: string) => tap(recorded, minute, { type: 'DECIDED', answers: { decision } });
const replan = (decision: string) => tap(decided(decision), minute, { type: 'PLAN_CHANGED' });
const cutOf = ({ consultation, atMs }: Played): number | null =>
  findCutCm(viewDecision(consultation, settings, atMs).found, consultation.record.answers);

it('cuts the ends, and names no figure where hair before them failed too', () => {
  const cm = cutOf(recorded);
  expect(cm).toBeGreaterThan(0);
  expect(cm).toBeLessThanOrEqual(10);
  expect(cutOf(playUntil('OUTCOME_RECORDED', 'lengths', { fibre: 'gummy' }))).toBeNull();
});

it('says on the rail what was decided, not that it is to be', () => {
  const { consultation, atMs } = decided('cutFirst');
  expect(findKnot(consultation.record, settings, atMs)).toBe('cutFirst');
});

it('stays decided when she is come back to, and can be decided otherwise', async () => {
  layOnBench(DecisionScreen, decided('cutFirst'));
  expect(seen('[data-panel="cut-first"]')).toContain('Then tell her new length');
  await press('decide-otherwise');
  await choose('decision', 'endsOut');
  await press('decide-endsOut');
});

it.each([
  ['cutFirst', 'length', 'after the cut'],
  ['depositOnly', 'service', 'Deposit only'],
])('opens the plan after %s at the question that changes: %s', (decision, question, says) => {
  layOnBench(Client, replan(decision));
  expect(document.querySelector<HTMLElement>('.sheet')?.dataset.sheet).toBe(question);
  expect(seen('.sheet-hint')).toContain(says);
});

it('says what to do where nothing decided says what changes', () => {
  layOnBench(Client, tap(recorded, minute, { type: 'PLAN_CHANGED' }));
  expect(seen('[data-line="change-plan"]')).toContain('Tap in the list what changes');
});

it('asks of a new length whether the strands may fall, and says no more of the plan then', async () => {
  const bench = layOnBench(Client, replan('cutFirst'));
  const { length } = bench.consultation().record.answers.client ?? {};
  await choose('length', length === 'chin' ? 'ear' : 'chin');
  await press('change-answer');
  expect(bench.consultation().record.answers.client?.length).not.toBe(length);
  expect(seen('[data-line="change-plan"]')).toBe('');
});

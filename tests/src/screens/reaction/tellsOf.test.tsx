import { expect, it } from 'vitest';
import { TellsOf } from '../../../../src/screens/reaction/TellsOf';
import { Stopped } from '../../../../src/screens/stopped/Stopped';
import { hasAct, layOnBench, press, pressTwice } from '../bench';
import { playUntil, tap } from '../playStory';

it('takes hives told with colour on, only when held, and once', async () => {
  const bench = layOnBench(TellsOf, playUntil('BOWL_APPLIED'));
  await press('tells-of');
  await press('tells-hives');
  expect(bench.last()?.type).toBe('BOWL_APPLIED');
  await press('tells-hives-confirm');
  expect(bench.last()).toMatchObject({ type: 'ANSWERED', payload: { answers: { reactions: ['hives'] } } });
  expect(hasAct('tells-hives')).toBe(false);
  expect(hasAct('tells-swelling')).toBe(true);
});

it('adds a second one to a stop that stands', async () => {
  const stopped = tap(playUntil('DECIDED'), 60_000, {
    type: 'ANSWERED',
    step: 'client',
    answers: { reactions: ['blisters'] },
  });
  const bench = layOnBench(Stopped, stopped);
  await press('tells-of');
  await pressTwice('tells-hives');
  expect(bench.consultation().record.answers.client?.reactions).toEqual(['blisters', 'hives']);
});

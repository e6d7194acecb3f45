import { describe, expect, it } from 'vitest';
import { Finish } from '../../../../src/screens/finish/Finish';
import { Stopped } from '../../../../src/screens/stopped/Stopped';
import { act, choose, hasAct, holdBreaking, layOnBench, press, seen, title } from '../bench';
import { type Played, playUntil, tap } from '../playStory';

const minute = 60_000;

/** The skin test turns out positive, whatever she was at. */
const stop = (played: Played): Played =>
  tap(played, minute, {
    type: 'SKIN_TEST_NOTED',
    answers: { putOnAtMs: played.consultation.record.skinTest?.putOnAtMs, seen: 'reaction' },
  });

describe('somebody who is stopped while strands are in the mix', () => {
  const both = () => layOnBench(Stopped, stop(playUntil('STRAND_STARTED', 'lengths')));

  it('has them taken off, for a reason before their time and in one tap after it', async () => {
    const bench = both();
    expect(bench.way()).toContain('stopped');
    expect(act('take-off').dataset.kind).toBe('primary');
    await press('take-off');
    expect(hasAct('discard-strand')).toBe(false);
    await choose('why', 'looksWeak');
    const [first] = bench.consultation().log.slice(-1);
    expect(first).toMatchObject({ type: 'STRAND_TAKEN_OFF', payload: { why: 'looksWeak' } });
    bench.pass(40 * minute);
    await press('take-off');
    expect(bench.last()).toMatchObject({ type: 'STRAND_TAKEN_OFF', payload: { why: 'timeIsUp' } });
    expect(bench.way()).toContain('stopped');
  });

  it('has each of them said to be breaking by its own name, only when held', async () => {
    const bench = both();
    const held = [...document.querySelectorAll('[data-act="strand-broke"]')];
    expect(held.map(({ textContent }) => textContent?.split('Press')[0])).toEqual([
      'Breaking or mush: ends',
      'Breaking or mush: lengths',
    ]);
    await press('strand-broke');
    expect(bench.last()?.type).toBe('SKIN_TEST_NOTED');
    await holdBreaking('lengths');
    expect(bench.last()).toMatchObject({ type: 'STRAND_BROKE', payload: { zone: 'lengths' } });
  });

  it('has what they said recorded, and goes on to the bar only then', async () => {
    const bench = both();
    await holdBreaking('ends');
    bench.pass(40 * minute);
    await press('take-off');
    expect(hasAct('bar-primary')).toBe(false);
    for (const zone of ['lengths', 'ends']) {
      expect(act('outcome').textContent).toBe(`Record the outcome: ${zone}`);
      await press('outcome');
      expect(title()).toBe(`Outcome: ${zone}`);
      expect(hasAct('discard-strand')).toBe(false);
      if (zone !== 'ends') {
        await choose('fibre', 'rough');
        await choose('stretch', 'snaps');
        await choose('wentPast30', 'yes');
        await choose('level', '7');
        await choose('evenness', 'patchy');
      }
      await press('record-outcome');
      expect(bench.last()).toMatchObject({ type: 'OUTCOME_RECORDED', payload: { zone } });
    }
    expect(title()).toBe('Stopped');
    expect(act('bar-primary').dataset.kind).toBe('primary');
  });
});

it('goes home with a heat plan from being stopped, where something was rinsed', async () => {
  const bench = layOnBench(Stopped, stop(playUntil('BOWL_RINSED')));
  expect(seen('[data-act="finish"]')).toBe('Finish: the heat plan');
  expect(act('finish').dataset.kind).toBe('primary');
  await press('finish');
  expect(bench.way()).toContain('"finish"');
  bench.show(Finish);
  expect(hasAct('give-plan')).toBe(true);
});

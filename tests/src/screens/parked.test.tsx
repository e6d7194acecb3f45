import { expect, it } from 'vitest';
import { ASSUMED_OUTCOME_LAPSES_DAYS } from '../../../shared/judgement/lapse';
import { msPerDay } from '../../../shared/units/time';
import { Parked } from '../../../src/screens/parked/Parked';
import { layOnBench, press, seen } from './bench';
import { type Played, playUntil, playUntilConfirmed, tap } from './playStory';

const park = (played: Played): Played =>
  tap(played, 60_000, { type: 'PARKED', answers: { untilAtMs: played.atMs + 2 * msPerDay } });

it('says what she wants, where it goes on, and that no strand is tested yet', () => {
  layOnBench(Parked, park(playUntilConfirmed('heatSpray')));
  expect(seen('[data-fact="wants"]')).toMatch(/^She wants.+ · .+ · level 7$/);
  expect(seen('[data-fact="next"]')).toBe('Goes on withStrand test');
  expect(seen('[data-fact="strands"]')).toBe('StrandsNone is tested yet.');
});

it('says of each strand how it came out and until when it counts, and of a lapsed one that a new one is due', () => {
  const played = park(playUntil('OUTCOME_RECORDED', 'lengths'));
  const bench = layOnBench(Parked, played);
  expect(seen('[data-fact="next"]')).toBe('Goes on withDecision');
  expect(seen('[data-fact="strands"] [data-zone="ends"]')).toBe('ends: brokenthis mix stays closed');
  expect(seen('[data-fact="strands"] [data-zone="lengths"]')).toMatch(
    /^lengths: soundcounts until \w+, \w+ \d+$/,
  );
  bench.pass((ASSUMED_OUTCOME_LAPSES_DAYS + 1) * msPerDay);
  expect(seen('[data-fact="strands"] [data-zone="lengths"]')).toMatch(/counted until .+: a new strand$/);
});

it('takes her up again where she left', async () => {
  const bench = layOnBench(Parked, park(playUntil('OUTCOME_RECORDED', 'lengths')));
  await press('resume');
  expect(bench.last()).toMatchObject({ type: 'RESUMED' });
  expect(bench.way()).toContain('"decision"');
});

import { describe, expect, it } from 'vitest';
import type { RawEvent } from '../../../../shared/records/classify';
import { DecisionScreen } from '../../../../src/screens/decision/DecisionScreen';
import { Parked } from '../../../../src/screens/parked/Parked';
import { Outcome } from '../../../../src/screens/strandTest/Outcome';
import { Preparing } from '../../../../src/screens/strandTest/Preparing';
import { choose, layOnBench, seen } from '../bench';
import { type Played, playUntil, tap } from '../playStory';

const minute = 60_000;
const zones = ['ends', 'lengths'] as const;
type Zone = (typeof zones)[number];

const off = (zone: Zone, why: string): RawEvent => ({ type: 'STRAND_TAKEN_OFF', answers: { zone, why } });
const outcome = (zone: Zone): RawEvent => ({
  type: 'OUTCOME_RECORDED',
  answers: { zone, fibre: 'sound', stretch: 'springsBack', level: '7', wentPast30: 'no', evenness: 'even' },
});

/** Both strands were planned for 25 min and came off sound: the ends after so long, the lengths after so long. */
const playOff = (endsMs: number, lengthsMs: number): Played => {
  const started = playUntil('STRAND_STARTED', 'lengths');
  const startedAtMs = (zone: Zone) =>
    started.consultation.record.strands.find((strand) => strand.zone === zone)?.atMs ?? 0;
  const whole = 25 * minute;
  const why = (onMs: number) => (onMs < whole ? 'levelReached' : 'timeIsUp');
  const taps = [
    { raw: off('ends', why(endsMs)), atMs: startedAtMs('ends') + endsMs },
    { raw: off('lengths', why(lengthsMs)), atMs: startedAtMs('lengths') + lengthsMs },
  ].sort((one, other) => one.atMs - other.atMs);
  return taps.reduce((played, { raw, atMs }) => tap(played, atMs - played.atMs, raw), started);
};
const record = (played: Played): Played =>
  zones.reduce((before, zone) => tap(before, minute, outcome(zone)), played);

const shape = (zone: Zone) =>
  document.querySelector(`.found-row[data-zone="${zone}"] .found-mark`)?.getAttribute('data-shape');
const row = (zone: Zone) => seen(`.found-row[data-zone="${zone}"] .found-first`);

describe('a strand that came off after 1 of its 25 min', () => {
  const played = playOff(minute, 25 * minute);

  it('is said so with its mark at its outcome, and what it leaves for the head', async () => {
    layOnBench(Outcome, tap(played, minute, outcome('lengths')));
    expect(seen('[data-line="short-time"]')).toBe(
      'Level reached after 1 of 25 min. No full strand: proven for 1 min only.',
    );
    expect(document.querySelector('[data-line="short-time"] .found-mark[data-shape="heed"]')).not.toBeNull();
  });

  it('is no clear finding at the decision, and its minutes are named as the limit', async () => {
    layOnBench(DecisionScreen, record(played));
    expect([row('ends'), shape('ends')]).toEqual([
      'ends: sound, but short: 1 of 25 min, level 7, wanted 7',
      'heed',
    ]);
    expect([row('lengths'), shape('lengths')]).toEqual([
      'lengths: sound after 25 min, level 7, wanted 7',
      'clear',
    ]);
    expect(seen('[data-reason="shortTime"]')).toBe('Short of its time: no full strand.');
    expect(seen('.knot-word')).toContain('OK to mix, proven for 1 min (ends).');
    await choose('decision', 'weSayNo');
    expect(seen('.knot-word')).not.toContain('proven');
  });

  it('stays marked before another strand, and where she is parked', () => {
    const reopened = tap(record(played), minute, { type: 'REOPENED', answers: { step: 'strandTest' } });
    const { unmount } = layOnBench(Preparing, reopened);
    expect(seen('[data-zone="ends"] [data-line="short-time"]')).toBe('short of its time: 1 of 25 min');
    expect(seen('[data-zone="lengths"]')).not.toContain('short of its time');
    unmount();
    const until = { untilAtMs: reopened.atMs + 48 * 60 * minute };
    layOnBench(Parked, tap(record(played), minute, { type: 'PARKED', answers: until }));
    const parked = '.parked-strand[data-zone="ends"]';
    expect(seen(`${parked} [data-line="short-time"]`)).toBe('short of its time: 1 of 25 min');
    expect(document.querySelector(`${parked} .found-mark[data-shape="heed"]`)).not.toBeNull();
  });
});

describe('strands that stood their time', () => {
  it('are said as before', () => {
    const played = playOff(25 * minute, 25 * minute);
    const { unmount } = layOnBench(Outcome, played);
    expect(seen('[data-line="short-time"]')).toBe('');
    unmount();
    layOnBench(DecisionScreen, record(played));
    expect([shape('ends'), shape('lengths')]).toEqual(['clear', 'clear']);
    expect(seen('[data-reason="shortTime"]')).toBe('');
    expect(seen('.knot-word')).toContain('No mix yet. Decided like this, OK to mix.');
    expect(seen('.found')).not.toContain('short');
  });
});

it('names each zone that is short, and says that less than a minute is proof of nothing', () => {
  const { unmount } = layOnBench(DecisionScreen, record(playOff(minute, 12 * minute)));
  expect(seen('.knot-word')).toContain('proven for 12 min (lengths), 1 min (ends).');
  unmount();
  const none = playOff(40_000, 59_000);
  const outcomeOf = layOnBench(Outcome, none);
  expect(seen('[data-line="short-time"]')).toContain('it proves no time on the head');
  outcomeOf.unmount();
  layOnBench(DecisionScreen, record(none));
  expect(seen('.knot-word')).toContain('No mix: on for less than a minute');
  expect(seen('.knot-word')).not.toContain('OK to mix');
});

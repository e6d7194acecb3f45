import { describe, expect, it } from 'vitest';
import { fitLiftCurve } from '../../../../shared/chemistry/liftCurve';
import type { ConsultationRecord } from '../../../../shared/records/record';
import { Processing } from '../../../../src/screens/strandTest/Processing';
import { viewLevels } from '../../../../src/screens/strandTest/viewLevels';
import { choose, layOnBench, press, seen } from '../bench';
import { type Played, playUntil, tap } from '../playStory';

const minute = 60_000;
const forecast = () => seen('[data-line="forecast"]').trim();
const started = playUntil('STRAND_STARTED', 'ends');
const look = (played: Played, level: string, afterMs = 3 * minute): Played =>
  tap(played, afterMs, { type: 'LOOKED', answers: { of: 'strand', zone: 'ends', level, feel: 'sound' } });
const lookAt = (...levels: readonly string[]): Played =>
  levels.reduce((played, level) => look(played, level), started);

/** No tap leads there: a log that was edited, or an older clock. */
const forge = (played: Played, change: (record: ConsultationRecord) => ConsultationRecord): Played => ({
  ...played,
  consultation: { ...played.consultation, record: change(played.consultation.record) },
});
const forgeLevel = (played: Played, level: number): Played =>
  forge(played, (record) => ({
    ...record,
    strands: record.strands.map((strand) => ({
      ...strand,
      looks: strand.looks.map((each, index) => (index === 1 ? { ...each, level } : each)),
    })),
  }));
const forgeLookedAt = (played: Played, beforeMs: number): Played =>
  forge(played, (record) => ({
    ...record,
    clocks: record.clocks.map((clock) => ({
      ...clock,
      lookedAtMs: clock.lookedAtMs.map((at, index) => (index === 0 ? clock.startedAtMs - beforeMs : at)),
    })),
  }));

const cases: readonly (readonly [string, Played, string, string])[] = [
  [
    'a level that fell by more than a reading can be wrong',
    lookAt('5.5', '6.5', '5.5', '6'),
    'falling',
    'The level fell between looks, so no time is said. Look again.',
  ],
  [
    'two looks in one second',
    look(lookAt('5.5', '6'), '6', 400),
    'sameTimes',
    'Two looks in the same second, so no time is said.',
  ],
  [
    'a look before the start',
    forgeLookedAt(lookAt('5.5', '5.5', '6', '6.5'), minute),
    'beforeStart',
    'A look lies before the start, so no time is said.',
  ],
  [
    'a level of 11',
    forgeLevel(lookAt('5.5', '5.5', '6', '6.5'), 11),
    'notALevel',
    'A level outside 1 to 10 was kept, so no time is said.',
  ],
  [
    'a level of 0',
    forgeLevel(lookAt('5.5', '5.5', '6', '6.5'), 0),
    'notALevel',
    'A level outside 1 to 10 was kept, so no time is said.',
  ],
];

describe('bad looks are kept as they were seen, and said in words', () => {
  it.each(cases)('%s', (_what, played, why, words) => {
    const { record } = played.consultation;
    const [strand] = record.strands;
    if (strand === undefined) throw new Error('no strand');
    expect(fitLiftCurve(viewLevels(record, strand).seen)).toEqual({ ok: false, error: why });
    layOnBench(Processing, played);
    expect(forecast()).toBe(words);
    // Nothing is drawn ahead; the looks themselves are all there.
    expect(document.querySelector('.level-ahead')?.getAttribute('d')).toBe('');
    expect(document.querySelectorAll('.level-seen')).toHaveLength(viewLevels(record, strand).seen.length);
  });

  it('a target that the hair was lighter than at its start', () => {
    const client = started.consultation.record.answers.client;
    if (client === undefined) throw new Error('no client');
    const wantsDarker = (played: Played): Played =>
      forge(played, (record) => ({
        ...record,
        answers: { ...record.answers, client: { ...client, targetLevel: 4 } },
      }));
    layOnBench(Processing, wantsDarker(lookAt('5.5', '5.5', '6')));
    expect(forecast()).toBe('It was level 4 or lighter at the start: no lift to wait for.');
    expect(document.querySelector('.level-ahead')?.getAttribute('d')).toBe('');
  });
});

it('says “next look” once somebody has looked, however soon', async () => {
  const bench = layOnBench(Processing, started);
  expect(seen('.clock-look-now')).toBe('First look in 2:00');
  for (const level of ['5', '5.5', '5.5', '6']) {
    bench.pass(14_000);
    await press('look');
    await choose('level', level);
    await choose('feel', 'sound');
  }
  expect(seen('.clock-look-now')).toBe('Next look in 1:04');
});

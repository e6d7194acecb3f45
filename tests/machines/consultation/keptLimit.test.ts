import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { replay } from '../../../machines/consultation/replay';
import { type ConsultationEvent, MODEL_VERSION } from '../../../shared/records/event';
import type { ShippedLog } from '../../shared/records/shippedLogs';
import { findSettings, tap, weighBowl } from './walks/rawTaps';
import { play } from './walks/story';
import { apply, toMix } from './walks/wayToBowl';

/** What the table suggests of everything, once it has been made stricter; before that the real one suggests. */
const table = vi.hoisted(() => ({ isStricter: false }));
vi.mock('../../../shared/judgement/decisionTable', async (importOriginal) => {
  const real = await importOriginal<typeof import('../../../shared/judgement/decisionTable')>();
  const suggestDecision = (findings: Parameters<typeof real.suggestDecision>[0]) =>
    table.isStricter ? 'severalVisits' : real.suggestDecision(findings);
  return { ...real, suggestDecision };
});
afterEach(() => {
  table.isStricter = false;
});

const fixtures = join(import.meta.dirname, '../../shared/records/fixtures');
const shippedBefore = [1, 2, 3, 4].flatMap((version) => {
  const shipped = JSON.parse(
    readFileSync(join(fixtures, `modelVersion${version}.json`), 'utf8'),
  ) as readonly ShippedLog[];
  return shipped.map(({ name, settings, log }) => ({ name: `${name}, model ${version}`, settings, log }));
});
const withMoreTime = shippedBefore.filter(({ log }) => log.some(({ type }) => type === 'CLOCK_EXTENDED'));

/** The log with every entry of one type changed by hand. */
const edit = (
  log: readonly ConsultationEvent[],
  type: ConsultationEvent['type'],
  change: (event: ConsultationEvent) => object,
) => log.map((event) => (event.type === type ? { ...event, ...change(event) } : event));

describe('once the table is stricter than it was', () => {
  test('every log that shipped is taken up, those with more time on the head too', () => {
    table.isStricter = true;
    expect(withMoreTime.length).toBeGreaterThanOrEqual(4);
    for (const { name, settings, log } of shippedBefore) {
      const again = replay('older', log, () => settings);
      expect(again.ok ? 'taken up' : again.error, name).toBe('taken up');
    }
  });

  test('one that claims more time than its strand proved is still set aside', () => {
    table.isStricter = true;
    for (const { name, settings, log } of withMoreTime) {
      const longer = edit(log, 'CLOCK_EXTENDED', ({ payload }) => ({ payload: { ...payload, minutes: 20 } }));
      const again = replay('older', longer, () => settings);
      expect(again.ok || again.error.code, name).toBe('saysOtherwise');
    }
  });

  const { log } = play([
    ...toMix,
    weighBowl('lengths', '9', '20'),
    apply,
    tap('CLOCK_EXTENDED', { clock: 'head-lengths-1', minutes: '2', reason: 'greyResists' }),
  ]);
  const takeUp = (entries: readonly unknown[], modelVersion = MODEL_VERSION + 1) =>
    replay('older', JSON.parse(JSON.stringify(entries)), findSettings, modelVersion);

  test('a bowl keeps the time it was given when it was weighed, and goes by it', () => {
    const before = takeUp(log, MODEL_VERSION);
    table.isStricter = true;
    const after = takeUp(log);
    if (!before.ok || !after.ok) throw new Error(JSON.stringify([before, after]));
    const { bowls, clocks } = after.value.record;
    expect(bowls.map(({ maxMinutes }) => maxMinutes)).toEqual([25]);
    expect([bowls, clocks]).toEqual([before.value.record.bowls, before.value.record.clocks]);
  });

  test('a longer time written into the log by hand never goes beyond what the strand proved', () => {
    const forged = edit(log, 'BOWL_WEIGHED', ({ tokens }) => ({ tokens: { ...tokens, maxMinutes: 90 } }));
    const later = takeUp(forged);
    expect(later.ok && later.value.record.bowls.map(({ maxMinutes }) => maxMinutes)).toEqual([25]);
    const now = takeUp(forged, MODEL_VERSION);
    expect(now.ok || now.error.code).toBe('saysOtherwise');
  });
});

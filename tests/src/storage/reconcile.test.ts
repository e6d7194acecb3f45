import { describe, expect, it } from 'vitest';
import type { CopyReading } from '../../../src/storage/copyReading';
import { encodeLine } from '../../../src/storage/line';
import { type CopyStep, reconcile } from '../../../src/storage/reconcile';
import { linesUpTo } from './tablet';

const holding = (count: number, more: Partial<CopyReading> = {}): CopyReading => ({
  lines: linesUpTo(count),
  fault: null,
  tailBytes: 0,
  claimed: count,
  ...more,
});
const torn = (count: number): CopyReading => holding(count, { tailBytes: 9, claimed: count + 1 });
const damaged = (claimed: number): CopyReading => holding(1, { fault: 'badLine', claimed });
const step = (more: Partial<CopyStep> = {}): CopyStep => ({
  setAside: null,
  cutTail: false,
  appendFrom: null,
  ...more,
});
const settle = (journal: CopyReading | null, index: CopyReading | null) => {
  const { lines, ...plan } = reconcile('open-a', journal, index);
  expect(lines).toStrictEqual(linesUpTo(lines.length));
  return { count: lines.length, ...plan };
};
const note = { name: 'open-a' };

describe('two copies', () => {
  it('that say the same are left as they are', () => {
    expect(settle(holding(3), holding(3))).toStrictEqual({
      count: 3,
      journal: step(),
      index: step(),
      notes: [],
    });
  });

  it('mend the index that is behind, and name it', () => {
    expect(settle(holding(3), holding(2))).toStrictEqual({
      count: 3,
      journal: step(),
      index: step({ appendFrom: 2 }),
      notes: [{ ...note, copy: 'index', kind: 'wasBehind', entries: 1 }],
    });
  });

  it('mend the journal that is behind, and name it', () => {
    expect(settle(holding(1), holding(3))).toStrictEqual({
      count: 3,
      journal: step({ appendFrom: 1 }),
      index: step(),
      notes: [{ ...note, copy: 'journal', kind: 'wasBehind', entries: 2 }],
    });
  });

  it('rebuild whichever is missing, and name it', () => {
    expect(settle(holding(2), null)).toStrictEqual({
      count: 2,
      journal: step(),
      index: step({ appendFrom: 0 }),
      notes: [{ ...note, copy: 'index', kind: 'wasMissing', entries: 2 }],
    });
    expect(settle(null, holding(2))).toStrictEqual({
      count: 2,
      journal: step({ appendFrom: 0 }),
      index: step(),
      notes: [{ ...note, copy: 'journal', kind: 'wasMissing', entries: 2 }],
    });
  });

  it('give back from the index what was torn off the journal', () => {
    expect(settle(torn(2), holding(3))).toStrictEqual({
      count: 3,
      journal: step({ cutTail: true, appendFrom: 2 }),
      index: step(),
      notes: [
        { ...note, copy: 'journal', kind: 'tailCut', bytes: 9 },
        { ...note, copy: 'journal', kind: 'wasBehind', entries: 1 },
      ],
    });
  });

  it.each([
    ['as far as the journal', holding(2)],
    ['missing', null],
  ])('say what is lost when a tail is torn off and the index is %s', (_, index) => {
    const { count, journal, notes } = settle(torn(2), index);
    expect({ count, journal }).toStrictEqual({ count: 2, journal: step({ cutTail: true }) });
    expect(notes).toContainEqual({ ...note, copy: 'journal', kind: 'tailCut', bytes: 9 });
    expect(notes).toContainEqual({ ...note, copy: 'journal', kind: 'lostTail', atLeast: 1 });
  });

  it('replace a damaged one from the whole one, and keep it aside', () => {
    expect(settle(damaged(3), holding(3))).toStrictEqual({
      count: 3,
      journal: step({ setAside: 'badLine', appendFrom: 0 }),
      index: step(),
      notes: [{ ...note, copy: 'journal', kind: 'wasDamaged', entries: 3 }],
    });
    expect(settle(holding(3), damaged(3))).toStrictEqual({
      count: 3,
      journal: step(),
      index: step({ setAside: 'badLine', appendFrom: 0 }),
      notes: [{ ...note, copy: 'index', kind: 'wasDamaged', entries: 3 }],
    });
  });

  it('say what is lost when the damaged one went further than the whole one', () => {
    expect(settle(holding(2), damaged(4)).notes).toContainEqual({
      ...note,
      copy: 'index',
      kind: 'lostTail',
      atLeast: 2,
    });
  });

  it.each([
    ['both are damaged', damaged(2), damaged(3)],
    ['the other is missing', damaged(2), null],
  ])('are kept aside and give no log when %s', (_, journal, index) => {
    const plan = settle(journal, index);
    expect(plan).toMatchObject({ count: 0, journal: step({ setAside: 'badLine' }), notes: [] });
    expect(plan.index.setAside).toBe(index === null ? null : 'badLine');
    expect(settle(index, journal).count).toBe(0);
  });

  it('that contradict each other are both kept aside, whichever is longer', () => {
    const other = encodeLine(1, '"another story"');
    const contrary = holding(3, { lines: [...linesUpTo(1), other, ...linesUpTo(3).slice(2)] });
    for (const [journal, index] of [
      [contrary, holding(5)],
      [holding(2), contrary],
      [torn(2), contrary],
    ] as const) {
      expect(settle(journal, index)).toStrictEqual({
        count: 0,
        journal: step({ setAside: 'contradiction' }),
        index: step({ setAside: 'contradiction' }),
        notes: [],
      });
    }
  });

  it('of which neither holds anything are no log', () => {
    expect(settle(null, null)).toStrictEqual({ count: 0, journal: step(), index: step(), notes: [] });
  });
});

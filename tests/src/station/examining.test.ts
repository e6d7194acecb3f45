import { expect, it } from 'vitest';
import { refuse } from '../../../shared/result';
import { findLogKind } from '../../../src/station/examining';
import { makeTablet } from '../storage/tablet';
import { startSalon, startStation } from './stationUnderTest';

it('finds both copies in order, and nothing set aside', async () => {
  const { station } = await startSalon(makeTablet());
  expect(await station.examine()).toEqual({ copies: { journal: null, index: null }, aside: [] });
  // It was only looked at: what is tapped after it is written as ever.
  expect((await station.undoSettings('Opal')).ok).toBe(true);
  expect(station.readState().settings.id).toBe(2);
});

it('names the copy that does not answer, and both where neither does', async () => {
  const broken = { journal: false, index: false };
  const { station } = await startSalon(makeTablet(), ({ journal, index }) => ({
    journal: {
      ...journal,
      read: async (name) =>
        broken.journal
          ? refuse({ copy: 'journal', kind: 'journalUnavailable', detail: 'secret' })
          : journal.read(name),
    },
    index: {
      ...index,
      read: async (name) =>
        broken.index
          ? refuse({ copy: 'index', kind: 'indexUnavailable', detail: 'secret' })
          : index.read(name),
    },
  }));
  broken.index = true;
  expect((await station.examine())?.copies).toEqual({ journal: null, index: 'indexUnavailable' });
  broken.journal = true;
  const both = await station.examine();
  expect(both?.copies).toEqual({ journal: 'journalUnavailable', index: 'journalUnavailable' });
  expect(JSON.stringify(both)).not.toContain('secret');
});

it('is silent where another window writes', async () => {
  const { station } = await startStation(makeTablet());
  await station.stopWriting();
  expect(await station.examine()).toBeNull();
});

it('says of which kind a log is, and never which one', () => {
  expect(
    [
      'open-a1',
      'closed-2026-11',
      'skintest-b2',
      'bench-c3',
      'settings',
      'erased',
      'unjudged',
      'Q.F..txt',
    ].map(findLogKind),
  ).toEqual(['open', 'closed', 'skinTest', 'bench', 'settings', 'erased', 'unjudged', 'other']);
});

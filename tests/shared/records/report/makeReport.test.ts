import { describe, expect, it } from 'vitest';
import { backup, half, lastDay, named, records, report, visit, whole } from './files';

const bar = records([visit('aaaa1', whole), visit('bbbb2', half)]);
const faultsOf = (texts: Parameters<typeof report>[0]) => report(texts).faults;

describe('a report over several files', () => {
  it('tells who ended how, who is open, and what each file held', () => {
    const { report: told, faults } = report({
      bar,
      hall: backup([visit('aaaa1', whole), visit('cccc3', whole)]),
    });
    expect(faults).toEqual([]);
    expect(told).toMatchObject({
      isDemo: false,
      people: null,
      again: 1,
      outside: 0,
      figures: {
        to: lastDay,
        clients: 3,
        endings: [{ how: 'done', count: 2 }],
        stillOpen: [{ ticket: 'Q.F.', how: 'carriesOver' }],
      },
      files: [
        { name: 'bar', kind: 'records', visits: 2 },
        { name: 'hall', kind: 'backup', visits: 2 },
      ],
    });
  });

  it('reads the others where one cannot be read', () => {
    const { report: told, faults } = report({ gone: null, bar, empty: '' });
    expect(told?.figures.clients).toBe(2);
    expect(faults).toMatchObject([
      { of: 'file', name: 'gone', why: 'notRead' },
      { of: 'file', name: 'empty', why: 'empty' },
    ]);
    expect(report({ gone: null }).report).toBeNull();
  });

  it('leaves out a record whose log does not add up, and names entry, file and place', () => {
    const torn = visit('dddd4', whole);
    const hall = records([
      visit('aaaa1', whole),
      { ...torn, log: torn.log.filter((_, index) => index !== 1) },
    ]);
    const { report: told, faults } = report({ hall });
    expect(told?.figures.clients).toBe(1);
    const place = { consultation: 2, ticket: 'Q.F.' };
    expect(faults).toMatchObject([{ of: 'record', name: 'hall', place, ticket: 'Q.F.' }]);
    expect(faults[0]).toHaveProperty('entry', expect.any(Number));
  });

  it('never puts an invented salon beside a real one, and says of an invented one that it is', () => {
    const demo = records([visit('eeee5', whole)], { isDemo: true });
    expect(report({ bar, demo })).toEqual({
      report: null,
      faults: [{ of: 'mixed', invented: ['demo'], real: ['bar'] }],
    });
    expect(report({ demo }).report?.isDemo).toBe(true);
  });

  it('names people only where every file allows it', () => {
    const open = records([visit('aaaa1', whole, named)]);
    expect(report({ open }, true)).toMatchObject({
      faults: [],
      report: { people: [{ name: 'Opal', clients: 1 }] },
    });
    expect(report({ open, bar }, true)).toMatchObject({
      faults: [{ of: 'names', names: ['bar'] }],
      report: { people: null, figures: { clients: 2 } },
    });
    expect(faultsOf({ bar })).toEqual([]);
  });
});

import { describe, expect, it } from 'vitest';
import { logsOf } from '../../../../shared/records/report/readBackupFile';
import { readReportFile } from '../../../../shared/records/report/readReportFile';
import { CLOSED, ERASED_LOG, OPEN, SETTINGS_LOG } from '../../../../src/station/logNames';
import { backup, half, named, records, visit, whole } from './files';

const two = [visit('aaaa1', whole), visit('bbbb2', half)];
const told = records(two);
const kept = backup(two);
const verdict = (text: string) => {
  const read = readReportFile(text);
  return read.ok ? read.value : read.error;
};
const lines = (text: string) => text.split('\n');

describe('a file that a station saved', () => {
  it('tells its consultations, each with its place: by number and ticket, or by line', () => {
    expect(verdict(told)).toMatchObject({
      kind: 'records',
      offsetMin: 0,
      visits: [
        { id: 'aaaa1', place: { consultation: 1, ticket: 'Q.F.' } },
        { id: 'bbbb2', place: { consultation: 2, ticket: 'Q.F.' } },
      ],
    });
    expect(verdict(kept)).toMatchObject({
      kind: 'backup',
      offsetMin: null,
      visits: [
        { id: 'aaaa1', isClosed: true, place: { line: 3 } },
        { id: 'bbbb2', isClosed: false, place: { line: 4 } },
      ],
    });
  });

  it.each([told, kept])('is read with the mark of UTF-8 in front', (text) => {
    expect(verdict(`\ufeff${text}`)).toMatchObject({ visits: [{ id: 'aaaa1' }, { id: 'bbbb2' }] });
  });

  it('says how far ahead of UTC its clock was, behind it too', () => {
    const at = (offset: string) => verdict(told.replace(/("madeAt":"[^"]+)\+00:00"/, `$1${offset}"`));
    expect(at('-03:30')).toMatchObject({ offsetMin: -210 });
    expect(at('+12:45')).toMatchObject({ offsetMin: 765 });
  });

  it('lets figures name people where the settings in force do', () => {
    const under = (settings: typeof named) =>
      records([visit('aaaa1', whole), visit('cccc3', half, settings)]);
    expect(verdict(told)).toMatchObject({ mayName: false });
    // The settings of the newest entry count, and that is the end of the whole story.
    expect(verdict(under(named))).toMatchObject({ mayName: false });
    expect(verdict(records([visit('aaaa1', whole, named), visit('bbbb2', half)]))).toMatchObject({
      mayName: true,
    });
    expect(verdict(backup(two, { under: named }))).toMatchObject({ mayName: true });
    expect(verdict(kept)).toMatchObject({ mayName: false });
    expect(verdict(records([]))).toMatchObject({ mayName: true, visits: [] });
  });

  it.each([
    ['nothing', ' \n', { why: 'empty', place: null }],
    ['a list of somebody else', '[1, 2]', { why: 'anotherProgram', place: null }],
    ['a JSON that was cut off', told.slice(0, told.length * 0.9), { why: 'cutOff', place: { line: 3 } }],
    [
      'a JSON of which one consultation was changed',
      told.replace(/("id":"bbbb2".*?"by":")Opal/, '$1Juno'),
      { why: 'damaged', place: { consultation: 2, ticket: 'Q.F.' } },
    ],
    [
      'a JSON with a torn line',
      told.replace('"id":"bbbb2"', '"id":bbbb2'),
      { why: 'damaged', place: { line: 3 } },
    ],
    ['a JSON of a newer edition', told.replace(/"v":\d+/, '"v":99'), { why: 'newer', place: null }],
    ['a backup that was cut off', lines(kept).slice(0, 3).join('\n'), { why: 'cutOff', place: { line: 3 } }],
    [
      'a backup with a torn line',
      lines(kept)
        .map((line, at) => (at === 4 ? line.slice(0, 30) : line))
        .join('\n'),
      { why: 'damaged', place: { line: 5 } },
    ],
    [
      'a backup of which one letter was changed',
      kept.replace('Q.F.', 'Q.G.'),
      { why: 'damaged', place: null },
    ],
    ['a backup of a newer edition', kept.replace(/"v":1/, '"v":99'), { why: 'newer', place: null }],
  ])('%s is refused by name, with its place', (_what, text, refusal) => {
    expect(verdict(text)).toEqual(refusal);
  });

  it('keeps what is no record apart, by its line', () => {
    const odd = { ...visit('aaaa1', whole), record: { ...whole.consultation.record, id: 'A' } };
    expect(verdict(backup([odd, ...two]))).toMatchObject({
      notUnderstood: [{ line: 3 }],
      visits: [{ id: 'aaaa1', place: { line: 4 } }, { id: 'bbbb2' }],
    });
  });

  it('names its logs as the station does', () => {
    expect(logsOf).toEqual({ settings: SETTINGS_LOG, erased: ERASED_LOG, open: OPEN, closed: CLOSED });
  });
});

import { expect, it } from 'vitest';
import { isSame } from '../../../../machines/consultation/replay';
import { joinVisits, type NamedFile } from '../../../../shared/records/report/joinVisits';
import { readReportFile } from '../../../../shared/records/report/readReportFile';
import { backup, half, records, visit, whole } from './files';

const file = (name: string, text: string): NamedFile => {
  const read = readReportFile(text);
  if (!read.ok) throw new Error(read.error.why);
  return { name, file: read.value };
};
const bar = file('bar.json', records([visit('aaaa1', whole), visit('bbbb2', half)]));
/** Both ways round: the order in which files are named does not matter. */
const join = (...files: readonly NamedFile[]) => {
  const [there, back] = [files, [...files].reverse()].map((each) => joinVisits(each, isSame));
  const sizes = (joined: typeof there) =>
    joined?.visits.map(({ visit: { id, log } }) => `${id} ${log.length}`).sort();
  expect(sizes(there)).toEqual(sizes(back));
  if (there === undefined) throw new Error('no files');
  return { ...there, sizes: sizes(there) };
};
const entries = ({ consultation: { log } }: typeof whole) => log.length;

it('counts the same consultation of two files once, from a JSON and from a backup', () => {
  const joined = join(bar, file('hall.backup', backup([visit('aaaa1', whole)])));
  expect(joined.sizes).toEqual([`aaaa1 ${entries(whole)}`, `bbbb2 ${entries(half)}`]);
  expect(joined).toMatchObject({ again: 1, erased: 0, differing: [] });
});

it('of one who went on since takes the file that knows more', () => {
  expect(join(bar, file('later.json', records([visit('bbbb2', whole)]))).sizes).toEqual([
    `aaaa1 ${entries(whole)}`,
    `bbbb2 ${entries(whole)}`,
  ]);
});

it('counts one that two files tell otherwise in neither way, and names both places', () => {
  const log = half.consultation.log.map((entry, index) => (index === 2 ? { ...entry, by: 'Juno' } : entry));
  const other = { ...half, consultation: { ...half.consultation, log } };
  const joined = join(bar, file('hall.backup', backup([visit('bbbb2', other)])));
  expect(joined.sizes).toEqual([`aaaa1 ${entries(whole)}`]);
  expect(joined.differing).toEqual([
    {
      id: 'bbbb2',
      places: [
        { name: 'bar.json', place: { consultation: 2, ticket: 'Q.F.' } },
        { name: 'hall.backup', place: { line: 3 } },
      ],
    },
  ]);
});

it('leaves out what was erased at one of the stations', () => {
  const joined = join(bar, file('hall.backup', backup([], { erased: ['aaaa1', 'zzzz9'] })));
  expect(joined.sizes).toEqual([`bbbb2 ${entries(half)}`]);
  expect(joined.erased).toBe(1);
});

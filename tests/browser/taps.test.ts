import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { replay } from '../../machines/consultation/replay';
import { readBlock, replaceBlock } from '../printedBlock';
import { listOpenQuestions } from '../shared/records/openQuestions';
import { lengthOf, playAlone } from './makeLog';
import { readOpenLog, writeLogs } from './memory';
import { makePerson, type Person } from './person';
import { useStation } from './station';
import { makeTapCounter, type TapCounter } from './taps/countingHands';
import { cautiousTime, countContacts, type Done, modelTime } from './taps/keystrokeModel';
import { doQuickly } from './taps/quickHands';
import { countThoughts } from './taps/thoughts';
import { type CountedWay, countedWays } from './taps/ways';

const station = useStation();
const id = 'counted00001';

/** She stands in the store as far as the way begins; who is at the tablet has said so. */
async function comeTo(way: CountedWay, counter: TapCounter): Promise<{ person: Person; chair: number }> {
  const { settings, startAtMs, before } = way;
  const by = (before[0] ?? way.done[0])?.by ?? '';
  const opened = [...before, ...way.done].find(({ raw }) => raw.type === 'OPENED')?.raw.answers;
  const person = await makePerson(
    station.browser,
    station.address,
    by,
    startAtMs + lengthOf(before) + 1_000,
    {
      hands: counter.hands,
      prepare: (page) =>
        writeLogs(page, {
          settings: [{ settings, by, atMs: startAtMs - 1_000 }],
          ...way.stored?.(),
          ...(before.length === 0 ? {} : { [`open-${id}`]: playAlone(before, startAtMs, settings, id).log }),
        }),
    },
  );
  await person.reload();
  return { person, chair: Number(opened?.chair ?? 0) };
}

/** Does it with fingers, and says what that took. */
async function count(way: CountedWay): Promise<Done & { readonly person: Person }> {
  const counter = makeTapCounter();
  const { person, chair } = await comeTo(way, counter);
  if (!way.fromBar) await person.open(chair);
  counter.take();
  if (way.fromBar && way.before.length > 0 && !isParked(way)) await person.open(chair);
  for (const step of way.done) await doQuickly(person, step);
  const thoughts = way.done.reduce((sum, step) => sum + countThoughts(step), way.linesRead ?? 0);
  return { ...counter.take(), thoughts, person };
}

/** Who is parked is taken up again by the first thing that is done. */
const isParked = ({ done }: CountedWay): boolean => done[0]?.raw.type === 'RESUMED';

/** The questions that her log leaves without an answer. */
async function listLeftOpen({ page }: Person, { settings }: CountedWay): Promise<readonly string[]> {
  const { id: open, log } = await readOpenLog(page);
  const read = replay(open, log, () => settings);
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  return listOpenQuestions(read.value.record.answers, settings);
}

const rows: string[] = [];
const seconds = (value: number): string => `${value.toFixed(1)} s`;

describe('quick, or it is not used', () => {
  it.each(countedWays)('$name stays within its budget', async (way) => {
    const { person, ...done } = await count(way);
    const contacts = countContacts(done);
    const { budget } = way;
    rows.push(
      `| ${way.name} | ${way.counted} | ${contacts} of ${budget.contacts} | ${done.holds} | ${done.keys} | ${seconds(modelTime(done))}${budget.seconds === null ? '' : ` of ${budget.seconds} s`} | ${seconds(cautiousTime(done))} |`,
    );
    expect(person.complaints).toEqual([]);
    if (way.asksAll) expect(await listLeftOpen(person, way)).toEqual([]);
    expect(contacts).toBeLessThanOrEqual(budget.contacts);
    if (budget.seconds !== null) expect(modelTime(done)).toBeLessThanOrEqual(budget.seconds);
    await person.page.context().close();
  });
});

const document = join(import.meta.dirname, '..', '..', 'DEVELOPERS.md');
const head = [
  '| what | from where to where | taps and keys | of them held | keys | model | each tap P + K + M |',
  '| --- | --- | --- | --- | --- | --- | --- |',
];

it('DEVELOPERS.md shows what was counted now', () => {
  const table = `${[...head, ...rows].join('\n')}\n`;
  console.info(`\n${table}`);
  const text = readFileSync(document, 'utf8');
  // UPDATE_DOCS=1 writes instead of comparing: that is `npm run docs`.
  if (process.env.UPDATE_DOCS === '1') writeFileSync(document, replaceBlock(text, 'taps', table));
  expect(readBlock(readFileSync(document, 'utf8'), 'taps')).toBe(table);
});

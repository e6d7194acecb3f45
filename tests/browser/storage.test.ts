import type { BrowserContext, Page } from 'playwright-core';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { tabletLandscape } from './browser';
import { plantLogs } from './kills/plant';
import { leave, readBack, tap, visit } from './kills/readBack';
import { makeSalonDay, nameConsultation } from './kills/salonDay';
import { deleteIndex, listFiles, readFile, readIndexed, removeJournals, writeFile } from './originStore';
import { useStation } from './station';

const station = useStation();
let context: BrowserContext;
/** A page of the origin that is not the station, to look at its store from outside. */
let outside: Page;

beforeEach(async () => {
  context = await station.browser.newContext(tabletLandscape);
  outside = await context.newPage();
  await outside.goto(`${station.address}/icon.svg`);
  await plantLogs(outside, makeSalonDay(Date.now()));
});
afterEach(() => context.close());

const openStation = async (): Promise<Page> => {
  const page = await context.newPage();
  await page.goto(station.address);
  await page.locator('main.bar').waitFor();
  await mode(page, 'starting').waitFor({ state: 'detached' });
  return page;
};
const id = nameConsultation('feelHair');
const log = `open-${id}`;
const mode = (page: Page, name: string) => page.locator(`[data-mode="${name}"]`);
/** Neither watching nor still reading. */
const writes = (page: Page): Promise<void> => page.locator('[data-mode]').waitFor({ state: 'detached' });
const answer = async (page: Page, option: string): Promise<void> => {
  await tap(page, '[data-ledger="porosity"]');
  await tap(page, `[data-question="porosity"] [data-option="${option}"]`);
};
const showsLength = (page: Page, length: number): Promise<void> =>
  page.locator(`main[data-log-length="${length}"]`).waitFor();

/** Three answers at the second chair, each acknowledged; answers how long the log is then. */
async function answerThree(page: Page): Promise<number> {
  const { length } = await visit(page, 'feelHair');
  for (const [place, option] of ['low', 'normal', 'high'].entries()) {
    await answer(page, option);
    await showsLength(page, length + place + 1);
  }
  return length + 3;
}

/** Answers, then closes the station, so that its store can be harmed. */
async function answerAndClose(): Promise<{ readonly length: number; readonly journal: string }> {
  const page = await openStation();
  const length = await answerThree(page);
  await page.close();
  return { length, journal: await readFile(outside, 'journals', log) };
}

/** What a fresh start tells, and how long it shows the log to be; null when it is not there. */
async function startAnew() {
  const page = await openStation();
  const { notices, told } = await readBack(page);
  return { page, notices, length: told.get(id)?.log.length ?? null, count: told.size };
}

const splitLines = (text: string): readonly string[] => text.split('\n').filter((line) => line !== '');

describe('the two copies', () => {
  it('hold the same lines as soon as an answer is shown', async () => {
    const length = await answerThree(await openStation());
    const lines = splitLines(await readFile(outside, 'journals', log));
    expect(lines).toHaveLength(length);
    expect(await readIndexed(outside, log)).toEqual(lines);
  });

  it('lose nothing when the journal is torn: the tail is kept aside, the line comes from the index', async () => {
    const { length, journal } = await answerAndClose();
    await writeFile(outside, log, journal.slice(0, -40));
    const after = await startAnew();
    expect(after.length).toBe(length);
    expect(after.notices).toEqual([
      expect.stringContaining('Set aside, not deleted'),
      expect.stringContaining('A power cut tore off the last line of'),
      expect.stringMatching(
        /^Caught up: .* in the journal\. Entries from the other copy: 1\. Nothing to do\.$/,
      ),
    ]);
    expect(await readFile(outside, 'journals', log)).toBe(journal);
    const torn = splitLines(journal).at(-1)?.slice(0, -39);
    const [kept = ''] = await listFiles(outside, 'aside');
    expect(await readFile(outside, 'aside', kept)).toBe(torn);
  });

  it('lose nothing when IndexedDB is gone: it is written anew from the journals', async () => {
    const { length, journal } = await answerAndClose();
    await deleteIndex(outside);
    const after = await startAnew();
    expect(after).toMatchObject({ length, count: 8 });
    // Eight clients and the settings.
    expect(after.notices).toHaveLength(9);
    for (const notice of after.notices) expect(notice).toMatch(/^Put back: .*, missing in the index\./);
    expect(await readIndexed(outside, log)).toEqual(splitLines(journal));
  });

  it('lose nothing when the journals are gone: they are written anew from IndexedDB', async () => {
    const { length, journal } = await answerAndClose();
    await removeJournals(outside);
    const after = await startAnew();
    expect(after).toMatchObject({ length, count: 8 });
    for (const notice of after.notices) expect(notice).toMatch(/^Put back: .*, missing in the journal\./);
    expect(await readFile(outside, 'journals', log)).toBe(journal);
  });

  it('say what was lost when neither has it any more, and take what is answered next', async () => {
    const { length, journal } = await answerAndClose();
    await deleteIndex(outside);
    await writeFile(outside, log, journal.slice(0, -40));
    const { page, ...after } = await startAnew();
    expect(after).toMatchObject({ length: length - 1, count: 8 });
    expect(after.notices.filter((notice) => notice.startsWith('Lost:'))).toEqual([
      `Lost: the last entries of the consultation of ${log}, in both copies, at least 1. Ask again what is missing.`,
    ]);
    await visit(page, 'feelHair');
    await answer(page, 'high');
    await showsLength(page, length);
    expect(await readIndexed(outside, log)).toEqual(splitLines(await readFile(outside, 'journals', log)));
  });

  it('set a journal aside whose inside was changed, untouched, and go on with the index', async () => {
    const { length, journal } = await answerAndClose();
    const changed = journal.replace('"Opal"', '"Juno"');
    await writeFile(outside, log, changed);
    const after = await startAnew();
    expect(after.length).toBe(length);
    expect(after.notices.join()).toContain('a line in it cannot be read');
    expect(await readFile(outside, 'journals', log)).toBe(journal);
    const [kept = ''] = await listFiles(outside, 'aside');
    expect(await readFile(outside, 'aside', kept)).toBe(changed);
  });

  it('set the whole log aside and name it when the index is gone as well', async () => {
    const { journal } = await answerAndClose();
    const changed = journal.replace('"Opal"', '"Juno"');
    await writeFile(outside, log, changed);
    await deleteIndex(outside);
    const after = await startAnew();
    expect(after).toMatchObject({ length: null, count: 7 });
    expect(after.notices.join()).toContain(
      `the consultation of ${log} in the journal: a line in it cannot be read`,
    );
    const [kept = ''] = await listFiles(outside, 'aside');
    expect(await readFile(outside, 'aside', kept)).toBe(changed);
  });
});

describe('a second window', () => {
  it('watches what the first writes, and writes nothing itself', async () => {
    const first = await openStation();
    const second = await openStation();
    await mode(second, 'watching').waitFor();
    const length = await answerThree(first);
    expect(await visit(second, 'feelHair')).toMatchObject({ length, pressed: { porosity: 'high' } });
    await answer(second, 'low');
    await answer(first, 'normal');
    await showsLength(second, length + 1);
    const lines = splitLines(await readFile(outside, 'journals', log));
    expect(lines).toHaveLength(length + 1);
    expect(lines.at(-1)).toContain('"porosity":"normal"');
  });

  it('asks to take over, gets it with all that was on its way, and the first becomes the watcher', async () => {
    const first = await openStation();
    const second = await openStation();
    await mode(second, 'watching').waitFor();
    const { length } = await visit(first, 'feelHair');
    // Four taps in one go: they are still being written when the place is asked for.
    await first.evaluate(() => {
      for (const option of ['low', 'normal', 'high', 'low']) {
        document.querySelector<HTMLElement>('[data-ledger="porosity"]')?.click();
        document.querySelector<HTMLElement>(`[data-question="porosity"] [data-option="${option}"]`)?.click();
      }
    });
    // Asked twice, as an impatient finger does.
    await second.evaluate(() => {
      const ask = document.querySelector<HTMLElement>('[data-act="take-over"]');
      ask?.click();
      ask?.click();
    });
    await mode(first, 'watching').waitFor();
    await writes(second);
    expect(await visit(second, 'feelHair')).toMatchObject({
      length: length + 4,
      pressed: { porosity: 'low' },
    });
    await answer(second, 'high');
    await showsLength(second, length + 5);
    await showsLength(first, length + 5);
    const lines = splitLines(await readFile(outside, 'journals', log));
    expect(lines).toHaveLength(length + 5);
    expect(await readIndexed(outside, log)).toEqual(lines);

    await tap(first, '[data-act="take-over"]');
    await mode(second, 'watching').waitFor();
    await writes(first);
    await answer(first, 'normal');
    await showsLength(second, length + 6);
  });

  it('writes as soon as the first is closed, without being asked', async () => {
    const first = await openStation();
    const second = await openStation();
    await mode(second, 'watching').waitFor();
    const length = await answerThree(first);
    await first.close();
    await writes(second);
    await visit(second, 'feelHair');
    await answer(second, 'low');
    await showsLength(second, length + 1);
  });

  it('cannot write a log that the first has open, even when it thinks the place is its own', async () => {
    const first = await openStation();
    const length = await answerThree(first);
    const second = await context.newPage();
    // Locks that keep nobody out: then only the open file handle is left to do so.
    await second.addInitScript(() => {
      const request = (_name: string, _options: object, hold: (lock: object) => Promise<unknown>) => hold({});
      Object.defineProperty(navigator, 'locks', { value: { request } });
    });
    await second.goto(station.address);
    const { notices } = await readBack(second);
    expect(notices.join()).toContain('is held by another window');
    await visit(second, 'feelHair');
    await answer(second, 'low');
    await answer(first, 'normal');
    await showsLength(first, length + 1);
    await leave(second);
    const lines = splitLines(await readFile(outside, 'journals', log));
    expect(lines).toHaveLength(length + 1);
    expect(lines.at(-1)).toContain('"porosity":"normal"');
  });
});

import type { Page } from 'playwright-core';
import { afterEach, describe, expect, it } from 'vitest';
import { SETTINGS_LOG } from '../../src/station/logNames';
import { readLogs, writeLogs } from './memory';
import { makePerson, type Person, patience } from './person';
import { minuteMs, nowMs, until } from './scenes/clients';
import { withCover } from './scenes/coverScenes';
import { alone, fullHouse } from './scenes/houses';
import { useStation } from './station';

const station = useStation();
let opal: Person;
afterEach(() => opal.page.context().close());

const open = async (logs: Parameters<typeof withCover>[0], doubleTapMs = 0): Promise<Page> => {
  opal = await makePerson(station.browser, station.address, 'Opal', nowMs, {
    doubleTapMs,
    leavesCover: true,
    prepare: (page) => writeLogs(page, withCover(logs)()),
  });
  return opal.page;
};
const phase = (page: Page) => page.locator('.idle-over').getAttribute('data-idle');
const isPhase = (page: Page, wanted: string) => expect.poll(() => phase(page), patience).toBe(wanted);

/** Warned on the way, as anybody would be. */
const cover = async (page: Page): Promise<void> => {
  await opal.pass(100_000);
  await isPhase(page, 'warned');
  await opal.pass(20_000);
  await isPhase(page, 'covered');
};
/** What every client is called by in the fullest house. */
const ticketsOf = async (page: Page): Promise<readonly string[]> =>
  [...(await readLogs(page)).entries()].flatMap(([name, log]) => {
    const [first] = log as readonly { payload?: { ticket?: string } }[];
    return name.startsWith('open-') && first?.payload?.ticket !== undefined ? [first.payload.ticket] : [];
  });
/** What can be read, and nothing that is hidden. */
const seen = async (page: Page) => (await page.locator('body').allInnerTexts()).join('');
const countEntries = async (page: Page): Promise<number> =>
  [...(await readLogs(page)).values()].reduce((sum, log) => sum + log.length, 0);

describe('an idle tablet', () => {
  it('warns, and one tap on what it covers keeps it open and presses nothing', async () => {
    const page = await open(alone(until('STRAND_STARTED'), minuteMs));
    await opal.pass(100_000);
    await isPhase(page, 'warned');
    const box = await page.locator('.place[data-chair="3"]').boundingBox();
    await page.touchscreen.tap((box?.x ?? 0) + 40, (box?.y ?? 0) + (box?.height ?? 0) - 12);
    await isPhase(page, 'awake');
    expect(await page.locator('main.bar').count()).toBe(1);
    await opal.pass(90_000);
    await isPhase(page, 'awake');
  });

  it('covers every ticket to eye, search, reader and printer, and shows chairs and clocks', async () => {
    const page = await open(fullHouse);
    const tickets = await ticketsOf(page);
    expect(tickets.length).toBeGreaterThan(8);
    const before = await seen(page);
    expect(tickets.filter((ticket) => before.includes(ticket)).length).toBeGreaterThan(6);
    await cover(page);
    const shown = await seen(page);
    expect(tickets.filter((ticket) => shown.includes(ticket))).toEqual([]);
    expect(shown).toMatch(/Chair 1[\s\S]*STRAND[\s\S]*\d:\d\d/);
    const heard = await page.locator('body').ariaSnapshot();
    expect(tickets.filter((ticket) => heard.includes(ticket))).toEqual([]);
    await page.emulateMedia({ media: 'print' });
    const printed = await seen(page);
    expect(tickets.filter((ticket) => printed.includes(ticket))).toEqual([]);
    expect(await page.title()).toBe('Strandproof');
  });

  it('prints nothing of the day while it is covered', async () => {
    const page = await open(fullHouse);
    await page.locator('[data-act="day"]').tap();
    await page.locator('.paper').waitFor({ state: 'attached' });
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.paper').isVisible()).toBe(true);
    await cover(page);
    expect(await page.locator('.paper').isVisible()).toBe(false);
    expect(await page.locator('.station').isVisible()).toBe(false);
  });

  it('takes the first tap for itself, and a double tap too', async () => {
    const page = await open(fullHouse, 4_000);
    const entries = await countEntries(page);
    await cover(page);
    const box = await page.locator('[data-act="uncover"]').boundingBox();
    const at = [(box?.x ?? 0) + (box?.width ?? 0) / 2, (box?.y ?? 0) + (box?.height ?? 0) / 2] as const;
    await page.touchscreen.tap(...at);
    await page.touchscreen.tap(...at);
    await isPhase(page, 'awake');
    expect(await page.locator('main.bar').count()).toBe(1);
    expect(await page.locator('dialog[open]').count()).toBe(0);
    expect(await countEntries(page)).toBe(entries);
  });

  it('keeps what was typed and not yet written, and the window it was typed in', async () => {
    const page = await open(fullHouse);
    await page.locator('[data-act="who"]').tap();
    await page.locator('[data-act="name-not-here"]').tap();
    await page.locator('dialog[open] [data-question="name"] :is(input, textarea)').fill('Mar');
    await cover(page);
    await page.keyboard.press('Escape');
    await isPhase(page, 'awake');
    expect(await page.locator('dialog[open] [data-question="name"] :is(input, textarea)').inputValue()).toBe(
      'Mar',
    );
  });

  it('calls under its cover; silence leaves the cover, and her chair opens her without a PIN', async () => {
    const page = await open(alone(until('STRAND_STARTED'), 30_000));
    await page.keyboard.press('Shift');
    await cover(page);
    const silence = page.locator('.cover .silence');
    await silence.waitFor();
    const entries = await countEntries(page);
    await silence.tap();
    await silence.waitFor({ state: 'detached' });
    await expect.poll(() => countEntries(page), patience).toBe(entries + 1);
    expect(await phase(page)).toBe('covered');
    await page.locator('[data-covered-chair="3"]').tap();
    await page.locator('main[data-consultation]').waitFor();
    await isPhase(page, 'awake');
  });

  it('is not covered while somebody reads the steps of first aid', async () => {
    const page = await open(fullHouse);
    await page.locator('.place[data-chair="5"]').tap();
    await page.locator('main[data-consultation]').waitFor();
    await opal.pass(20 * minuteMs);
    await isPhase(page, 'awake');
  });

  it('is not covered where the owner wants none', async () => {
    opal = await makePerson(station.browser, station.address, 'Opal', nowMs, {
      leavesCover: true,
      prepare: (page) => writeLogs(page, fullHouse()),
    });
    expect(Object.keys(fullHouse())).toContain(SETTINGS_LOG);
    await opal.pass(60 * minuteMs);
    expect(await phase(opal.page)).toBe('awake');
  });
});

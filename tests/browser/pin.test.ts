import { readFile } from 'node:fs/promises';
import { afterEach, describe, expect, it } from 'vitest';
import { readLogs, writeLogs } from './memory';
import { makePerson, type Person, patience } from './person';
import { nowMs } from './scenes/clients';
import { withCover } from './scenes/coverScenes';
import { fullHouse } from './scenes/houses';
import { useStation } from './station';

const station = useStation();
const PIN = '908172';
let opal: Person;
let heard: string[];
afterEach(() => opal.page.context().close());

const open = async (logs = fullHouse): Promise<void> => {
  heard = [];
  opal = await makePerson(station.browser, station.address, 'Opal', nowMs, {
    leavesCover: true,
    prepare: async (page) => {
      page.on('console', (message) => heard.push(message.text()));
      page.on('request', (request) => heard.push(request.url()));
      await writeLogs(page, logs());
    },
  });
};
const type = async (pin: string): Promise<void> => {
  for (const digit of pin) await opal.press(opal.page.locator(`dialog[open] [data-key="${digit}"]`));
  await opal.act('pad-done');
};
const asked = () => opal.page.locator('dialog[open] [data-pin="asked"]');
const isAt = (step: string) => opal.page.locator(`main[data-step="${step}"]`).waitFor();

const toSettings = async (): Promise<void> => {
  await opal.act('settings');
  const who = opal.page.locator('[data-act="who-Opal"]');
  if ((await who.count()) > 0) await opal.press(who);
};
const setPin = async (): Promise<void> => {
  await toSettings();
  await opal.act('section-cover');
  await opal.act('set-pin');
  await type(PIN);
  await opal.page.locator('[data-pin="again"]').waitFor();
  await type(PIN);
  await opal.page.locator('[data-pin-set="yes"]').waitFor();
  await opal.act('bar');
};
/** What the station keeps of the PIN. */
const readKept = () =>
  opal.page.evaluate(() => JSON.parse(localStorage.getItem('strandproof.pin') ?? 'null')) as Promise<{
    salt: string;
    key: string;
    rounds: number;
    wrong: number;
  }>;

describe('the PIN of this tablet', () => {
  it('stands before settings, records kept and the day’s files, and before no client', async () => {
    await open();
    await setPin();
    await toSettings();
    await asked().waitFor();
    await opal.act('close-dialog');
    expect(await opal.page.locator('main.bar').count()).toBe(1);
    await opal.act('day');
    await isAt('day');
    await opal.act('kept');
    await asked().waitFor();
    await opal.act('close-dialog');
    await isAt('day');
    let downloads = 0;
    opal.page.on('download', () => {
      downloads += 1;
    });
    for (const act of [
      'download-day',
      'download-table',
      'download-columns',
      'download-schema',
      'print-day',
    ]) {
      const button = opal.page.locator(`[data-act="${act}"]`);
      if (await button.isDisabled()) continue;
      await opal.press(button);
      await asked().waitFor();
      await opal.act('close-dialog');
    }
    expect(downloads).toBe(0);
    const downloading = opal.page.waitForEvent('download');
    await opal.act('download-table');
    await type(PIN);
    expect((await downloading).suggestedFilename()).toMatch(/\.csv$/);
    await opal.act('kept');
    await isAt('kept');
    await opal.act('bar');
    await toSettings();
    await asked().waitFor();
    await opal.act('close-dialog');
    await opal.press(opal.page.locator('.place[data-chair="2"]'));
    await opal.page.locator('main[data-consultation]').waitFor();
  });

  it('waits after a wrong one, over a reload too, and says for how long', async () => {
    await open();
    await setPin();
    await opal.pass(60_000);
    for (const seconds of [1, 2, 4]) {
      await toSettings();
      await asked().waitFor();
      await type('111111');
      await opal.page.locator('[data-pin="waiting"]').waitFor();
      expect(await opal.page.locator('.pin-said').textContent()).toContain(`0:0${seconds}`);
      await opal.reload();
      await toSettings();
      await opal.page.locator('[data-pin="waiting"]').waitFor();
      await opal.page.keyboard.type(PIN);
      expect(await opal.page.locator('.pin-dot[data-filled]').count()).toBe(0);
      await opal.act('close-dialog');
      await opal.pass(seconds * 1_000);
    }
    expect((await readKept()).wrong).toBe(3);
    await toSettings();
    await asked().waitFor();
    await opal.page.keyboard.type(PIN);
    await opal.page.keyboard.press('Enter');
    await isAt('settings');
    expect((await readKept()).wrong).toBe(0);
  });

  it('is asked for anew once the tablet was covered, and the cover itself asks for none', async () => {
    await open(withCover(fullHouse));
    await setPin();
    await toSettings();
    await type(PIN);
    await isAt('settings');
    await opal.pass(120_000);
    await opal.page.locator('.idle-over[data-idle="covered"]').waitFor();
    await opal.act('uncover');
    await opal.page.locator('main.bar').waitFor();
    await toSettings();
    await asked().waitFor();
  });

  it('goes into no backup, no log, no address, no title and no console', async () => {
    await open();
    await setPin();
    const { salt, key, rounds } = await readKept();
    expect(rounds).toBe(600_000);
    await toSettings();
    await type(PIN);
    await isAt('settings');
    await opal.act('section-backup');
    const downloading = opal.page.waitForEvent('download');
    await opal.act('save-station');
    const backup = await readFile(await (await downloading).path(), 'utf8');
    expect(backup).toContain('coverAfterMin');
    const logs = JSON.stringify([...(await readLogs(opal.page)).entries()]);
    const told = [...heard, opal.page.url(), await opal.page.title(), await opal.page.content()];
    for (const secret of [PIN, salt, key]) {
      expect(backup).not.toContain(secret);
      expect(logs).not.toContain(secret);
      expect(told.filter((each) => each.includes(secret))).toEqual([]);
    }
    expect(await opal.page.evaluate(() => Object.keys(localStorage).join())).not.toContain(PIN);
    expect(opal.complaints).toEqual([]);
  });

  it('falls a day after it was said to be forgotten, and no record with it', async () => {
    await open();
    await setPin();
    await toSettings();
    await opal.act('pin-forgotten');
    await opal.act('forget-pin');
    await opal.page.locator('[data-pin="forgotten"] strong:not(:empty)').waitFor();
    await opal.pass(24 * 3_600_000 - 60_000);
    await opal.reload();
    await toSettings();
    await asked().waitFor();
    await opal.pass(60_000);
    await opal.reload();
    await toSettings();
    await isAt('settings');
    await expect.poll(readKept, patience).toBeNull();
    expect([...(await readLogs(opal.page)).keys()].filter((name) => name.startsWith('open-'))).not.toEqual(
      [],
    );
  });
});

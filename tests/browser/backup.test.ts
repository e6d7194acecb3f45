import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import * as newcomer from './newcomer';
import { makePerson, type Person } from './person';
import { allScenes } from './scenes/allScenes';
import { showScene } from './scenes/showScene';
import { useStation } from './station';
import { playStep, setUp } from './story';

const station = useStation();

const toBackup = async ({ act }: Person): Promise<void> => {
  await act('settings');
  await act('section-backup');
};
const bringIn = async ({ page }: Person, text: string): Promise<void> => {
  const file = { name: 'backup.txt', mimeType: 'text/plain', buffer: Buffer.from(text) };
  await page.locator('[data-file="bring-in"]').setInputFiles(file);
};

/** Presses this and answers what was saved, under which name. */
async function save(page: Page, what: string): Promise<readonly [name: string, text: string]> {
  const downloading = page.waitForEvent('download');
  await page.locator(`[data-act="${what}"]`).tap();
  const download = await downloading;
  return [download.suggestedFilename(), await readFile(await download.path(), 'utf8')];
}

it('a station is saved on one tablet and goes on at another, and a spoilt file changes nothing there', async () => {
  const old = await makePerson(station.browser, station.address, 'Maren', newcomer.openingDayMs);
  await setUp(old, 'Maren', newcomer.newSalon);
  for (const step of newcomer.upToOutcomes.slice(0, 4)) await playStep(old, step);
  const told = await old.readScreen();
  await old.act('bar');
  await toBackup(old);
  const [name, text] = await save(old.page, 'save-station');
  expect(name).toMatch(/^strandproof-backup-\d{4}-\d\d-\d\d\.txt$/);

  const other = await makePerson(station.browser, station.address, 'Maren', old.nowMs());
  await other.act('who');
  await other.type(other.page.locator('[data-question="name"] :is(input, textarea)'), 'Maren');
  await other.act('keep-name');
  await toBackup(other);
  await bringIn(other, text.slice(0, -10));
  await other.page.getByText('That backup ends too early.').waitFor();
  await bringIn(other, text);
  await other.page.locator('[data-brought]').waitFor();
  await other.act('bar');
  await other.open(2);
  expect(await other.readScreen()).toBe(told);
  await other.reload();
  await other.open(2);
  expect(await other.readScreen()).toBe(told);
  expect([...old.complaints, ...other.complaints]).toEqual([]);
});

it('the day that one tablet saved comes in on another, which names who was still open there', async () => {
  const show = async (name: string) => {
    const scene = allScenes.find((each) => each.name === name);
    if (scene === undefined) throw new Error(`no scene ${name}`);
    const shown = await showScene(station.browser, station.address, scene.scene);
    expect(shown.problem).toBe(null);
    return shown;
  };
  const one = await show('day-usual');
  const [name, text] = await save(one.page, 'download-day');
  expect(name).toMatch(/^strandproof-day-\d{4}-\d\d-\d\d\.json$/);
  const [key, schema] = await save(one.page, 'download-schema');
  expect(key).toBe(`${name}.schema.json`);
  expect(JSON.parse(schema).$schema).toContain('2020-12');

  const { page, complaints } = await show('settings-records');
  const choose = (what: string) =>
    page
      .locator('[data-file="bring-records"]')
      .setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(what) });
  await choose(text.slice(0, -10));
  await page.getByText('That file of records ends too early.').waitFor();
  await choose(text);
  const said = page.locator('[data-brought="bring-records"]');
  await said.waitFor();
  expect(await said.textContent()).toMatch(
    /^2 records came in\. Still open when it was saved, and left out: /,
  );
  await page.locator('[data-act="bar"]').tap();
  await page.locator('[data-act="day"]').tap();
  expect(await page.locator('[data-panel="closed"] [data-record]').count()).toBe(2);
  expect([...one.complaints, ...complaints]).toEqual([]);
});

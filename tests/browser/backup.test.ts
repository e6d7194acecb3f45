import { readFile } from 'node:fs/promises';
import { expect, it } from 'vitest';
import * as newcomer from './newcomer';
import { makePerson, type Person } from './person';
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

it('a station is saved on one tablet and goes on at another, and a spoilt file changes nothing there', async () => {
  const old = await makePerson(station.browser, station.address, 'Maren', newcomer.openingDayMs);
  await setUp(old, 'Maren', newcomer.newSalon);
  for (const step of newcomer.upToOutcomes.slice(0, 4)) await playStep(old, step);
  const told = await old.readScreen();
  await old.act('bar');
  await toBackup(old);
  const downloading = old.page.waitForEvent('download');
  await old.act('save-station');
  const download = await downloading;
  expect(download.suggestedFilename()).toMatch(/^strandproof-backup-\d{4}-\d\d-\d\d\.txt$/);
  const text = await readFile(await download.path(), 'utf8');

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

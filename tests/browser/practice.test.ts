import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { settleLesson } from '../../machines/practice/practiceRoom';
import { beganAtMs, sitThrough as sit } from '../../machines/practice/sitThrough';
import { lessons } from '../../seeds/practice/lessons';
import { salon } from '../../seeds/salon';
import type { StoryStep } from '../../seeds/story';
import type { Form } from '../../shared/records/form';
import { askForms } from '../../shared/records/forms/asked';
import type { Raw, RawForm } from '../../shared/records/readForm';
import { askSteps } from '../../shared/records/steps';
import { writeForm } from '../../shared/records/writeForm';
import { isDefault, readRows } from '../../src/parts/form/sheet/places';
import { perfect } from '../machines/practice/trainee';
import { writeLogs } from './memory';
import { makePerson, type Person, patience } from './person';
import { emptyHouse } from './scenes/houses';
import { useStation } from './station';
import { playStep } from './story';

const station = useStation();

/** Every byte of the salon's own store: its files, but for those of practice, and its index. */
const readSalon = (page: Page): Promise<readonly string[]> =>
  page.evaluate(async () => {
    const found: string[] = [];
    const walk = async (folder: FileSystemDirectoryHandle, path: string): Promise<void> => {
      for await (const [name, handle] of folder.entries()) {
        const at = `${path}/${name}`;
        if (at === '/practice' || at === '/practice-is-on') continue;
        if (handle.kind === 'directory') await walk(handle as FileSystemDirectoryHandle, at);
        else {
          const bytes = new Uint8Array(
            await (await (handle as FileSystemFileHandle).getFile()).arrayBuffer(),
          );
          found.push(`${at} ${bytes.join(' ')}`);
        }
      }
    };
    await walk(await navigator.storage.getDirectory(), '');
    const rows = await new Promise<string[]>((resolve, reject) => {
      const opening = indexedDB.open('strandproof');
      opening.onerror = () => reject(opening.error);
      opening.onsuccess = () => {
        const lines = opening.result.transaction('lines').objectStore('lines');
        const keys = lines.getAllKeys();
        const all = lines.getAll();
        all.onsuccess = () => {
          opening.result.close();
          resolve(keys.result.map((key, at) => `${String(key)} ${JSON.stringify(all.result[at])}`));
        };
      };
    });
    return [...found, ...rows].sort();
  });

const { lesson } = lessons.find((each) => each.lesson.id === 'compoundHenna') ?? { lesson: undefined };
if (lesson === undefined) throw new Error('the lesson is gone');

/** The taps of somebody who asks everything closer, step by step. */
const { consultation } = sit(lesson, perfect, 1, salon);
const opal = (raw: StoryStep['raw']): StoryStep => ({ afterMs: 1_000, by: 'Opal', raw });
const { units } = settleLesson(lesson, salon);

/** What is said of a form: what stands as usual is left as it stands. */
const leaveUsual = (form: Form, raw: RawForm): RawForm =>
  Object.fromEntries(
    Object.entries(raw).flatMap(([name, value]): [string, Raw][] => {
      const question = form[name];
      if (question === undefined || value === undefined || isDefault(question, value, units)) return [];
      if (question.kind !== 'list') return [[name, value]];
      return [[name, readRows(value).map((row) => leaveUsual(question.of, row))]];
    }),
  );

const steps = askSteps.map((step) => {
  const form = askForms[step];
  const raw = writeForm(form, consultation.record.answers[step] ?? {}, units);
  return {
    step,
    answered: opal({ type: 'ANSWERED', step, answers: leaveUsual(form, raw) }),
    confirmed: opal({ type: 'STEP_CONFIRMED', answers: { step } }),
  };
});

async function enter({ act, page, press }: Person): Promise<void> {
  await act('settings');
  await press(page.locator('[data-act="who-Opal"]'));
  await act('section-practice');
  await act('enter-practice');
  await page.locator('.lesson-tile').first().waitFor();
}

async function leave({ act, page }: Person): Promise<void> {
  await act('leave-practice');
  await act('leave-practice-now');
  await page.locator('main.bar [data-act="settings"]').waitFor();
}

describe('practice', () => {
  it('plays one lesson from the way in to how it went, and leaves the salon as it was, byte by byte', async () => {
    const person = await makePerson(station.browser, station.address, 'Opal', beganAtMs, {
      prepare: (page) => writeLogs(page, emptyHouse()),
    });
    const { page, act, press, hold, kept, complaints } = person;
    const before = await readSalon(page);
    expect(before.length).toBeGreaterThan(1);
    await enter(person);
    expect(await page.title()).toBe('PRACTICE · Strandproof');
    await act('lesson-compoundHenna');
    await act('begin-exam');
    await press(page.locator('[data-act="who-Opal"]'));
    await page.locator('main[data-consultation]').waitFor();

    for (const { step, answered, confirmed } of steps) {
      await page.locator(`main[data-step="${step}"]`).waitFor();
      if (step === 'hotTools') {
        await press(page.locator('[data-ledger="history"]'));
        const heard = page.locator('[data-heard="hotTools.history"]');
        expect(await heard.textContent()).toContain('Colour? No, never');
        await act('ask-closer');
        await expect.poll(() => heard.textContent(), patience).toContain('black-brown in one hour');
      }
      await playStep(person, answered);
      if (step === 'client') {
        await playStep(
          person,
          opal({
            type: 'SKIN_TEST_NOTED',
            answers: { method: 'makersMethod', site: 'behindEar', putOnAtMs: '3d', seen: 'nothing' },
          }),
        );
      }
      await playStep(person, confirmed);
    }
    await kept(() => act('glass-start'));
    await act('speed-60');
    await expect
      .poll(() => page.locator('[data-act="speed-60"]').getAttribute('aria-pressed'), patience)
      .toBe('true');
    // Half a minute on the wall is half an hour in the glass.
    await person.run(31_000);
    await expect.poll(() => page.locator('[data-seen="glass"]').textContent(), patience).toContain('bubbles');
    await act('speed-1');
    await kept(() => hold(page.locator('[data-act="glass-reacted"]').last()));
    await act('end');
    await press(page.locator('[data-question="reason"] [data-option="notSafeToday"]'));
    await hold(page.locator('[data-act="WE_SAID_NO"]'));

    await page.locator('main[data-step="debrief"] .debrief-result').waitFor();
    expect(await page.locator('.debrief-result').textContent()).toMatch(/^\s*Passed\s+100 of 100/);
    expect(await page.locator('[data-panel="flags"] [data-how="missed"]').count()).toBe(0);
    expect(await page.locator('[data-map-of]').count()).toBe(2);
    await act('to-lessons');
    await page.reload();
    await page.locator('[data-act="lesson-compoundHenna"][data-result="passed"]').waitFor();
    await leave(person);
    expect(await page.title()).toBe('Strandproof');
    await expect.poll(() => readSalon(page), patience).toEqual(before);
    // What was practised stays where it is.
    await enter(person);
    await page.locator('[data-act="lesson-compoundHenna"][data-result="passed"]').waitFor();
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  it('is no part of what a salon loads', async () => {
    const context = await station.browser.newContext();
    const page = await context.newPage();
    await page.goto(station.address);
    await page.locator('main.bar').waitFor();
    const texts = await page.evaluate(async () => {
      const scripts = performance.getEntriesByType('resource').filter(({ name }) => name.endsWith('.js'));
      return Promise.all(scripts.map(async ({ name }) => (await fetch(name)).text()));
    });
    expect(texts.length).toBeGreaterThan(0);
    expect(texts.some((text) => text.includes('black-brown in one hour'))).toBe(false);
    await context.close();
  });
});

import { readFile } from 'node:fs/promises';
import { describe, expect, it } from 'vitest';
import { replay } from '../../machines/consultation/replay';
import { endsIronedWet } from '../../seeds/endsIronedWet';
import type { StoryStep } from '../../seeds/story';
import { mixture } from '../../shared/judgement/mixture';
import { issuePermit } from '../../shared/judgement/permit';
import type { ConsultationEvent } from '../../shared/records/event';
import type { Question } from '../../shared/records/form';
import { skinTestForm } from '../../shared/records/forms/test';
import { fold } from '../../shared/records/reduce';
import { defaultSettings, type Settings } from '../../shared/records/settings';
import { zones } from '../../shared/records/zones';
import { brand } from '../../shared/units/brand';
import { formatMass } from '../../shared/units/format';
import { playAlone } from './makeLog';
import { readOpenLog } from './memory';
import * as newcomer from './newcomer';
import { makePerson, type Person } from './person';
import { readDayFile } from './readDayFile';
import { findOverflow } from './shape';
import { useStation } from './station';
import { playStep, setUp } from './story';
import { type Traces, watchTraces } from './traces';
import { fill } from './typing';

const station = useStation();

const portrait = { width: 800, height: 1280 };
const landscape = { width: 1280, height: 800 };

/**
 * Loads the page anew and goes back to her: the screen must say what it said before. Which of several clocks was
 * chosen to stand large is the one thing it may forget, and then the most urgent one does. Opening her hears what
 * calls for her, so that is heard before.
 */
async function expectSameAfterReload(person: Person, chair: number): Promise<void> {
  const silence = person.page.locator('[data-act="silence"]');
  if ((await silence.count()) > 0) {
    await person.kept(() => person.press(silence));
    await silence.waitFor({ state: 'detached' });
  }
  const before = await person.readScreen();
  const large = person.page.locator('.large-clock [data-clock]');
  const chosen = (await large.count()) === 0 ? null : await large.getAttribute('data-clock');
  await person.reload();
  await person.open(chair);
  const isSmall = person.page.locator(`.clock-row[data-clock="${chosen}"]`);
  if (chosen !== null && (await isSmall.count()) > 0) await person.press(isSmall);
  expect(await person.readScreen()).toBe(before);
}

/** What the station says of its day, as it hands it out. */
async function readDay(person: Person): Promise<ReturnType<typeof readDayFile>> {
  await person.act('day');
  const downloading = person.page.waitForEvent('download');
  await person.act('download-day');
  const download = await downloading;
  expect(download.suggestedFilename()).toMatch(/^strandproof-day-\d{4}-\d\d-\d\d\.json$/);
  return readDayFile(await readFile(await download.path(), 'utf8'));
}

const asJson = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

function expectQuiet(person: Person): void {
  expect(person.complaints).toEqual([]);
  expect(person.asked.length).toBeGreaterThan(2);
  expect(
    person.asked.filter(
      (url) => !/^(blob:)?http:\/\/127\.0\.0\.1/.test(url) || !url.includes(station.address),
    ),
  ).toEqual([]);
}

describe('the whole way of a new user', () => {
  const overflow = new Set<string>();

  it('leads from an empty station to a closed record, and every step is there again after a reload', async () => {
    const settings: Settings = {
      ...defaultSettings,
      ...newcomer.newSalon,
    };
    const person = await makePerson(station.browser, station.address, 'Maren', newcomer.openingDayMs);
    const { page } = person;
    const look = async (): Promise<void> => {
      for (const size of [portrait, landscape]) {
        await page.setViewportSize(size);
        for (const line of await findOverflow(page)) overflow.add(line);
      }
    };
    const play = async (steps: readonly StoryStep[]): Promise<void> => {
      for (const step of steps) {
        await playStep(person, step, look);
        await expectSameAfterReload(person, 2);
      }
    };
    const rail = page.locator('.rail-knot');

    expect(await page.locator('.place-free').count()).toBe(8);
    await setUp(person, 'Maren', newcomer.newSalon, look);
    await play(newcomer.upToOutcomes.slice(0, -4));
    expect(await page.locator('[data-line="missed"]').textContent()).toContain('Looks missed: 1');
    expect(await rail.getAttribute('data-knot')).toBe('noOutcome');
    expect(await rail.textContent()).toContain('No mix yet');
    await play(newcomer.upToOutcomes.slice(-4));
    const suggested = page.locator('[data-question="decision"] [data-option]', { hasText: 'Suggested' });
    expect(await suggested.getAttribute('data-option')).toBe('endsOut');
    await playStep(person, newcomer.reason, look);
    const lifted = await person.where();
    await person.reload();
    await person.open(2);
    expect(await person.where()).toEqual(lifted);
    await play([newcomer.decision]);
    expect(await rail.getAttribute('data-knot')).toBe('untied');
    expect(await rail.textContent()).toContain('OK to mix');

    await person.pass(newcomer.bowl.afterMs);
    await fill(person, { colourG: '40', minutes: '20' });
    await person.press(page.locator('[data-ledger="summary"]'));
    const shown = await page.locator('[data-panel="grams"] [data-figure]').allInnerTexts();
    expect(shown.map((text) => text.replace('\u00a0', ' '))).toEqual(['40 g', '80 g', '120 g']);
    const { id, log } = await readOpenLog(page);
    const now = replay(id, log, () => settings);
    if (!now.ok) throw new Error(JSON.stringify(now.error));
    const permit = issuePermit(now.value.record, 'lengths', settings, person.nowMs());
    if (!permit.ok) throw new Error(permit.error.code);
    const order = {
      zone: 'lengths',
      shades: [{ shade: 'Gravel powder', parts: 1 }],
      colourG: 40,
      ...permit.value.tested,
      developerPercent: 3,
      minutes: 20,
    } as const;
    const made = mixture(permit.value, order, settings.scaleStepG);
    if (!made.ok) throw new Error(made.error.code);
    const { shades, developerG, totalG } = made.value;
    const write = (grams: number) => formatMass(brand(grams), settings.units, 'en');
    expect(shown).toEqual([write(shades[0]?.amountG ?? 0), write(developerG), write(totalG)]);

    await play([{ ...newcomer.bowl, afterMs: 0 }, ...newcomer.ontoTheHead]);
    const beforeEnd = await readOpenLog(page);
    await playStep(person, newcomer.planForHome, look);
    expect(await page.locator('.ended-said').getAttribute('data-ended')).toBe('done');
    await person.reload();
    const day = await readDay(person);
    await look();
    expect(day).toHaveLength(1);
    const [closed] = day;
    expect(closed?.record.ended?.how).toBe('done');
    expect(closed?.log.slice(0, -1)).toEqual(beforeEnd.log);
    expect(closed?.record).toEqual(asJson(fold(id, closed?.log ?? [])));
    expect(closed?.record.bowls).toMatchObject([
      { zone: 'lengths', colourG: 40, developerPercent: 3, ratio: 2 },
    ]);
    expectQuiet(person);
  });

  it('scrolls nowhere sideways, and shows every primary action, upright and lying', () => {
    expect([...overflow]).toEqual([]);
  });

  it('and that is seen, when something is too wide and an action is pushed out', async () => {
    const { page } = await makePerson(station.browser, station.address, 'Maren', newcomer.openingDayMs);
    expect(await findOverflow(page)).toEqual([]);
    await page.evaluate(() => {
      const wide = document.createElement('p');
      wide.style.width = '1400px';
      document.body.append(wide);
      const start = document.querySelector<HTMLElement>('[data-act="start"]');
      if (start !== null) start.style.marginLeft = '1300px';
    });
    expect((await findOverflow(page)).join('\n')).toMatch(/scrolls sideways.*start is outside/s);
  });
});

/** The story as the screens ask it: outcomes in the order of the zones, each at the moment of its turn. */
function inScreenOrder(steps: readonly StoryStep[]): readonly StoryStep[] {
  const isOutcome = ({ raw }: StoryStep) => raw.type === 'OUTCOME_RECORDED';
  const zoneOf = ({ raw }: StoryStep) => (zones as readonly unknown[]).indexOf(raw.answers?.zone);
  const outcomes = steps.filter(isOutcome).sort((one, other) => zoneOf(one) - zoneOf(other));
  let next = 0;
  return steps.map((step) => (isOutcome(step) ? { ...step, raw: outcomes[next++]?.raw ?? step.raw } : step));
}

/** What the station itself adds: which test of the ticket it cites. A story told without one adds nothing. */
const stamped: readonly string[] = Object.entries<Question>(skinTestForm)
  .filter(([, question]) => question.stamped === true)
  .map(([name]) => name);

const compare = ({ type, by, atMs, payload, tokens }: ConsultationEvent) => ({
  type,
  by,
  atMs,
  payload: Object.fromEntries(Object.entries(payload).filter(([name]) => !stamped.includes(name))),
  tokens,
});

describe('the seed story', () => {
  it('typed through the screens makes the log that the story tells, to the millisecond', async () => {
    const { settings, startAtMs } = endsIronedWet;
    const steps = inScreenOrder(endsIronedWet.steps);
    let traces: Traces | undefined;
    const person = await makePerson(station.browser, station.address, 'Opal', startAtMs, {
      prepare: async (page) => {
        traces = await watchTraces(page);
      },
    });
    await setUp(person, 'Opal', settings);
    for (const step of steps) await playStep(person, step);
    const [closed] = await readDay(person);
    const told = playAlone(steps, startAtMs, settings);
    const isEvent = ({ type }: ConsultationEvent) => type !== 'ANSWERED';
    const typed = closed?.log.filter(isEvent).map(compare);
    expect(typed).toEqual(asJson(told.log.filter(isEvent).map(compare)));
    expect(closed?.record.answers).toEqual(asJson(told.record.answers));
    expectQuiet(person);
    const left = (await traces?.list()) ?? [];
    for (const where of ['asked', 'address', 'title', 'history', 'file', 'store', 'kept as', 'key', 'cached'])
      expect(
        left.filter((each) => each.startsWith(`${where}: `)),
        where,
      ).not.toEqual([]);
    // Of her and of those who worked on her: neither where she went nor under which name anything of her is kept.
    const names = [told.record.ticket, ...settings.staff];
    expect(left.filter((each) => names.some((name) => each.includes(name)))).toEqual([]);
    expect(left.filter((each) => /^(notification|socket|window): /.test(each))).toEqual([]);
  });
});

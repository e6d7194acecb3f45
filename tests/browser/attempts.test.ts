import type { Locator } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { endsIronedWet } from '../../seeds/endsIronedWet';
import type { StoryStep } from '../../seeds/story';
import { tabletLandscape } from './browser';
import { stepsBefore } from './makeLog';
import { type Person, patience } from './person';
import { expectNoMix, force, pressAll, seat as seatAt } from './seat';
import { useStation } from './station';

const station = useStation();

const seat = (beginnings: readonly (readonly StoryStep[])[]): Promise<Person> =>
  seatAt(station.browser, station.address, beginnings);

const untilDecision = stepsBefore(endsIronedWet.steps, 'DECIDED');

/** The fields as somebody with the browser's tools opens them. */
const letType = (fields: Locator) =>
  fields.evaluate((element: HTMLFieldSetElement) => {
    element.disabled = false;
  });

describe('no way leads to the mix without an outcome', () => {
  it('from any step before the decision, as it is and loaded anew', async () => {
    const beginnings = untilDecision.map((_, index) => untilDecision.slice(0, index + 1));
    expect(beginnings.length).toBeGreaterThan(15);
    const steps = new Set<string | null>();
    for (let first = 0; first < beginnings.length; first += 8) {
      const group = beginnings.slice(first, first + 8);
      const person = await seat(group);
      await person.reload();
      for (const index of group.keys()) {
        await person.open(index + 1);
        steps.add((await person.where()).step);
        await expectNoMix(person);
        if ((await person.where()).step !== 'decision') {
          await pressAll(person.page);
          await expectNoMix(person);
        }
        await person.reload();
      }
      await person.page.context().close();
    }
    expect([...steps].sort()).toEqual(
      [
        'client',
        'decision',
        'feelHair',
        'heatSpray',
        'hotTools',
        'outcome',
        'preparing',
        'processing',
      ].sort(),
    );
  });

  it('by any address, and by the back and forward buttons', async () => {
    const person = await seat([stepsBefore(untilDecision, 'OUTCOME_RECORDED')]);
    await person.open(1);
    await person.isAt('outcome');
    for (const path of [
      '/mix',
      '/client0001/mix',
      '/?step=mix&id=client0001',
      '/#mix',
      '/#/client0001/mix?ok=1',
    ]) {
      await person.page.goto(`${station.address}${path}`);
      await person.reload();
      await expectNoMix(person);
      await person.open(1);
      await person.isAt('outcome');
      await expectNoMix(person);
    }
    await person.page.evaluate(() => history.pushState({ step: 'mix' }, '', '/mix'));
    for (const go of ['goBack', 'goForward', 'goBack', 'goBack', 'goForward'] as const) {
      await person.page[go]();
      await expect.poll(() => person.page.locator('main').count(), patience).toBe(1);
      await expectNoMix(person);
    }
    await person.reload();
    await person.open(1);
    await person.isAt('outcome');
  });

  it('from the console: nothing of the station hangs on the window', async () => {
    const context = await station.browser.newContext(tabletLandscape);
    const plain = await context.newPage();
    await plain.goto(`${station.address}/icon.svg`);
    const known = await plain.evaluate(() => Object.getOwnPropertyNames(window));
    const page = await context.newPage();
    await page.goto(station.address);
    await page.locator('main.bar').waitFor();
    const own = await page.evaluate(() => Object.getOwnPropertyNames(window));
    expect(known.length).toBeGreaterThan(500);
    expect(own.filter((name) => !known.includes(name))).toEqual([]);
  });

  it('in a second window, which only watches, and whose place is taken only by asking', async () => {
    const person = await seat([stepsBefore(untilDecision, 'OUTCOME_RECORDED'), untilDecision]);
    const other = await person.page.context().newPage();
    await other.goto(station.address);
    await other.locator('[data-mode="watching"]').waitFor();
    await other.locator('.place[data-chair="2"]').tap();
    const shown = await other.locator('main').getAttribute('data-log-length');
    await other.locator('footer [data-line="only-watches"]').waitFor();
    await force(other.locator('[data-act="decide-endsOut"]'));
    await other.getByText('This window cannot write now.').waitFor();
    expect(await other.locator('main').getAttribute('data-log-length')).toBe(shown);
    await other.locator('[data-act="bar"]').tap();
    await other.locator('.place[data-chair="1"]').tap();
    const fields = other.locator('fieldset.sheet-main');
    expect(await fields.locator('[data-option="sound"]').isDisabled()).toBe(true);
    await letType(fields);
    for (const [question, option] of [
      ['fibre', 'sound'],
      ['stretch', 'springsBack'],
      ['level', '7'],
      ['wentPast30', 'no'],
      ['evenness', 'even'],
    ] as const) {
      await other.locator(`[data-ledger="${question}"]`).tap();
      await other.locator(`[data-question="${question}"] [data-option="${option}"]`).tap();
    }
    await force(other.locator('[data-act="record-outcome"]'));
    await other.getByText('This window cannot write now.').waitFor();
    await other.locator('[data-act="bar"]').tap();
    await force(other.locator('.place-free[data-chair="3"]'));
    const ticket = other.locator('[data-question="ticket"] input');
    await ticket.evaluate((input: HTMLInputElement) => {
      input.disabled = false;
    });
    await ticket.fill('X.X.');
    await force(other.locator('[data-act="open"]'));
    await other.getByText('This window cannot write now.').waitFor();

    await person.reload();
    await person.page.locator('[data-mode="watching"]').waitFor();
    for (const [chair, step] of [
      [1, 'outcome'],
      [2, 'decision'],
    ] as const) {
      await person.open(chair);
      await person.isAt(step);
      await expectNoMix(person);
      await person.act('bar');
    }
    await person.act('take-over');
    await other.locator('[data-mode="watching"]').waitFor();
    await person.page.locator('[data-mode="watching"]').waitFor({ state: 'detached' });
    await expectNoMix(person);
  });
});

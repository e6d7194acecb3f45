import { describe, expect, it } from 'vitest';
import { endsIronedWet } from '../../seeds/endsIronedWet';
import { stepsBefore } from './makeLog';
import { readLogs } from './memory';
import { type Person, patience } from './person';
import { seat } from './seat';
import { useStation } from './station';

const station = useStation();
const none = async () => undefined;

/** Longer than the station's own, so that the second tap of a slow machine comes in time too. */
const LONG_MS = 4_000;

/** Two taps at one place; the second when the first has brought what `brings` waits for. */
async function tapTwice({ page }: Person, what: string, brings: string): Promise<void> {
  const box = await page.locator(what).boundingBox();
  if (box === null) throw new Error('Nothing to tap');
  const tap = () => page.touchscreen.tap(box.x + box.width / 2, box.y + box.height / 2);
  await tap();
  await page.locator(brings).waitFor();
  await tap();
}

/** What the log of the only client says, in order. */
const readTypes = async ({ page }: Person): Promise<readonly unknown[]> =>
  [...(await readLogs(page)).entries()]
    .filter(([name]) => name.startsWith('open-'))
    .flatMap(([, log]) => (log as readonly { type?: string }[]).map(({ type }) => type));

/** Nobody taps for long enough. */
const rest = ({ pass }: Person): Promise<void> => pass(LONG_MS);

/** Whose page it is. */
const readClient = ({ page }: Person) => page.locator('main').getAttribute('data-consultation');

describe('a double tap', () => {
  it('on an answer does not answer the question after it, which takes the next tap', async () => {
    const beginnings = [stepsBefore(endsIronedWet.steps, 'ANSWERED')];
    const juno = await seat(station.browser, station.address, beginnings, none, LONG_MS);
    await juno.open(1);
    await juno.page.locator('[data-sheet="service"]').waitFor();
    await rest(juno);
    await tapTwice(juno, '[data-option="lighten"]', '[data-sheet="reach"]');
    await expect.poll(() => readTypes(juno), patience).toEqual(['OPENED', 'ANSWERED']);
    expect(await juno.page.locator('.sheet').getAttribute('data-sheet')).toBe('reach');
    await rest(juno);
    await tapTwice(juno, '[data-option="fullHead"]', '[data-sheet="targetLevel"]');
    await expect.poll(() => readTypes(juno), patience).toEqual(['OPENED', 'ANSWERED', 'ANSWERED']);
    await juno.page.context().close();
  });

  it('is none where the second tap is somewhere else: it answers what has just come up', async () => {
    const beginnings = [stepsBefore(endsIronedWet.steps, 'ANSWERED')];
    const juno = await seat(station.browser, station.address, beginnings, none, LONG_MS);
    await juno.open(1);
    await juno.page.locator('[data-sheet="service"]').waitFor();
    await rest(juno);
    await juno.page.locator('[data-option="lighten"]').tap();
    await juno.page.locator('[data-sheet="reach"] [data-option="endsOut"]').tap();
    await expect.poll(() => readTypes(juno), patience).toEqual(['OPENED', 'ANSWERED', 'ANSWERED']);
    await juno.page.context().close();
  });

  it('on the sound’s silence opens nobody whose line slides under the finger; the next tap does', async () => {
    const { steps } = endsIronedWet;
    const beginnings = [stepsBefore(steps, 'ANSWERED'), stepsBefore(steps, 'LOOKED')];
    const juno = await seat(station.browser, station.address, beginnings, none, LONG_MS);
    const silence = juno.page.locator('[data-act="silence"]');
    await juno.open(1);
    await juno.pass(2 * 60_000);
    await silence.waitFor();
    await rest(juno);
    const spot = await silence.boundingBox();
    if (spot === null) throw new Error('No silence');
    const tap = () => juno.page.touchscreen.tap(spot.x + spot.width / 2, spot.y + spot.height / 2);
    await tap();
    await silence.waitFor({ state: 'detached' });
    await tap();
    await tap();
    await rest(juno);
    expect(await readClient(juno)).toBe('client0001');
    await tap();
    await expect.poll(() => readClient(juno), patience).toBe('client0002');
    await juno.page.context().close();
  });

  it('and a slow one, from the decision on, says nothing of scale, skin or hair: nobody has looked', async () => {
    const { steps } = endsIronedWet;
    const juno = await seat(station.browser, station.address, [stepsBefore(steps, 'DECIDED')], none, 400);
    await juno.open(1);
    await juno.page.locator('[data-option="asPlanned"], [data-act^="decide-"]').first().waitFor();
    await rest(juno);
    const box = await juno.page.locator('.step-actions [data-kind="primary"]').boundingBox();
    if (box === null) throw new Error('Nothing to tap');
    for (let taps = 0; taps < 7; taps += 1) {
      await juno.page.touchscreen.tap(box.x + box.width / 2, box.y + box.height / 2);
      await juno.pass(600);
    }
    await expect.poll(() => readTypes(juno), patience).toContain('DECIDED');
    expect(await readTypes(juno)).not.toContain('BOWL_WEIGHED');
    await juno.pass(1_700);
    await juno.page.locator('[data-act="weigh"]').tap();
    await expect.poll(() => readTypes(juno), patience).toContain('BOWL_WEIGHED');
    await juno.page.context().close();
  });

  it('is no double tap where the key of the first tap still stands: each counts', async () => {
    const beginnings = [stepsBefore(endsIronedWet.steps, 'ANSWERED')];
    const juno = await seat(station.browser, station.address, beginnings, none, LONG_MS);
    await rest(juno);
    await juno.page.locator('.place').nth(1).tap();
    await juno.page.locator('[data-act="who-Juno"]').tap();
    const key = juno.page.locator('.letter-key[data-key="W"]');
    await key.waitFor();
    await rest(juno);
    const right = await key.boundingBox();
    if (right === null) throw new Error('No keys');
    for (const x of [-20, 20, 20]) {
      await juno.page.touchscreen.tap(right.x + x, right.y + right.height / 2);
    }
    expect(await juno.page.locator('main input').first().inputValue()).toBe('QWW');
    await juno.page.context().close();
  });
});

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

/** Everything on the screen has been there long enough. */
const rest = ({ page }: Person) =>
  page.evaluate(() => Promise.all(document.getAnimations().map(({ finished }) => finished)));

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
});

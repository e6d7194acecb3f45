import { describe, expect, it } from 'vitest';
import { endsIronedWet } from '../../seeds/endsIronedWet';
import { stepsBefore } from './makeLog';
import { readLogs } from './memory';
import { type Person, patience } from './person';
import { seat } from './seat';
import { useStation } from './station';

const station = useStation();
const none = async () => undefined;

/** So long that the second tap of the slowest machine still comes before what appeared takes fingers. */
const LONG_MS = 60_000;

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

/** She sits at chair 1, and everything on her screen has been there for long. */
async function openLongAgo(before: string, arrivalMs: number): Promise<Person> {
  const juno = await seat(
    station.browser,
    station.address,
    [stepsBefore(endsIronedWet.steps, before)],
    none,
    arrivalMs,
  );
  const arrives = (ms: number) =>
    juno.page.evaluate(
      (text) => document.documentElement.style.setProperty('--arrival', text),
      `${String(ms)}ms`,
    );
  await arrives(0);
  await juno.open(1);
  await juno.page.locator('main[data-consultation]').waitFor();
  await juno.page.evaluate(() => Promise.all(document.getAnimations().map(({ finished }) => finished)));
  await arrives(arrivalMs);
  return juno;
}

describe('a double tap', () => {
  it('on an answer does not answer the question after it', async () => {
    const juno = await openLongAgo('ANSWERED', LONG_MS);
    await tapTwice(juno, '[data-option="lighten"]', '[data-sheet="reach"]');
    await expect.poll(() => readTypes(juno), patience).toEqual(['OPENED', 'ANSWERED']);
    expect(await juno.page.locator('.sheet').getAttribute('data-sheet')).toBe('reach');
    await juno.page.context().close();
  });
});

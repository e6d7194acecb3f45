import { describe, expect, it } from 'vitest';
import { endsIronedWet } from '../../seeds/endsIronedWet';
import { hearLoudness } from './alarms/loudness';
import { tabletLandscape } from './browser';
import { stepsBefore } from './makeLog';
import { patience } from './person';
import { seat } from './seat';
import { useStation } from './station';

const station = useStation();
const minute = 60_000;

describe('the tablet itself', () => {
  it.each([
    ['granted', ['screen-wake-lock'], null],
    ['denied', [], 'The screen may go dark: plug the tablet in, or set it to stay on.'],
  ] as const)(
    'with the wake lock %s: asked for at the first touch, and said',
    async (_title, permissions, note) => {
      const context = await station.browser.newContext(tabletLandscape);
      await context.grantPermissions([...permissions], { origin: station.address });
      const page = await context.newPage();
      await page.goto(station.address);
      const said = page.locator('.tablet-note');
      await said.waitFor();
      expect(await said.textContent()).toBe('No sound yet: touch the screen once.');
      await page.touchscreen.tap(640, 130);
      const say = async () => ((await said.count()) === 0 ? null : said.textContent());
      await expect.poll(say, patience).toBe(note);
      await context.close();
    },
  );

  it('calls with three pulses from the look on, and is silent after one tap', async () => {
    const juno = await seat(
      station.browser,
      station.address,
      [[...stepsBefore(endsIronedWet.steps, 'LOOKED')]],
      (page) =>
        page.addInitScript(() => {
          const pulses: number[] = [];
          Object.assign(window, { pulses });
          const { start } = OscillatorNode.prototype;
          OscillatorNode.prototype.start = function (this: OscillatorNode, atS?: number) {
            pulses.push(this.frequency.value);
            start.call(this, atS);
          };
        }),
    );
    const count = () => juno.page.evaluate(() => (window as unknown as { pulses: number[] }).pulses.length);
    await juno.page.touchscreen.tap(300, 130);
    await expect.poll(count, patience).toBe(1);
    await juno.pass(2 * minute);
    await expect.poll(count, patience).toBeGreaterThanOrEqual(4);
    await juno.act('silence');
    const heard = await count();
    await juno.pass(30_000);
    expect(await count()).toBe(heard);
    expect(juno.complaints).toEqual([]);
    await juno.page.context().close();
  });

  it('is silent at once when an overrun is silenced in the midst of its pulses, by its real sound', async () => {
    let readLoudness = async () => 0;
    const juno = await seat(
      station.browser,
      station.address,
      [[...stepsBefore(endsIronedWet.steps, 'LOOKED')]],
      async (page) => {
        readLoudness = await hearLoudness(page);
      },
    );
    await juno.page.touchscreen.tap(300, 130);
    await expect.poll(readLoudness, patience).toBe(0);
    await juno.pass(60 * minute);
    // A run of an overrun takes nearly two seconds.
    await expect.poll(readLoudness, { timeout: 1_000, interval: 5 }).toBeGreaterThan(0.1);
    const startedMs = Date.now();
    await juno.act('silence');
    const silencedMs = Date.now();
    expect(silencedMs - startedMs).toBeLessThan(1_400);
    await new Promise((resolve) => setTimeout(resolve, 100));
    const heard: number[] = [];
    while (Date.now() - silencedMs < 1_900) heard.push(await readLoudness());
    expect(heard.length).toBeGreaterThan(20);
    expect(Math.max(...heard)).toBe(0);
    await juno.page.context().close();
  });
});

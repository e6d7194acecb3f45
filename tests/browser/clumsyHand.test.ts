import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { chooseSize, tellShare } from '../long';
import { tabletLandscape } from './browser';
import { makeChance } from './chance';
import { setDoubleTap } from './doubleTap';
import { useStation } from './station';

const station = useStation();

/** So many taps of each hand; TAPS= for others. */
const LONG_TAPS = 150;
const taps = Number(process.env.TAPS ?? chooseSize(70, LONG_TAPS));
/** How far a hand gets in so many taps hangs on how fast the machine draws: it taps on until it was on so many screens. */
const LEAST_SCREENS = 5;
const mostTaps = 3 * taps;
const seed = Number(process.env.SEED ?? 20261125);
const morningMs = Date.UTC(2026, 10, 12, 14);

interface Aim {
  readonly x: number;
  readonly y: number;
  readonly isHeld: boolean;
  readonly name: string;
}

/** One of the buttons that can be tapped now: rather an answer or the primary one, hardly ever a way out of the step. */
const findAim = (page: Page, chances: readonly [number, number]): Promise<Aim | null> =>
  page.evaluate(([way, which]) => {
    const root = [...document.querySelectorAll('dialog:modal')].at(-1) ?? document.body;
    const here = [...root.querySelectorAll<HTMLButtonElement>('button:not(:disabled)')].filter(
      (each) => each.checkVisibility() && each.dataset.act !== 'leave-demo',
    );
    const aside = /^(bar|settings|day|start.*|cancel)$/;
    const onward = here.filter(({ dataset }) => !aside.test(dataset.act ?? ''));
    const answers = onward.filter(
      ({ dataset }) => dataset.kind === 'primary' || dataset.option !== undefined,
    );
    const pools = [way < 0.65 ? answers : [], way < 0.93 ? onward : [], here];
    const pool = pools.find(({ length }) => length > 0) ?? [];
    const button = pool[Math.floor(which * pool.length)];
    if (button === undefined) return null;
    button.scrollIntoView({ block: 'nearest' });
    const { left, top, width, height } = button.getBoundingClientRect();
    return {
      x: left + width / 2,
      y: top + height / 2,
      isHeld: button.matches('.hold-button'),
      name: `${button.dataset.act ?? ''} ${button.textContent}`.trim().slice(0, 40),
    };
  }, chances);

describe.concurrent.each([
  ['lying', tabletLandscape.viewport],
  ['upright', { width: 800, height: 1280 }],
] as const)('a clumsy hand on the invented salon, the tablet %s', (_name, viewport) => {
  it('breaks nothing, always finds something to tap, and never leaves the station', async () => {
    const { draw } = makeChance(seed + viewport.width);
    const context = await station.browser.newContext({ ...tabletLandscape, viewport });
    const page = await context.newPage();
    const touch = await context.newCDPSession(page);
    const complaints: string[] = [];
    page.on('pageerror', ({ message }) => complaints.push(message));
    await setDoubleTap(page, 0);
    await page.clock.install({ time: morningMs });
    await page.goto(station.address);
    await page.locator('[data-act="load-demo"]').tap({ timeout: 20_000 });
    await page.locator('.place[data-consultation]').nth(6).waitFor({ timeout: 20_000 });

    const screens = new Set<string>();
    let tap = 0;
    for (; tap < taps || (screens.size < LEAST_SCREENS && tap < mostTaps); tap += 1) {
      const aim = await findAim(page, [draw(), draw()]);
      expect(aim, 'something can be tapped').not.toBeNull();
      if (aim === null) break;
      if (aim.isHeld && draw() < 0.15) {
        await touch.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [aim] });
        await page.clock.runFor(3_000);
        await touch.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
      } else await page.touchscreen.tap(aim.x, aim.y);
      await page.clock.runFor(draw() < 0.15 ? Math.floor(draw() * 300_000) : 500);
      if (draw() < 0.03) await page.evaluate(() => history.back());
      screens.add(await page.evaluate(() => document.querySelector('main')?.dataset.step ?? 'bar'));
      expect({ tap, after: aim.name, complaints }).toEqual({ tap, after: aim.name, complaints: [] });
      expect(page.url().startsWith(station.address)).toBe(true);
    }
    const did = `seed ${seed}: ${tap} taps, screens ${[...screens].join(' ')}`;
    console.log(tellShare('hand', did, `${LONG_TAPS} taps`));
    expect(screens.size).toBeGreaterThanOrEqual(LEAST_SCREENS);
    await context.close();
  });
});

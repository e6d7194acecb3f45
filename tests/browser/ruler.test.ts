import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { CARD_HEIGHT_MM, CARD_WIDTH_MM } from '../../shared/units/card';
import { tabletLandscape } from './browser';
import { setDoubleTap } from './doubleTap';
import { writeLogs } from './memory';
import { nowMs, untilConfirmed } from './scenes/clients';
import { alone } from './scenes/houses';
import { setRuler } from './scenes/rulerScenes';
import { makeSceneHand } from './scenes/sceneHand';
import { settle } from './scenes/showScene';
import { useStation } from './station';

const station = useStation();

/** A tablet of its own with a client at her feel; `isSet`: a card was laid on its glass, 5.87 dots to a mm. */
async function openMeasure(
  size: { width: number; height: number },
  dotsPerPx: number,
  isSet: boolean,
  doubleTapMs = 0,
) {
  const context = await station.browser.newContext({
    ...tabletLandscape,
    viewport: size,
    deviceScaleFactor: dotsPerPx,
    reducedMotion: 'reduce',
  });
  const page = await context.newPage();
  await setDoubleTap(page, doubleTapMs);
  await page.clock.setFixedTime(nowMs);
  await page.goto(`${station.address}/icon.svg`);
  await writeLogs(page, alone(untilConfirmed('hotTools'))());
  if (isSet) await setRuler(page);
  await page.goto(station.address);
  const hand = makeSceneHand(page);
  /** Nobody taps for longer than a double tap takes. */
  const rest = () => page.waitForTimeout(doubleTapMs);
  const measure = async () => {
    await hand.open(3);
    await rest();
    await hand.press('[data-ledger="wetStretch"]');
    await rest();
    await hand.act('measure');
    await rest();
    await settle(page);
  };
  await measure();
  return { page, hand, measure, close: () => context.close() };
}

/**
 * Where something dark is, in dots of the glass, along a line across a picture of the page: the middles of what the
 * eye sees, whatever the page says of itself.
 */
async function seeDark(
  page: Page,
  along: 'x' | 'y',
  atPx: number,
  darkest = 120,
): Promise<readonly number[]> {
  const picture = (await page.screenshot()).toString('base64');
  const size = page.viewportSize() ?? { width: 1, height: 1 };
  return page.evaluate(
    async ({ picture, along, share, darkest }) => {
      const bytes = Uint8Array.from(atob(picture), (letter) => letter.charCodeAt(0));
      const image = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
      const paper = new OffscreenCanvas(image.width, image.height).getContext('2d');
      if (paper === null) throw new Error('no paper');
      paper.drawImage(image, 0, 0);
      const [wide, high] = [image.width, image.height];
      const at = Math.round(share * (along === 'x' ? high : wide));
      const { data } =
        along === 'x' ? paper.getImageData(0, at, wide, 1) : paper.getImageData(at, 0, 1, high);
      // Weighted by how dark it is, so that a line between two dots is found between them.
      const middles: number[] = [];
      let weight = 0;
      let sum = 0;
      let deepest = 255;
      for (let dot = 0; dot <= data.length / 4; dot += 1) {
        const light = dot * 4 < data.length ? ((data[dot * 4] ?? 255) + (data[dot * 4 + 1] ?? 255)) / 2 : 255;
        if (light < 235) {
          weight += 255 - light;
          sum += (255 - light) * (dot + 0.5);
          deepest = Math.min(deepest, light);
        } else if (weight > 0) {
          if (deepest < darkest) middles.push(sum / weight);
          weight = 0;
          sum = 0;
          deepest = 255;
        }
      }
      return middles;
    },
    { picture, along, share: atPx / (along === 'x' ? size.height : size.width), darkest },
  );
}

const DOTS_PER_MM = 5.87;

/** Longer than the station's own, so that the taps of a slow machine follow one another in it too. */
const BUSY_DOUBLE_TAP_MS = 1_500;

describe('the ruler on the glass', () => {
  it.each([
    ['of ten inches', { width: 1280, height: 800 }, 1],
    ['upright', { width: 800, height: 1280 }, 1],
    ['where the page is drawn smaller', { width: 1024, height: 768 }, 1],
    ['of two dots to a px', { width: 1280, height: 800 }, 2],
    ['upright and drawn smaller', { width: 768, height: 1024 }, 1],
  ])('%s: ten of its millimetres are ten on the glass', async (_name, size, dotsPerPx) => {
    const { page, close } = await openMeasure(size, dotsPerPx, true);
    try {
      const box = await page.locator('.ruler-room').boundingBox();
      if (box === null) throw new Error('no ruler');
      const isUpright = size.height > size.width;
      const zoom = await page.evaluate(() => document.documentElement.currentCSSZoom);
      // Only the ticks of a whole centimetre reach so far in.
      const line = (isUpright ? box.x : box.y + 3 * zoom) + 30 * zoom;
      const seen = await seeDark(page, isUpright ? 'y' : 'x', line);
      const from = (isUpright ? box.y : box.x) * dotsPerPx;
      const ticks = seen.filter((dot) => dot > from + 10);
      expect(ticks.length).toBeGreaterThan(10);
      const whole = ((ticks[10] ?? 0) - (ticks[0] ?? 0)) / DOTS_PER_MM;
      expect(whole).toBeCloseTo(100, 0);
      for (const [index, dot] of ticks.slice(0, 10).entries()) {
        expect((dot - (ticks[0] ?? 0)) / DOTS_PER_MM - index * 10).toBeLessThan(0.2);
      }
    } finally {
      await close();
    }
  });

  it.each([
    ['lying', { width: 1280, height: 800 }],
    ['upright', { width: 800, height: 1280 }],
    ['drawn smaller', { width: 1024, height: 768 }],
  ])('reads a tap where it lands, %s', async (_name, size) => {
    const { page, close } = await openMeasure(size, 1, true);
    try {
      const box = await page.locator('.ruler-room').boundingBox();
      if (box === null) throw new Error('no ruler');
      const zoom = await page.evaluate(() => document.documentElement.currentCSSZoom);
      // Zero stands 28 px in, and the room has a frame of 3 px at its upper end.
      const zero = 28 * zoom;
      const along = 112 * DOTS_PER_MM;
      const isUpright = size.height > size.width;
      await page.touchscreen.tap(
        isUpright ? box.x + 40 : box.x + zero + along,
        isUpright ? box.y + 3 * zoom + zero + along : box.y + 40,
      );
      const typed = await page.locator('.reading input').inputValue();
      expect(Math.abs(Number(typed) - 112)).toBeLessThanOrEqual(0.5);
    } finally {
      await close();
    }
  });
});

describe('a card on the glass', () => {
  it.each([
    [{ width: 1280, height: 800 }, 1, 6.4],
    [{ width: 1024, height: 768 }, 1, 5.2],
    [{ width: 1280, height: 800 }, 2, 10.4],
  ])(
    'of %o, %d dots to a px, sets it by buttons and keys, and it stays set',
    async (size, dotsPerPx, dotsPerMm) => {
      const { page, hand, measure, close } = await openMeasure(size, dotsPerPx, false);
      try {
        // A person presses until the second line lies along the card that is so many dots wide here.
        const goal = CARD_WIDTH_MM * dotsPerMm;
        const box = await page.locator('.card-glass').boundingBox();
        if (box === null) throw new Error('no card');
        const look = async (): Promise<number> => {
          // Where the keys are is drawn too, and is no line of the card.
          await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
          const lines = await seeDark(page, 'x', box.y + 40, 140);
          const [left = 0, right = 0] = lines.filter((dot) => dot > (box.x - 4) * dotsPerPx);
          return right - left;
        };
        const line = 4 * (await page.evaluate(() => document.documentElement.currentCSSZoom)) * dotsPerPx;
        for (let presses = 0; presses < 80 && Math.abs((await look()) - line - goal) > 1; presses += 1) {
          const off = goal - ((await look()) - line);
          const act = `${Math.abs(off) >= 10 ? 'much' : 'little'}-${off > 0 ? 'more' : 'less'}`;
          await hand.act(act);
          await settle(page);
        }
        const before = await look();
        await page.locator('.card-glass').press('ArrowRight');
        await settle(page);
        expect((await look()) - before).toBeCloseTo(1, 0);
        await page.locator('.card-glass').press('ArrowLeft');
        await hand.act('keep-ruler');
        const kept = await page.evaluate(() => localStorage.getItem('strandproof.ruler'));
        const { dotsPerMm: keptDots } = JSON.parse(kept ?? '{}') as { dotsPerMm: number };
        expect(Math.abs(keptDots / dotsPerMm - 1)).toBeLessThan(0.005);
        await page.reload();
        await measure();
        expect(await page.locator('.ruler-room').count()).toBe(1);
      } finally {
        await close();
      }
    },
  );

  it.each([
    ['much-more', 10],
    ['little-less', -1],
  ])('is fitted by quick taps, and each tap on %s counts', async (act, by) => {
    const { page, close } = await openMeasure({ width: 1280, height: 800 }, 1, false, BUSY_DOUBLE_TAP_MS);
    try {
      const box = await page.locator(`[data-act="${act}"]`).boundingBox();
      if (box === null) throw new Error('nothing to tap');
      const read = async () => Number(await page.locator('.card-glass').getAttribute('aria-valuenow'));
      const before = await read();
      for (let taps = 0; taps < 5; taps += 1) {
        await page.touchscreen.tap(box.x + box.width / 2 + taps, box.y + box.height / 2);
      }
      expect((await read()) - before).toBe(5 * by);
    } finally {
      await close();
    }
  });

  it('is drawn as high as it is wide by the standard', async () => {
    const { page, close } = await openMeasure({ width: 1280, height: 800 }, 1, false);
    try {
      const box = await page.locator('.card-glass').boundingBox();
      if (box === null) throw new Error('no card');
      const [left = 0, right = 0] = (await seeDark(page, 'x', box.y + 40, 140)).filter(
        (dot) => dot > box.x - 4,
      );
      const [top = 0, bottom = 0] = (await seeDark(page, 'y', box.x + 40, 140)).filter(
        (dot) => dot > box.y - 4,
      );
      expect((bottom - top - 4) / (right - left - 4)).toBeCloseTo(CARD_HEIGHT_MM / CARD_WIDTH_MM, 2);
    } finally {
      await close();
    }
  });
});

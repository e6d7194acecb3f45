import type { CDPSession, Page } from 'playwright-core';
import { beforeAll, describe, expect, it } from 'vitest';
import { tabletLandscape } from './browser';
import { isKept } from './keptPage';
import { useStation } from './station';

const station = useStation();
let page: Page;
let devtools: CDPSession;

interface Icon {
  readonly src: string;
  readonly sizes: string;
  readonly type: string;
  readonly purpose: string;
}

beforeAll(async () => {
  const context = await station.browser.newContext(tabletLandscape);
  page = await context.newPage();
  devtools = await context.newCDPSession(page);
  await page.goto(station.address);
  await isKept(page);
});

const readManifest = async () => {
  const { url, errors, data } = await devtools.send('Page.getAppManifest');
  return { url, errors, manifest: JSON.parse(data ?? '{}') };
};

/** How wide and high a picture is, and the farthest of its points that is not of its corner's colour, as a share of half its width. */
const measure = (src: string) =>
  page.evaluate(async (address) => {
    const picture = new Image();
    picture.src = address;
    await picture.decode();
    const { naturalWidth: width, naturalHeight: height } = picture;
    const canvas = document.createElement('canvas');
    Object.assign(canvas, { width, height });
    const pen = canvas.getContext('2d');
    if (pen === null) throw new Error('No pen');
    pen.drawImage(picture, 0, 0);
    const { data } = pen.getImageData(0, 0, width, height);
    let farthest = 0;
    let thinnest = 255;
    for (let at = 0; at < width * height; at++) {
      const point = [...data.slice(4 * at, 4 * at + 4)];
      thinnest = Math.min(thinnest, point[3] ?? 0);
      if (point.every((part, index) => Math.abs(part - (data[index] ?? 0)) < 8)) continue;
      const [x, y] = [(at % width) + 0.5 - width / 2, Math.floor(at / width) + 0.5 - height / 2];
      farthest = Math.max(farthest, Math.hypot(x, y) / (width / 2));
    }
    return { width, height, farthest, thinnest };
  }, src);

describe('the station as an app of its own', () => {
  it('has a manifest the browser takes whole, and finds nothing against installing it', async () => {
    const { url, errors, manifest } = await readManifest();
    expect([url, errors]).toEqual([`${station.address}/station.webmanifest`, []]);
    expect(manifest).toMatchObject({ id: '/', start_url: '/', scope: '/', display: 'fullscreen' });
    expect(manifest.name.length * manifest.short_name.length * manifest.description.length).toBeGreaterThan(
      0,
    );
    expect(manifest.short_name.length).toBeLessThanOrEqual(12);
    const { installabilityErrors } = await devtools.send('Page.getInstallabilityErrors');
    // A private window is what tests run in, and the one thing the browser minds.
    expect(installabilityErrors.map(({ errorId }) => errorId).filter((id) => id !== 'in-incognito')).toEqual(
      [],
    );
  });

  it('has a PNG of 192 and of 512 points for each purpose, as big as it says', async () => {
    const icons: readonly Icon[] = (await readManifest()).manifest.icons;
    const pngs = icons.filter(({ type }) => type === 'image/png');
    expect(pngs.map(({ sizes, purpose }) => `${purpose} ${sizes}`)).toEqual([
      'any 192x192',
      'any 512x512',
      'maskable 192x192',
      'maskable 512x512',
    ]);
    for (const { src, sizes } of pngs) {
      const answer = await page.request.get(`${station.address}${src}`);
      expect([src, answer.status(), answer.headers()['content-type']]).toEqual([src, 200, 'image/png']);
      const { width, height } = await measure(src);
      expect([src, `${width}x${height}`]).toEqual([src, sizes]);
    }
  });

  it('cut to any shape keeps its mark: of a maskable icon all but the ground lies within four fifths', async () => {
    const icons: readonly Icon[] = (await readManifest()).manifest.icons;
    for (const { src } of icons.filter(({ purpose }) => purpose === 'maskable')) {
      const { farthest, thinnest } = await measure(src);
      expect([src, thinnest]).toEqual([src, 255]);
      // W3C Web Application Manifest, "Icon masks and safe zone": a circle of 40 % of the icon's size about its middle.
      expect(farthest).toBeLessThanOrEqual(0.8);
      expect(farthest).toBeGreaterThan(0.5);
    }
  });
});

import { writeFile } from 'node:fs/promises';
import { inflateSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { allScenes } from './scenes/allScenes';
import { showScene } from './scenes/showScene';
import { useStation } from './station';

const station = useStation();

/** One mm in points of a PDF. */
const POINTS_PER_MM = 72 / 25.4;

const findScene = (name: string) => {
  const found = allScenes.find((each) => each.name === name);
  if (found === undefined) throw new Error(`no scene is called ${name}`);
  return found.scene;
};

/** The pages of a PDF, by the size each says of itself, in mm; also where they lie packed in streams. */
function listPages(pdf: Buffer): readonly { wideMm: number; highMm: number }[] {
  const text = pdf.toString('latin1');
  const packed = [...text.matchAll(/stream\r?\n/g)].map(({ index, 0: head }) => {
    const end = text.indexOf('endstream', index);
    try {
      return inflateSync(pdf.subarray(index + head.length, end)).toString('latin1');
    } catch {
      return '';
    }
  });
  return [text, ...packed]
    .flatMap((each) => [...each.matchAll(/\/Type\s*\/Page\b[\s\S]*?\/MediaBox\s*\[([^\]]+)\]/g)])
    .map(([, box = '']) => {
      const [left = 0, bottom = 0, right = 0, top = 0] = box.trim().split(/\s+/).map(Number);
      return { wideMm: (right - left) / POINTS_PER_MM, highMm: (top - bottom) / POINTS_PER_MM };
    });
}

async function withScene<T>(name: string, see: (page: Page) => Promise<T>): Promise<T> {
  const shown = await showScene(station.browser, station.address, findScene(name));
  try {
    expect(shown.problem).toBeNull();
    return await see(shown.page);
  } finally {
    await shown.close();
  }
}

/** What of the card's words lies outside its face on paper, and whether anything else is printed. */
const readPaper = (page: Page) =>
  page.evaluate(() => {
    const face = document.querySelector('.paper .strand-card-face');
    if (face === null) return null;
    const { left, top, right, bottom } = face.getBoundingClientRect();
    const outside = [...face.querySelectorAll('*')].filter((each) => {
      const box = each.getBoundingClientRect();
      return box.left < left - 1 || box.top < top - 1 || box.right > right + 1 || box.bottom > bottom + 1;
    });
    const list = face.querySelector('dl');
    return {
      wideMm: ((right - left) / 96) * 25.4,
      outside: outside.map((each) => each.textContent),
      isOver: list !== null && list.scrollHeight > list.clientHeight,
      isStationShown: document.querySelector('#station')?.checkVisibility() ?? false,
    };
  });

describe('the strand card on paper', () => {
  it.each([
    ['strandCard-usual', { width: 1280, height: 800 }],
    ['strandCard-full', { width: 1280, height: 800 }],
    ['strandCard-full', { width: 800, height: 1280 }],
    ['strandCard-full', { width: 1024, height: 768 }],
    ['strandCard-longest', { width: 1280, height: 800 }],
    ['strandCard-longest', { width: 1024, height: 768 }],
  ])('of %s is one page of A6, whichever way the tablet stands: %o', async (name, size) => {
    const pages = await withScene(name, async (page) => {
      await page.setViewportSize(size);
      const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true });
      if (process.env.KEEP !== undefined)
        await writeFile(`${process.env.KEEP}/${name}-${size.width}.pdf`, pdf);
      return listPages(pdf);
    });
    expect(pages).toHaveLength(1);
    expect(pages[0]?.wideMm).toBeCloseTo(148, 0);
    expect(pages[0]?.highMm).toBeCloseTo(105, 0);
  });

  it.each([
    'strandCard-usual',
    'strandCard-full',
    'strandCard-longest',
    'strandCard-broke',
    'strandCard-brokeTold',
    'strandCard-discarded',
    'strandCard-noOutcome',
  ])('%s has room for every word, and for nothing else', async (name) => {
    const paper = await withScene(name, async (page) => {
      await page.emulateMedia({ media: 'print' });
      return readPaper(page);
    });
    expect(paper).toEqual({
      wideMm: expect.closeTo(148, 0),
      outside: [],
      isOver: false,
      isStationShown: false,
    });
  });

  it('is seen to need a second page where it does', async () => {
    const pages = await withScene('strandCard-usual', async (page) => {
      await page.evaluate(() => {
        document.querySelector<HTMLElement>('.paper')?.style.setProperty('height', '150mm');
      });
      return listPages(await page.pdf({ preferCSSPageSize: true }));
    });
    expect(pages).toHaveLength(2);
  });

  it('leaves what the browser prints of any other screen alone', async () => {
    const pages = await withScene('bar-usual', async (page) =>
      listPages(await page.pdf({ preferCSSPageSize: true })),
    );
    expect(pages[0]?.wideMm).not.toBeCloseTo(148, 0);
  });
});

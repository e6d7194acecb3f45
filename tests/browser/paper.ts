import { inflateSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { allScenes } from './scenes/allScenes';
import { showScene } from './scenes/showScene';
import type { useStation } from './station';

/** One mm in points of a PDF. */
const POINTS_PER_MM = 72 / 25.4;

const findScene = (name: string) => {
  const found = allScenes.find((each) => each.name === name);
  if (found === undefined) throw new Error(`no scene is called ${name}`);
  return found.scene;
};

/** The pages of a PDF, by the size each says of itself, in mm; also where they lie packed in streams. */
export function listPages(pdf: Buffer): readonly { wideMm: number; highMm: number }[] {
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

/** Shows a scene, sees it, and puts it away. */
export async function withScene<T>(
  station: ReturnType<typeof useStation>,
  name: string,
  see: (page: Page) => Promise<T>,
): Promise<T> {
  const shown = await showScene(station.browser, station.address, findScene(name));
  try {
    expect(shown.problem).toBeNull();
    return await see(shown.page);
  } finally {
    await shown.close();
  }
}

/** What of the words on this face lies outside it on paper, and whether anything else is printed. */
export const readPaper = (page: Page, of: string) =>
  page.evaluate((selector) => {
    const face = document.querySelector(`.paper ${selector}`);
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
  }, of);

import { writeFile } from 'node:fs/promises';
import { describe, expect, it } from 'vitest';
import { listPages, withScene } from './paper';
import { useStation } from './station';

const station = useStation();

/** A4: published, ISO 216. Letter: published, ANSI/ASME Y14.1. mm. */
const formats = [
  ['A4', 210, 297],
  ['Letter', 215.9, 279.4],
] as const;

describe('the day on paper', () => {
  it.each(formats)('is of the size the printer has: %s', async (format, wideMm, highMm) => {
    const pages = await withScene(station, 'day-full', async (page) => {
      const pdf = await page.pdf({ format, preferCSSPageSize: true, printBackground: true });
      if (process.env.KEEP !== undefined) await writeFile(`${process.env.KEEP}/day-${format}.pdf`, pdf);
      return listPages(pdf);
    });
    expect(pages.length).toBeGreaterThan(1);
    for (const page of pages) {
      expect(page.wideMm).toBeCloseTo(wideMm, 0);
      expect(page.highMm).toBeCloseTo(highMm, 0);
    }
  });

  it.each(formats)(
    'has a line a client, no word beside %s, and nothing of the screen',
    async (format, wideMm) => {
      const seen = await withScene(station, 'day-full', async (page) => {
        // The width that is left within margins of 12 mm, at 96 px an inch.
        await page.setViewportSize({ width: Math.floor(((wideMm - 24) / 25.4) * 96), height: 1000 });
        await page.emulateMedia({ media: 'print' });
        if (process.env.KEEP !== undefined)
          await page.locator('.day-sheet').screenshot({ path: `${process.env.KEEP}/day-${format}.png` });
        return page.evaluate(() => {
          const sheet = document.querySelector('.paper .day-sheet');
          if (sheet === null) return null;
          const { right } = sheet.getBoundingClientRect();
          return {
            rows: sheet.querySelectorAll('tbody tr').length,
            wide: [...sheet.querySelectorAll('*')].filter(
              (each) => each.getBoundingClientRect().right > right + 1,
            ).length,
            isStationShown: document.querySelector('#station')?.checkVisibility() ?? false,
          };
        });
      });
      expect(seen?.rows).toBeGreaterThan(12);
      expect(seen).toMatchObject({ wide: 0, isStationShown: false });
    },
  );

  it.each(formats)('of an empty day is one page of %s that says so', async (format) => {
    const { pages, text } = await withScene(station, 'day-empty', async (page) => ({
      pages: listPages(await page.pdf({ format, preferCSSPageSize: true })),
      text: await page.locator('.day-sheet').textContent(),
    }));
    expect(pages).toHaveLength(1);
    expect(text).toContain('Nothing closed');
  });
});

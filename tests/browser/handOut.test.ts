import { writeFile } from 'node:fs/promises';
import { describe, expect, it } from 'vitest';
import { listPages, readPaper, withScene } from './paper';
import { useStation } from './station';

const station = useStation();

describe('her page to take home', () => {
  it.each(['finish-card', 'finish-cardLongest', 'finish-cardUncalled'])(
    'of %s is one page of A5, and nothing else',
    async (name) => {
      const pages = await withScene(station, name, async (page) => {
        const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true });
        if (process.env.KEEP !== undefined) await writeFile(`${process.env.KEEP}/${name}.pdf`, pdf);
        await page.emulateMedia({ media: 'print' });
        if (process.env.KEEP !== undefined)
          await page.locator('.hand-out').screenshot({ path: `${process.env.KEEP}/${name}.png` });
        return listPages(pdf);
      });
      expect(pages).toHaveLength(1);
      expect(pages[0]?.wideMm).toBeCloseTo(148, 0);
      expect(pages[0]?.highMm).toBeCloseTo(210, 0);
    },
  );

  it.each(['finish-card', 'finish-cardLongest', 'finish-cardUncalled'])(
    'of %s has room for every word',
    async (name) => {
      const paper = await withScene(station, name, async (page) => {
        await page.emulateMedia({ media: 'print' });
        return readPaper(page, '.hand-out-face');
      });
      expect(paper).toEqual({
        wideMm: expect.closeTo(148, 0),
        outside: [],
        isOver: false,
        isStationShown: false,
      });
    },
  );

  it('gives way to the strand card that is opened over it', async () => {
    const pages = await withScene(station, 'finish-card', async (page) => {
      await page.locator('[data-act="more-for-client"]').tap();
      await page.locator('[data-act="way-card"]').tap();
      return listPages(await page.pdf({ preferCSSPageSize: true }));
    });
    expect(pages).toHaveLength(1);
    expect(pages[0]?.highMm).toBeCloseTo(105, 0);
  });
});

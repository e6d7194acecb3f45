import { writeFile } from 'node:fs/promises';
import { describe, expect, it } from 'vitest';
import { listPages, readPaper, withScene } from './paper';
import { useStation } from './station';

const station = useStation();

describe('the strand card on paper', () => {
  it.each([
    ['strandCard-usual', { width: 1280, height: 800 }],
    ['strandCard-full', { width: 1280, height: 800 }],
    ['strandCard-full', { width: 800, height: 1280 }],
    ['strandCard-full', { width: 1024, height: 768 }],
    ['strandCard-longest', { width: 1280, height: 800 }],
    ['strandCard-longest', { width: 1024, height: 768 }],
  ])('of %s is one page of A6, whichever way the tablet stands: %o', async (name, size) => {
    const pages = await withScene(station, name, async (page) => {
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
    const paper = await withScene(station, name, async (page) => {
      await page.emulateMedia({ media: 'print' });
      return readPaper(page, '.strand-card-face');
    });
    expect(paper).toEqual({
      wideMm: expect.closeTo(148, 0),
      outside: [],
      isOver: false,
      isStationShown: false,
    });
  });

  it('is seen to need a second page where it does', async () => {
    const pages = await withScene(station, 'strandCard-usual', async (page) => {
      await page.evaluate(() => {
        document.querySelector<HTMLElement>('.paper')?.style.setProperty('height', '150mm');
      });
      return listPages(await page.pdf({ preferCSSPageSize: true }));
    });
    expect(pages).toHaveLength(2);
  });

  it('leaves what the browser prints of any other screen alone', async () => {
    const pages = await withScene(station, 'bar-usual', async (page) =>
      listPages(await page.pdf({ preferCSSPageSize: true })),
    );
    expect(pages[0]?.wideMm).not.toBeCloseTo(148, 0);
  });
});

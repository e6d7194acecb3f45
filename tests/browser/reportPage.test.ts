import { writeFile } from 'node:fs/promises';
import { describe, expect, it } from 'vitest';
import { formatHtml } from '../../scripts/report/formatSheet.mjs';
import { laySheet } from '../../scripts/report/laySheet.mjs';
import { report as words } from '../../src/words/en/report';
import { shipped } from '../shared/records/json/leaving';
import { named, records, report, visit, whole } from '../shared/records/report/files';
import { listPages } from './paper';
import { useStation } from './station';

const station = useStation();
const hostile = `<img src=x onerror="document.title='ran'"> ${'long'.repeat(60)}.json`;

/** A week with everything in it: who is named, what is left out, and a file whose name would run. */
function makePage(): string {
  const files = { [hostile]: records([...shipped, visit('aaaa1', whole, named)]), gone: null };
  const { report: told, faults } = report(files, true);
  if (told === null) throw new Error('no report was made');
  const people = [{ ...told.figures, name: 'Opal & <Juno>', lifted: 3 }];
  return formatHtml(
    laySheet({ ...told, people, isDemo: true }, faults, words, [words.daysBy('Europe/Lisbon')]),
    'en',
  );
}

describe('the report on paper', () => {
  it.each([
    ['A4', 210, 297],
    ['Letter', 215.9, 279.4],
  ] as const)('fits %s, and nothing of it runs or is fetched', async (format, wideMm, highMm) => {
    const page = await station.browser.newPage();
    const asked: string[] = [];
    page.on('request', (request) => asked.push(request.url()));
    try {
      await page.setContent(makePage());
      await page.setViewportSize({ width: Math.floor(((wideMm - 30) / 25.4) * 96), height: 1000 });
      await page.emulateMedia({ media: 'print' });
      if (process.env.KEEP !== undefined)
        await page.screenshot({ path: `${process.env.KEEP}/report-${format}.png`, fullPage: true });
      const seen = await page.evaluate(() => ({
        title: document.title,
        odd: document.querySelectorAll('script, img, link, iframe').length,
        wide: [...document.querySelectorAll('body *')].filter(
          (each) => each.getBoundingClientRect().right > innerWidth + 1,
        ).length,
        text: document.body.textContent,
      }));
      expect(seen).toMatchObject({ odd: 0, wide: 0 });
      expect(seen.title).toMatch(/^Report, /);
      expect(seen.text).toContain('Opal & <Juno>');
      expect(seen.text).toContain('INVENTED');
      const pdf = await page.pdf({ format, preferCSSPageSize: true });
      if (process.env.KEEP !== undefined) await writeFile(`${process.env.KEEP}/report-${format}.pdf`, pdf);
      for (const each of listPages(pdf)) {
        expect(each.wideMm).toBeCloseTo(wideMm, 0);
        expect(each.highMm).toBeCloseTo(highMm, 0);
      }
      expect(asked).toEqual([]);
    } finally {
      await page.close();
    }
  });
});

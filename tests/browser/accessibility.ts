import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';

const source = createRequire(import.meta.url).resolve('axe-core');

/**
 * What on this screen would shut somebody out? Runs axe-core over the page with its rules up to WCAG 2.2 AAA
 * contrast, and answers with one line a finding: the rule, and what it found.
 */
export async function findBarriers(page: Page): Promise<string[]> {
  await page.evaluate(await readFile(source, 'utf8'));
  const { violations } = await page.evaluate(async () => {
    const { axe } = globalThis as unknown as { axe: { run(options: object): Promise<AxeResults> } };
    return axe.run({ rules: { 'color-contrast-enhanced': { enabled: true } } });
  });
  return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`));
}

import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';

const source = createRequire(import.meta.url).resolve('axe-core');

/**
 * What on this screen would shut somebody out? Runs every rule that axe-core knows, those it leaves off by itself
 * included, and answers with one line a finding: the rule, and what it found.
 */
export async function findBarriers(page: Page): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(await readFile(source, 'utf8'));
  const { violations } = await page.evaluate(async () => {
    const { axe } = globalThis as unknown as {
      axe: { getRules(): { ruleId: string }[]; run(options: object): Promise<AxeResults> };
    };
    const rules = Object.fromEntries(axe.getRules().map(({ ruleId }) => [ruleId, { enabled: true }]));
    return axe.run({ rules });
  });
  return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`));
}

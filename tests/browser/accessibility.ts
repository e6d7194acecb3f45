import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';

const source = createRequire(import.meta.url).resolve('axe-core/axe.min.js');

/**
 * What on this screen would shut somebody out? Runs every rule that axe-core knows, those it leaves off by itself
 * included, and answers with one line a finding: the rule, and what it found.
 */
export async function findBarriers(page: Page): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in globalThis))) await load(page);
  const { violations } = await page.evaluate(async () => {
    const { axe } = globalThis as unknown as {
      axe: { getRules(): { ruleId: string }[]; run(options: object): Promise<AxeResults> };
    };
    const rules = Object.fromEntries(axe.getRules().map(({ ruleId }) => [ruleId, { enabled: true }]));
    return axe.run({ rules });
  });
  return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`));
}

/** As a script of its own, which the browser compiles once for all pages, and not as an expression of each. */
async function load(page: Page): Promise<void> {
  const session = await page.context().newCDPSession(page);
  await session.send('Runtime.evaluate', { expression: await readFile(source, 'utf8') });
  await session.detach();
}

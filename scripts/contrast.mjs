// npm run contrast: prints, as Markdown, how far text and marks stand out from what they lie on, by WCAG's formula.
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { listContrasts, readColours } from './contrasts.mjs';

const colours = readColours(await readFile(join(import.meta.dirname, '..', 'src', 'base.css'), 'utf8'));
console.log(
  [
    '| what | on | ratio | at least |',
    '| --- | --- | --- | --- |',
    ...listContrasts(colours).map(
      ({ what, on, ratio, least }) => `| ${what} | ${on} | ${ratio.toFixed(2)} : 1 | ${least} : 1 |`,
    ),
  ].join('\n'),
);

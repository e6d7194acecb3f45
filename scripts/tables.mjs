// npm run tables: prints the decision table as Markdown, from the function that suggests.
import { join } from 'node:path';
import { runnerImport } from 'vite';
import { formatDecisionTable } from './formatDecisionTable.mjs';

const root = join(import.meta.dirname, '..');
const { module } = await runnerImport(join(root, 'shared/judgement/decisionTable.ts'), {
  root,
  configFile: false,
  logLevel: 'error',
});
const { suggestDecision } = /** @type {{ suggestDecision: import('./formatDecisionTable.mjs').Suggest }} */ (
  module
);
console.log(formatDecisionTable(suggestDecision));

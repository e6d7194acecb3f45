// npm test: types, lint, unused code, then every test. The last line is the count, over all of them.
import { spawn } from 'node:child_process';
import { mkdir, readdir, readFile, rm } from 'node:fs/promises';
import { join, relative } from 'node:path';
import { addUp, countReport, countStep, findUnrun } from './counting.mjs';

const root = join(import.meta.dirname, '..');
const bin = join(root, 'node_modules', '.bin');
const reports = join(root, 'node_modules', '.cache', 'reports');

/**
 * @param {string} command
 * @param {string[]} args
 * @returns {Promise<number>} the exit code; a run that a signal ended counts as failed
 */
function run(command, args) {
  return new Promise((resolve) => {
    const child = spawn(join(bin, command), args, { cwd: root, stdio: ['ignore', 'inherit', 'inherit'] });
    child.once('error', (error) => {
      console.error(error.message);
      resolve(1);
    });
    child.once('exit', (code) => resolve(code ?? 1));
  });
}

/**
 * @param {string} name
 * @param {() => Promise<import('./counting.mjs').Count>} part
 */
async function time(name, part) {
  console.log(`\n— ${name}`);
  const began = performance.now();
  const count = await part();
  const seconds = ((performance.now() - began) / 1000).toFixed(1);
  console.log(`— ${name}: ${count.passed} passed, ${count.failed} failed, ${seconds} s`);
  return count;
}

/** @type {string[]} */
const filesRun = [];

/**
 * @param {string} name
 * @param {string[]} projects
 */
async function runTests(name, projects) {
  const file = join(reports, `${name}.json`);
  const code = await run('vitest', [
    'run',
    ...projects.flatMap((project) => ['--project', project]),
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${file}`,
  ]);
  const report = await readFile(file, 'utf8').then(JSON.parse, () => undefined);
  for (const { name: ran } of report?.testResults ?? []) filesRun.push(relative(root, ran));
  return countReport(report, code);
}

/** A test file that no project takes in would be silent for ever. */
async function checkAllRan() {
  const files = await readdir(join(root, 'tests'), { recursive: true });
  const unrun = findUnrun(
    files.map((file) => `tests/${file}`),
    filesRun,
  );
  for (const file of unrun) console.error(`${file} was run by no project of vitest.config.ts`);
  return { passed: unrun.length === 0 ? 1 : 0, failed: unrun.length };
}

await rm(reports, { recursive: true, force: true });
await mkdir(reports, { recursive: true });

const began = performance.now();
const counts = [
  await time('types', async () => countStep(await run('tsc', ['-b']))),
  await time('lint', async () => countStep(await run('biome', ['check', '--error-on-warnings', '.']))),
  await time('unused code', async () => countStep(await run('knip', []))),
  await time('tests in node and a small DOM', () => runTests('unit', ['node', 'alone', 'dom'])),
  await time('tests in the browser', () => runTests('browser', ['browser'])),
  await time('every test file was run', checkAllRan),
];
const { passed, failed } = addUp(counts);
console.log(`\nAll of it took ${((performance.now() - began) / 1000).toFixed(1)} s`);
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed > 0 ? 1 : 0;

/** @typedef {{ passed: number, failed: number }} Count */

/**
 * What vitest's json reporter writes, as far as it is read here.
 * @typedef {{ numPassedTests: number, numFailedTests: number }} Report
 */

/**
 * One step without tests of its own, such as the compiler: passed or failed.
 * @param {number} exitCode
 * @returns {Count}
 */
export const countStep = (exitCode) => (exitCode === 0 ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 });

/**
 * What does a run of vitest count for? A run that wrote no report, ran no test, or ended badly although no test
 * failed (a file that does not load, an error outside a test) counts as one failure more.
 * Checked by tests/scripts/counting.test.ts.
 * @param {Report | undefined} report
 * @param {number} exitCode
 * @returns {Count}
 */
export function countReport(report, exitCode) {
  const passed = report?.numPassedTests ?? 0;
  const failed = report?.numFailedTests ?? 0;
  const isSilent = passed + failed === 0;
  const isUnexplained = exitCode !== 0 && failed === 0;
  return { passed, failed: failed + (isSilent || isUnexplained ? 1 : 0) };
}

/**
 * @param {readonly Count[]} counts
 * @returns {Count}
 */
export function addUp(counts) {
  return {
    passed: counts.reduce((sum, { passed }) => sum + passed, 0),
    failed: counts.reduce((sum, { failed }) => sum + failed, 0),
  };
}

/**
 * Which test files were not run?
 * @param {readonly string[]} files all files under tests
 * @param {readonly string[]} filesRun
 */
export function findUnrun(files, filesRun) {
  const ran = new Set(filesRun);
  return files.filter((file) => /\.test\.tsx?$/.test(file) && !ran.has(file));
}

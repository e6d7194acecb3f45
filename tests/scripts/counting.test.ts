import { describe, expect, it } from 'vitest';
import { addUp, countReport, countStep, findUnrun } from '../../scripts/counting.mjs';

describe('the closing count', () => {
  it('takes over what a run reports', () => {
    expect(countReport({ numPassedTests: 12, numFailedTests: 0 }, 0)).toEqual({ passed: 12, failed: 0 });
    expect(countReport({ numPassedTests: 12, numFailedTests: 3 }, 1)).toEqual({ passed: 12, failed: 3 });
  });

  it('counts a run that crashed, or ran nothing, as failed', () => {
    expect(countReport(undefined, 1)).toEqual({ passed: 0, failed: 1 });
    expect(countReport(undefined, 0)).toEqual({ passed: 0, failed: 1 });
    expect(countReport({ numPassedTests: 0, numFailedTests: 0 }, 0)).toEqual({ passed: 0, failed: 1 });
  });

  it('counts a bad end that no failed test explains', () => {
    expect(countReport({ numPassedTests: 12, numFailedTests: 0 }, 1)).toEqual({ passed: 12, failed: 1 });
  });

  it('counts a step without tests as one', () => {
    expect([countStep(0), countStep(2)]).toEqual([
      { passed: 1, failed: 0 },
      { passed: 0, failed: 1 },
    ]);
  });

  it('adds up all parts', () => {
    expect(addUp([countStep(0), countStep(1), { passed: 5, failed: 2 }])).toEqual({ passed: 6, failed: 3 });
  });

  it('names a test file that no run took in', () => {
    const files = ['tests/a.test.ts', 'tests/b.test.tsx', 'tests/browser/browser.ts'];
    expect(findUnrun(files, ['tests/a.test.ts'])).toEqual(['tests/b.test.tsx']);
  });
});

import { availableParallelism } from 'node:os';
import solid from 'vite-plugin-solid';
import { defineConfig } from 'vitest/config';
import { DearestFirst } from './scripts/dearestFirst.mjs';

/** The suite runs where no salon is, so that a wrong use of local time shows. */
const env = { TZ: 'America/St_Johns', LANG: 'en_US.UTF-8', LC_ALL: 'en_US.UTF-8' };

// Worker threads read TZ from the process that starts them.
Object.assign(process.env, env);

/** It puts one module in the place of another, which files that share their modules would not see. */
const replacing = 'tests/machines/consultation/keptLimit.test.ts';

export default defineConfig({
  test: {
    // By itself vitest leaves a core idle, and of two that is half.
    maxWorkers: Math.max(2, availableParallelism()),
    sequence: { sequencer: DearestFirst },
    projects: [
      {
        test: {
          name: 'alone',
          environment: 'node',
          env,
          include: [
            'tests/*.test.ts',
            'tests/scripts/**/*.test.ts',
            'tests/src/{storage,station,tablet}/**/*.test.ts',
            replacing,
          ],
          testTimeout: 120_000,
          hookTimeout: 300_000,
        },
      },
      {
        test: {
          name: 'node',
          environment: 'node',
          env,
          exclude: [replacing],
          // The modules of shared and machines are read once, not once for each file: they hold nothing that moves.
          isolate: false,
          include: ['tests/{shared,machines,evidence,seeds}/**/*.test.ts', 'tests/src/words/**/*.test.ts'],
          testTimeout: 120_000,
          // The walks of the whole chart are drawn once before the tests of a file.
          hookTimeout: 300_000,
        },
      },
      {
        plugins: [solid()],
        // Without these conditions Solid's server build is loaded, and nothing reacts.
        resolve: { conditions: ['module', 'browser', 'development'] },
        test: {
          name: 'dom',
          environment: 'happy-dom',
          env,
          // Most of a file's time were its modules; what a page is left with is cleared by freshPage.
          isolate: false,
          setupFiles: ['tests/src/freshPage.ts'],
          include: ['tests/src/*.test.tsx', 'tests/src/{parts,screens,tablet,station}/**/*.test.tsx'],
          testTimeout: 120_000,
        },
      },
      {
        test: {
          name: 'browser',
          environment: 'node',
          env,
          include: ['tests/browser/**/*.test.ts'],
          globalSetup: ['tests/browser/globalSetup.ts'],
          // Each file starts browsers of its own: one file at a time on a small machine, for two of them at once were seen
          // to keep each other waiting past their limits. Where a file says that its tests may run side by side, as many
          // as such a machine bears.
          fileParallelism: false,
          sequence: { groupOrder: 1, sequencer: DearestFirst },
          maxConcurrency: 3,
          testTimeout: 120_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
});

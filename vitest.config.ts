import solid from 'vite-plugin-solid';
import { defineConfig } from 'vitest/config';

/** The suite runs where no salon is, so that a wrong use of local time shows. */
const env = { TZ: 'America/St_Johns', LANG: 'en_US.UTF-8', LC_ALL: 'en_US.UTF-8' };

// Worker threads read TZ from the process that starts them.
Object.assign(process.env, env);

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'node',
          environment: 'node',
          env,
          include: [
            'tests/*.test.ts',
            'tests/{shared,machines,evidence,seeds,scripts}/**/*.test.ts',
            'tests/src/{words,storage,station,tablet}/**/*.test.ts',
          ],
          testTimeout: 20_000,
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
          include: ['tests/src/*.test.tsx', 'tests/src/{parts,screens,tablet,station}/**/*.test.tsx'],
          testTimeout: 20_000,
        },
      },
      {
        test: {
          name: 'browser',
          environment: 'node',
          env,
          include: ['tests/browser/**/*.test.ts'],
          globalSetup: ['tests/browser/globalSetup.ts'],
          // Each file starts browsers of its own: one file at a time on a small machine.
          fileParallelism: false,
          // Where a file says that its tests may run side by side, as many as such a machine bears.
          maxConcurrency: 3,
          testTimeout: 120_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
});

import { mkdtemp, rm } from 'node:fs/promises';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';
import { buildStation } from '../../scripts/build.mjs';
import { readyChromium } from '../../scripts/chromium.mjs';

declare module 'vitest' {
  interface ProvidedContext {
    /** The station that this run built for itself: two runs at once do not disturb each other. */
    stationFolder: string;
  }
}

const cache = join(import.meta.dirname, '..', '..', 'node_modules', '.cache');

export default async function setup(project: TestProject) {
  await readyChromium();
  const folder = await mkdtemp(join(cache, 'station-'));
  await buildStation(folder);
  project.provide('stationFolder', folder);
  return () => rm(folder, { recursive: true, force: true });
}

import { createHash } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';
import { join, relative, resolve, sep } from 'node:path';
import { build } from 'vite';
import { readBuildName } from './buildName.mjs';
import { strictHeaders } from './headers.mjs';

const root = join(import.meta.dirname, '..');
const script = 'serviceWorker.js';

/**
 * Every file of a built folder, as the service worker is to keep it. The revision also tells the strict headers
 * apart, because a kept page carries those it came with; the integrity refuses a file of another build.
 * @param {string} folder
 */
async function listBuilt(folder) {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const files = entries
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .filter((file) => relative(folder, file) !== script)
    .sort();
  return Promise.all(
    files.map(async (file) => {
      const contents = await readFile(file);
      const revision = createHash('sha256').update(contents).update(JSON.stringify(strictHeaders));
      return {
        url: `/${relative(folder, file).replaceAll(sep, '/')}`,
        revision: revision.digest('hex').slice(0, 16),
        integrity: `sha256-${createHash('sha256').update(contents).digest('base64')}`,
      };
    }),
  );
}

/**
 * Builds the service worker of a built folder, which knows each of its files: a classic script, which every browser
 * takes. Checked by tests/browser/offline.test.ts.
 * @param {string} folder
 */
export async function writeServiceWorker(folder) {
  await build({
    configFile: false,
    root,
    publicDir: false,
    logLevel: 'warn',
    define: {
      BUILT_FILES: JSON.stringify(await listBuilt(folder)),
      BUILD_NAME: JSON.stringify(readBuildName(await readFile(join(folder, 'index.html'), 'utf8'))),
      'process.env.NODE_ENV': '"production"',
    },
    build: {
      target: 'es2022',
      outDir: folder,
      emptyOutDir: false,
      lib: {
        entry: join(root, 'src', 'offline', 'serviceWorker.ts'),
        name: 'serviceWorker',
        formats: ['iife'],
        fileName: () => script,
      },
    },
  });
}

/**
 * After the station is built, so is its service worker.
 * @returns {import('vite').Plugin}
 */
export function buildServiceWorker() {
  let folder = '';
  return {
    name: 'service-worker',
    apply: 'build',
    configResolved(config) {
      folder = resolve(config.root, config.build.outDir);
    },
    // Once the files are written, and never after a build that failed.
    writeBundle: () => writeServiceWorker(folder),
  };
}

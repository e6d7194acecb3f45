import { createHash } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';

const root = join(import.meta.dirname, '..');

/** Where a page says which build it is; src/tablet/buildName.ts reads it, and the service worker is told it. */
const tag = (/** @type {string} */ name) => `<meta name="station-build" content="${name}" />`;
const inTag = /<meta name="station-build" content="([^"]*)" \/>/;

/** The version of package.json, and eight digits of all that was built: two builds of one version are told apart. */
async function makeName(/** @type {readonly string[]} */ built, /** @type {string} */ publicFolder) {
  const { version } = JSON.parse(await readFile(join(root, 'package.json'), 'utf8'));
  const digest = createHash('sha256');
  // What vite builds is named by its contents; what lies in public/ is not.
  for (const name of [...built].sort()) digest.update(name);
  for (const name of (await readdir(publicFolder)).sort()) {
    digest.update(name).update(await readFile(join(publicFolder, name)));
  }
  return `${version} ${digest.digest('hex').slice(0, 8)}`;
}

/** Which build is this page of? Empty where it says nothing. */
export const readBuildName = (/** @type {string} */ html) => inTag.exec(html)?.[1] ?? '';

/** Writes into the page of a build which one it is. Checked by tests/browser/updates.test.ts. */
export function nameBuild() {
  let publicFolder = '';
  return /** @type {import('vite').Plugin} */ ({
    name: 'build-name',
    apply: 'build',
    configResolved(config) {
      publicFolder = config.publicDir;
    },
    transformIndexHtml: {
      order: 'post',
      handler: async (html, { bundle }) =>
        html.replace(
          '</title>',
          `</title>\n    ${tag(await makeName(Object.keys(bundle ?? {}), publicFolder))}`,
        ),
    },
  });
}

import { existsSync } from 'node:fs';
import { mkdir, readdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { inflate } from '@sparticuz/chromium';

const require = createRequire(import.meta.url);
const root = join(import.meta.dirname, '..');
const cache = join(root, 'node_modules', '.cache', 'chromium');

/** What every browser of the tests is started with. The package's own list is not used: it switches off web security. */
export const chromiumFlags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--no-default-browser-check',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--disable-domain-reliability',
  '--disable-dev-shm-usage',
  '--font-render-hinting=none',
  '--lang=en-US',
];

/**
 * Where is a browser that runs here? CHROMIUM_PATH names one; without it, the one inside the npm package is
 * unpacked, once for each version of the package.
 * @returns {Promise<{ executablePath: string, env: Record<string, string> }>}
 */
export async function readyChromium() {
  const given = process.env.CHROMIUM_PATH;
  if (given) return { executablePath: given, env: copyEnvironment() };

  const home = await unpackChromium(cache);
  const fonts = join(home, 'fonts.conf');
  await writeFontList(fonts);
  return {
    executablePath: join(home, 'chromium'),
    env: {
      ...copyEnvironment(),
      FONTCONFIG_FILE: fonts,
      LD_LIBRARY_PATH: [join(home, 'al2023', 'lib'), process.env.LD_LIBRARY_PATH].filter(Boolean).join(':'),
    },
  };
}

/**
 * Where is the unpacked browser? Unpacks aside and moves the whole folder into place as the last act, so that a
 * run that was broken off, or a second one at the same time, never leaves half a browser under the name that is
 * used. Checked by tests/scripts/chromium.test.ts.
 * @param {string} cache the folder that holds one folder for each version
 * @returns {Promise<string>}
 */
export async function unpackChromium(cache) {
  const packed = join(dirname(require.resolve('@sparticuz/chromium')), '..');
  const { version } = JSON.parse(await readFile(join(packed, 'package.json'), 'utf8'));
  const home = join(cache, version);
  if (existsSync(home)) return home;
  if (process.platform !== 'linux' || process.arch !== 'x64') {
    throw new Error(
      'The packaged Chromium runs on Linux x64 only: set CHROMIUM_PATH to a Chromium of your own.',
    );
  }
  await mkdir(cache, { recursive: true });
  await removeLeftovers(cache);
  const aside = join(cache, `unpacking-${process.pid}`);
  await mkdir(aside);
  const temporary = process.env.TMPDIR;
  try {
    process.env.TMPDIR = aside; // where the package unpacks to
    await Promise.all(packedFiles.map((name) => inflate(join(packed, 'bin', name))));
    await rename(aside, home);
  } catch (error) {
    if (!existsSync(home)) throw error; // otherwise another run was first
  } finally {
    if (temporary === undefined) delete process.env.TMPDIR;
    else process.env.TMPDIR = temporary;
    await rm(aside, { recursive: true, force: true });
  }
  return home;
}

/** The browser, the libraries that a bare Debian lacks, and fonts. */
const packedFiles = ['chromium.br', 'al2023.tar.br', 'fonts.tar.br'];

/**
 * Clears what runs left behind that ended while unpacking.
 * @param {string} cache
 */
async function removeLeftovers(cache) {
  for (const name of await readdir(cache)) {
    const [, pid] = /^unpacking-(\d+)$/.exec(name) ?? [];
    if (pid && !isRunning(Number(pid))) await rm(join(cache, name), { recursive: true, force: true });
  }
}

/** @param {number} pid */
function isRunning(pid) {
  try {
    process.kill(pid, 0);
    return true;
  } catch {
    return false;
  }
}

/**
 * Chromium waits for ever for its first letter when it finds no font at all: it gets the ones unpacked beside it.
 * @param {string} file
 */
async function writeFontList(file) {
  const list = `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <dir>${join(dirname(file), 'fonts')}</dir>
  <cachedir>${join(dirname(file), 'font-cache')}</cachedir>
</fontconfig>
`;
  const aside = `${file}-${process.pid}`;
  await writeFile(aside, list);
  await rename(aside, file);
}

/** @returns {Record<string, string>} */
function copyEnvironment() {
  /** @type {Record<string, string>} */
  const env = {};
  for (const [name, value] of Object.entries(process.env)) {
    if (value !== undefined) env[name] = value;
  }
  return env;
}

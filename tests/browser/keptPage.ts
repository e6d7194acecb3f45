import { createHash } from 'node:crypto';
import { cp, readdir, readFile, rename, writeFile } from 'node:fs/promises';
import { join, relative } from 'node:path';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { readBuildName } from '../../scripts/buildName.mjs';
import { writeServiceWorker } from '../../scripts/serviceWorker.mjs';
import { patience } from './person';

const listPaths = async (folder: string): Promise<readonly string[]> =>
  (await readdir(folder, { recursive: true, withFileTypes: true }))
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)))
    .sort();

const digest = (contents: Buffer): string => createHash('sha256').update(contents).digest('hex');

/** Each file of a build but the service worker itself, by its address, with the digest of what is in it. */
export async function digestBuilt(folder: string): Promise<Readonly<Record<string, string>>> {
  const paths = (await listPaths(folder)).filter((path) => path !== 'serviceWorker.js');
  return Object.fromEntries(
    await Promise.all(
      paths.map(async (path) => [`/${path}`, digest(await readFile(join(folder, path)))] as const),
    ),
  );
}

/** The same of every cache that this page's origin has. */
export const digestCached = (page: Page): Promise<Readonly<Record<string, string>>> =>
  page.evaluate(async () => {
    const found: Record<string, string> = {};
    for (const name of await caches.keys()) {
      const cache = await caches.open(name);
      for (const request of await cache.keys()) {
        const contents = await (await cache.match(request))?.arrayBuffer();
        const bytes = new Uint8Array(await crypto.subtle.digest('SHA-256', contents ?? new ArrayBuffer(0)));
        const { pathname } = new URL(request.url);
        found[pathname] = [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
      }
    }
    return found;
  });

/** Waits until the page would open without its server. */
export const isKept = (page: Page): Promise<unknown> =>
  page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated');

/** Waits until the browser, which looks for a newer edition by itself at each opening, has all of it. */
export const isNextHere = (page: Page): Promise<void> =>
  expect
    .poll(
      () =>
        page.evaluate(async () => {
          const registration = await navigator.serviceWorker.ready;
          const main = await caches.match('/assets/index-nextnext.js', { ignoreSearch: true });
          return main !== undefined && registration.installing === null;
        }),
      patience,
    )
    .toBe(true);

/** The main script of the page that is open. */
export const readEdition = (page: Page): Promise<string> =>
  page
    .locator('script[type=module]')
    .evaluate((script) => new URL((script as HTMLScriptElement).src).pathname);

/**
 * The next edition of a build: its main script has another name, so whoever names that has other contents too; and where a
 * name is given it says that it is this one.
 */
export async function makeNextBuild(folder: string, into: string, name?: string): Promise<void> {
  await cp(folder, into, { recursive: true });
  const main = /\/assets\/(index-[\w-]{8}\.js)/.exec(await readFile(join(into, 'index.html'), 'utf8'))?.[1];
  if (main === undefined) throw new Error('The build names no main script');
  await rename(join(into, 'assets', main), join(into, 'assets', 'index-nextnext.js'));
  for (const path of await listPaths(into)) {
    if (!/\.(html|js)$/.test(path)) continue;
    const text = await readFile(join(into, path), 'utf8');
    await writeFile(join(into, path), text.replaceAll(main, 'index-nextnext.js'));
  }
  if (name !== undefined) {
    const page = join(into, 'index.html');
    const html = await readFile(page, 'utf8');
    await writeFile(page, html.replace(readBuildName(html), name));
  }
  await writeServiceWorker(into);
}

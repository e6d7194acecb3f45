import { type ChildProcess, spawn } from 'node:child_process';
import { mkdir, readdir, readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { type Browser, type BrowserContextOptions, chromium } from 'playwright-core';
import { chromiumFlags, readyChromium } from '../../scripts/chromium.mjs';

/** The tablet that the station is drawn for first, in the zone and language that vitest.config.ts pins. */
export const tabletLandscape = {
  viewport: { width: 1280, height: 800 },
  hasTouch: true,
  locale: 'en-US',
  timezoneId: 'America/St_Johns',
} satisfies BrowserContextOptions;

/** A browser that forgets everything when it closes. */
export async function launchBrowser(): Promise<Browser> {
  const { executablePath, env } = await readyChromium();
  return chromium.launch({ executablePath, env, args: chromiumFlags });
}

/**
 * A browser whose profile stays on the disk, and that can be killed as a power cut would: `kill` ends the whole
 * process group at once and answers when every process of it is gone. Start it again with the same folder.
 */
export async function launchKillableBrowser(profileDir: string) {
  await mkdir(profileDir, { recursive: true });
  await removeLocks(profileDir);
  const { executablePath, env } = await readyChromium();
  const child = spawn(
    executablePath,
    [
      ...chromiumFlags,
      '--headless',
      `--user-data-dir=${profileDir}`,
      '--remote-debugging-port=0',
      'about:blank',
    ],
    { detached: true, env, stdio: ['ignore', 'ignore', 'pipe'] },
  );
  const endWithTests = () => killGroup(child);
  process.once('exit', endWithTests);
  const kill = async () => {
    killGroup(child);
    await waitUntilGone(child);
    process.off('exit', endWithTests);
  };
  try {
    const browser = await chromium.connectOverCDP(await readEndpoint(child));
    const [context] = browser.contexts();
    if (!context) throw new Error('The browser has no context');
    return { browser, context, kill };
  } catch (error) {
    await kill();
    throw error;
  }
}

function killGroup(child: ChildProcess) {
  if (child.pid === undefined) return;
  try {
    process.kill(-child.pid, 'SIGKILL');
  } catch {
    // The group has ended by itself.
  }
}

/** A group is gone when nothing of it runs: the dead that nobody has collected yet hold no file and no lock. */
async function waitUntilGone(child: ChildProcess) {
  for (let tries = 0; tries < 2_000; tries++) {
    if (child.pid === undefined || !(await isGroupRunning(child.pid))) return;
    await new Promise((resolve) => setTimeout(resolve, 5));
  }
  throw new Error(`Processes of the killed browser ${child.pid} are still there`);
}

async function isGroupRunning(group: number) {
  for (const name of await readdir('/proc')) {
    if (!/^\d+$/.test(name)) continue;
    const stat = await readFile(join('/proc', name, 'stat'), 'utf8').catch(() => '');
    // proc(5): after the name in brackets come the state, the parent and the group.
    const [state, , itsGroup] = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
    if (Number(itsGroup) === group && state !== 'Z' && state !== 'X') return true;
  }
  return false;
}

/** Chromium says on its error stream where it can be driven. */
function readEndpoint(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = '';
    const timer = setTimeout(() => reject(new Error(`The browser does not answer:\n${said}`)), 30_000);
    const end = (act: () => void) => {
      clearTimeout(timer);
      act();
    };
    child.once('error', (error) => end(() => reject(error)));
    child.once('exit', (code) => end(() => reject(new Error(`The browser ended with ${code}:\n${said}`))));
    child.stderr?.on('data', (chunk: Buffer) => {
      said = (said + chunk.toString()).slice(-10_000);
      const [, endpoint] = /DevTools listening on (ws:\S+)/.exec(said) ?? [];
      if (endpoint) end(() => resolve(endpoint));
    });
  });
}

/** A killed browser leaves its locks behind, and the next one would take the profile for used. */
async function removeLocks(profileDir: string) {
  for (const name of await readdir(profileDir)) {
    if (name.startsWith('Singleton')) await rm(join(profileDir, name), { force: true });
  }
}

import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { mkdtemp, readdir, rm, stat } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readyChromium } from '../../scripts/chromium.mjs';

const script = join(import.meta.dirname, '..', '..', 'scripts', 'chromium.mjs');
let cache: string;
beforeAll(async () => {
  cache = await mkdtemp(join(tmpdir(), 'strandproof-chromium-'));
});
afterAll(() => rm(cache, { recursive: true, force: true }));

/** Unpacks in a process of its own, which can be broken off. */
function unpack(): ChildProcess {
  const code = `import(${JSON.stringify(script)}).then((it) => it.unpackChromium(${JSON.stringify(cache)}))`;
  return spawn(process.execPath, ['-e', code], { stdio: 'ignore' });
}

const end = (child: ChildProcess) => new Promise<number | null>((resolve) => child.once('exit', resolve));

async function waitForSome(folder: string) {
  await expect
    .poll(async () => (await readdir(folder).catch(() => [])).length, { timeout: 20_000, interval: 5 })
    .toBeGreaterThan(0);
}

describe.skipIf(process.platform !== 'linux' || process.arch !== 'x64')('the packaged browser', () => {
  it('is whole after a run that was broken off and two at the same time', { timeout: 120_000 }, async () => {
    const brokenOff = unpack();
    const aside = join(cache, `unpacking-${brokenOff.pid}`);
    await waitForSome(aside);
    brokenOff.kill('SIGKILL');
    await end(brokenOff);
    expect(await readdir(cache)).toEqual([`unpacking-${brokenOff.pid}`]);

    expect(await Promise.all([unpack(), unpack()].map(end))).toEqual([0, 0]);
    const left = await readdir(cache);
    expect(left).toHaveLength(1);
    const home = join(cache, `${left[0]}`);
    expect((await readdir(home)).sort()).toEqual(['al2023', 'chromium', 'fonts']);
    expect((await stat(join(home, 'chromium'))).size).toBeGreaterThan(100_000_000);
    const { stdout } = spawnSync(join(home, 'chromium'), ['--version'], {
      encoding: 'utf8',
      env: { ...process.env, LD_LIBRARY_PATH: join(home, 'al2023', 'lib') },
    });
    expect(stdout).toMatch(/\d+\.\d+\.\d+\.\d+/);
  });

  it('gives way to the one that CHROMIUM_PATH names', async () => {
    const before = process.env.CHROMIUM_PATH;
    process.env.CHROMIUM_PATH = '/somewhere/chromium';
    try {
      expect((await readyChromium()).executablePath).toBe('/somewhere/chromium');
    } finally {
      if (before === undefined) delete process.env.CHROMIUM_PATH;
      else process.env.CHROMIUM_PATH = before;
    }
  });
});

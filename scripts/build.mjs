import { spawn } from 'node:child_process';
import { join } from 'node:path';

const root = join(import.meta.dirname, '..');

/**
 * Builds the station into a folder, in a process of its own: inside a test runner the build would take the
 * development editions of its packages.
 * @param {string} folder
 * @returns {Promise<void>}
 */
export function buildStation(folder) {
  const vite = join(root, 'node_modules', 'vite', 'bin', 'vite.js');
  const args = [vite, 'build', '--outDir', folder, '--emptyOutDir', '--logLevel', 'warn'];
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, args, {
      cwd: root,
      env: { ...process.env, NODE_ENV: 'production' },
      stdio: 'inherit',
    });
    child.once('error', reject);
    child.once('exit', (code) => {
      if (code === 0) resolve();
      else reject(new Error(`vite build ended with ${code}`));
    });
  });
}

import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { ASSUMED_EDITION_WAIT_MS, findEdition } from '../../../src/station/demo/createDemo';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

const named = (name: string): Error => Object.assign(new Error(name), { name });

/** A file store at whose top there is the demo's mark, or not, or no answer at all. */
const makeStorage = (find: () => Promise<unknown>) => ({
  getDirectory: async () => ({ getFileHandle: find }) as unknown as FileSystemDirectoryHandle,
});

it.each([
  ['the demo where its mark is', async () => ({}), 'demo'],
  ['the salon where there is none', () => Promise.reject(named('NotFoundError')), 'salon'],
  ['the salon where the file store fails', () => Promise.reject(named('SecurityError')), 'salon'],
] as const)('shows %s', async (_title, find, edition) => {
  expect(await findEdition(makeStorage(find))).toBe(edition);
});

it('shows the salon where the browser never answers, after a moment', async () => {
  const asked = findEdition(makeStorage(() => new Promise(() => undefined)));
  await vi.advanceTimersByTimeAsync(ASSUMED_EDITION_WAIT_MS);
  expect(await asked).toBe('salon');
});

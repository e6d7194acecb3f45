import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { ASSUMED_EDITION_WAIT_MS, findEdition } from '../../../src/station/findEdition';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

const named = (name: string): Error => Object.assign(new Error(name), { name });

/** A file store that answers so whether this file is at its top. */
const makeStorage = (find: (name: string) => Promise<unknown>) => ({
  getDirectory: async () => ({ getFileHandle: find }) as unknown as FileSystemDirectoryHandle,
});
const holds =
  (...marks: readonly string[]) =>
  (name: string) =>
    marks.includes(name) ? Promise.resolve({}) : Promise.reject(named('NotFoundError'));

it.each([
  ['the demo where its mark is', holds('demo-is-here'), 'demo'],
  ['practice where its mark is', holds('practice-is-on'), 'practice'],
  ['practice where both marks are', holds('demo-is-here', 'practice-is-on'), 'practice'],
  ['the salon where there is none', holds(), 'salon'],
  ['the salon where the file store fails', () => Promise.reject(named('SecurityError')), 'salon'],
] as const)('shows %s', async (_title, find, edition) => {
  expect(await findEdition(makeStorage(find))).toBe(edition);
});

it('shows the salon where the browser never answers, after a moment', async () => {
  const asked = findEdition(makeStorage(() => new Promise(() => undefined)));
  await vi.advanceTimersByTimeAsync(ASSUMED_EDITION_WAIT_MS);
  expect(await asked).toBe('salon');
});

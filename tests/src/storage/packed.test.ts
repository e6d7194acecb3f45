import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Json } from '../../../src/storage/json';
import { pack, readOutline, unpack } from '../../../src/storage/packed';

const packed = (entries: readonly Json[]) => unpack(pack(entries.map((entry) => JSON.stringify(entry))));

it('says the same as what was packed, letter by letter, whatever it is', () => {
  fc.assert(
    fc.property(fc.array(fc.jsonValue()), (entries) => {
      const plain = JSON.parse(JSON.stringify(entries)) as Json[];
      expect(JSON.stringify(packed(plain))).toBe(JSON.stringify(plain));
      expect(packed(plain)).toStrictEqual(plain);
      expect(structuredClone(packed(plain))).toStrictEqual(plain);
    }),
  );
});

it('keeps names that every object knows already', () => {
  const text = '{"__proto__":{"a":[1],"b":2},"constructor":{"log":[3]},"toString":4}';
  expect(JSON.stringify(unpack(pack([text]))[0])).toBe(text);
});

it('reads a list when it is asked for, and does not keep it', () => {
  const [entry] = packed([{ id: 'k3f9', log: [{ at: 1 }], broughtIn: { atMs: 5, settings: [{}] } }]) as [
    { log: readonly Json[]; broughtIn: { atMs: number; settings: readonly Json[] } },
  ];
  expect(entry.log).toStrictEqual([{ at: 1 }]);
  expect(entry.log).not.toBe(entry.log);
  expect(entry.broughtIn).toBe(entry.broughtIn);
  expect(entry.broughtIn.settings).toStrictEqual([{}]);
});

it('has an outline without its lists; what was never packed is its own', () => {
  const plain = { id: 'k3f9', log: [1], broughtIn: { atMs: 5, settings: [2] } };
  const [entry = null] = packed([plain]);
  expect(readOutline(entry)).toStrictEqual({ id: 'k3f9', log: [], broughtIn: { atMs: 5, settings: [] } });
  expect(readOutline(plain)).toBe(plain);
});

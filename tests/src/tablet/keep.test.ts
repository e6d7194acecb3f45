import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { keep, readKept } from '../../../src/tablet/keep';

const schema = v.object({ mm: v.number() });

describe('what this tablet keeps of itself', () => {
  it('is read as it was kept', () => {
    const kept = new Map<string, string>();
    const storage = {
      getItem: (key: string) => kept.get(key) ?? null,
      setItem: (key: string, line: string) => void kept.set(key, line),
    };
    keep(storage, 'one', { mm: 5.5 });
    expect(readKept(storage, 'one', schema)).toEqual({ mm: 5.5 });
    expect(readKept(storage, 'other', schema)).toBeNull();
  });

  it.each(['', '{', 'null', '7', '[]', '{"mm":"5.5"}', '{"mm":null}', '{}'])(
    'is none where “%s” stands',
    (line) => {
      expect(readKept({ getItem: () => line, setItem: () => undefined }, 'one', schema)).toBeNull();
    },
  );

  it('is none, and no trouble, where the browser has no storage or throws', () => {
    const refuse = () => {
      throw new DOMException('no storage', 'SecurityError');
    };
    for (const storage of [undefined, { getItem: refuse, setItem: refuse }]) {
      expect(readKept(storage, 'one', schema)).toBeNull();
      expect(() => keep(storage, 'one', { mm: 5.5 })).not.toThrow();
    }
  });
});

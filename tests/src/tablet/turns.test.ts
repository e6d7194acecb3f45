import { describe, expect, it } from 'vitest';
import { ASSUMED_SPOKEN_EACH, type Calling, makeTurns } from '../../../src/tablet/turns';

const call = (key: string, kind: Calling['kind'] = 'look', isNamed = false): Calling => ({
  key,
  kind,
  line: isNamed ? `chair ${key}` : null,
});
const [a, b, c] = ['a', 'b', 'c'].map((key) => call(key, 'look', true)) as [Calling, Calling, Calling];

describe('of several that call', () => {
  it('each one is heard as soon as she begins, the gravest of those that begin together', () => {
    const turns = makeTurns();
    expect(turns.see([call('1')])?.calling.key).toBe('1');
    expect(turns.see([call('1')])).toBeNull();
    expect(turns.see([call('1'), call('2')])?.calling.key).toBe('2');
    expect(turns.see([call('3', 'due'), call('1'), call('2'), call('4')])?.calling.key).toBe('3');
    expect(turns.see([call('1'), call('4')])).toBeNull();
  });

  it('the gravest is heard again after that, as long as nothing is spoken', () => {
    const turns = makeTurns();
    turns.see([call('over', 'overrun')]);
    turns.see([call('over', 'overrun'), call('1'), call('2')]);
    const heard = Array.from({ length: 9 }, () => turns.next()?.calling.key);
    expect(new Set(heard)).toEqual(new Set(['over']));
  });

  it('one who calls anew after she was heard is a new one', () => {
    const turns = makeTurns();
    turns.see([call('1 at 2')]);
    expect(turns.see([])).toBeNull();
    expect(turns.next()).toBeNull();
    expect(turns.see([call('1 at 2')])?.calling.key).toBe('1 at 2');
    expect(turns.see([call('1 at 7')])?.calling.key).toBe('1 at 7');
  });

  it('every chair is named, those that were not yet first, then each in turn', () => {
    const turns = makeTurns();
    expect(turns.see([a, b, c])?.line).toBe('chair a');
    expect([turns.next()?.line, turns.next()?.line]).toEqual(['chair b', 'chair c']);
    const later = Array.from({ length: 3 * ASSUMED_SPOKEN_EACH }, () => turns.next()?.line ?? null);
    expect(later.flatMap((line, turn) => (line === null ? [] : [[line, turn + 1]]))).toEqual([
      ['chair a', ASSUMED_SPOKEN_EACH],
      ['chair b', 2 * ASSUMED_SPOKEN_EACH],
      ['chair c', 3 * ASSUMED_SPOKEN_EACH],
    ]);
  });

  it('a chair whose line was cut short is named again', () => {
    const turns = makeTurns();
    const first = turns.see([a]);
    if (first !== null) turns.unname(first);
    expect(turns.see([a, b])?.line).toBe('chair b');
    expect(turns.next()?.line).toBe('chair a');
    expect(turns.next()?.line).toBeNull();
  });

  it('a chair is not named again where only its pulses were cut short', () => {
    const turns = makeTurns();
    turns.see([a]);
    const silent = turns.next();
    expect(silent?.line).toBeNull();
    if (silent !== null) turns.unname(silent);
    expect(turns.next()?.line).toBeNull();
  });

  it('a chair is named as soon as lines are turned on, and no more once they are off', () => {
    const turns = makeTurns();
    turns.see([{ ...a, line: null }]);
    expect(turns.next()?.line).toBeNull();
    expect(turns.see([a])).toBeNull();
    expect(turns.next()?.line).toBe('chair a');
    turns.see([{ ...a, line: null }]);
    expect(Array.from({ length: 9 }, () => turns.next()?.line)).toEqual(Array(9).fill(null));
  });
});

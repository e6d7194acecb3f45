import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { createRoot } from 'solid-js';
import { describe, expect, it } from 'vitest';
import { PIN_ROUNDS } from '../../../../shared/pin/pinRecord';
import { createPin } from '../../../../src/station/pin/createPin';
import { makePinStore, type PinStore } from '../../../../src/storage/pinStore';

const FEW = 10;

function makeCopy() {
  const all = new Map<string, string>();
  return {
    all,
    getItem: (key: string) => all.get(key) ?? null,
    setItem: (key: string, value: string) => void all.set(key, value),
    removeItem: (key: string) => void all.delete(key),
  };
}

/** A tablet whose clock the test sets; `reload` opens its page anew. */
function makeTablet(rounds = FEW) {
  const clock = { nowMs: 1_794_500_000_000 };
  const copy = makeCopy();
  const store: PinStore = makePinStore(new IDBFactory(), copy);
  const reload = (now = rounds) => createRoot(() => createPin(store, () => clock.nowMs, now));
  return { clock, copy, store, reload };
}

describe('the PIN of a tablet', () => {
  it('is none until one is set, is told right from wrong, and is taken off again', async () => {
    const { reload, store, copy } = makeTablet();
    const pin = reload();
    await pin.refresh();
    expect(pin.isSet()).toBe(false);
    expect(await pin.set('908172')).toBe(true);
    expect(pin.isSet()).toBe(true);
    expect(await pin.attempt('908172')).toBe('right');
    expect(await pin.attempt('908173')).toBe('wrong');
    expect(await pin.takeOff()).toBe(true);
    expect([await store.read(), copy.all.size, pin.isSet()]).toEqual([null, 0, false]);
  });

  it('is kept as PBKDF2 of 600,000 rounds and a salt of its own, and never as it was typed', async () => {
    const { reload, store } = makeTablet();
    const kept = [];
    for (const pin of [reload(PIN_ROUNDS), reload(PIN_ROUNDS)]) {
      await pin.set('908172');
      kept.push((await store.read()) as { salt: string; key: string; rounds: number });
      expect(JSON.stringify(kept)).not.toContain('908172');
    }
    expect(PIN_ROUNDS).toBe(600_000);
    expect(kept.map(({ rounds }) => rounds)).toEqual([600_000, 600_000]);
    expect(kept[0]?.salt).toMatch(/^[0-9a-f]{32}$/);
    expect(kept[0]?.salt).not.toBe(kept[1]?.salt);
    expect(kept[0]?.key).not.toBe(kept[1]?.key);
  });

  // Node’s own PBKDF2 is another account of the same standard (RFC 8018).
  it('comes to what another account of PBKDF2 comes to', async () => {
    const { pbkdf2Sync } = await import('node:crypto');
    const { reload, store } = makeTablet(1_000);
    await reload().set('004217');
    const { salt, key, rounds } = (await store.read()) as { salt: string; key: string; rounds: number };
    expect(pbkdf2Sync('004217', Buffer.from(salt, 'hex'), rounds, 32, 'sha256').toString('hex')).toBe(key);
  });

  it('waits after a wrong one, twice as long each time, over a reload and a clock that is set back', async () => {
    const { clock, reload } = makeTablet();
    await reload().set('908172');
    expect(await reload().attempt('111111')).toBe('wrong');
    expect(await reload().attempt('908172')).toBe('waits');
    clock.nowMs += 1_000;
    expect(await reload().attempt('111112')).toBe('wrong');
    clock.nowMs -= 3_600_000;
    const back = reload();
    expect(await back.attempt('908172')).toBe('waits');
    expect(back.waitLeftMs()).toBe(2_000);
    clock.nowMs += 1_999;
    expect(await back.attempt('908172')).toBe('waits');
    clock.nowMs += 1;
    expect(await back.attempt('908172')).toBe('right');
    expect(await back.attempt('111113')).toBe('wrong');
    expect(back.waitLeftMs()).toBe(1_000);
  });

  it('counts a try before it looks, and looks at none that cannot be counted', async () => {
    const { clock, reload, store } = makeTablet();
    await reload().set('908172');
    const writes: unknown[] = [];
    let isFull = false;
    const watched: PinStore = {
      read: store.read,
      write: async (record) => {
        if (isFull) throw new DOMException('full', 'QuotaExceededError');
        writes.push(record);
        await store.write(record);
      },
    };
    const pin = createRoot(() => createPin(watched, () => clock.nowMs, FEW));
    expect(await pin.attempt('908172')).toBe('right');
    expect(writes).toMatchObject([{ wrong: 1 }, { wrong: 0 }]);
    isFull = true;
    expect(await pin.attempt('908172')).toBe('notKept');
    expect(await pin.set('222333')).toBe(false);
  });

  it('is made anew with more rounds once these are raised, at the next right one', async () => {
    const { reload, store } = makeTablet();
    await reload().set('908172');
    const raised = reload(25);
    expect(await raised.attempt('908172')).toBe('right');
    expect(await store.read()).toMatchObject({ rounds: 25, wrong: 0 });
    expect(await raised.attempt('908172')).toBe('right');
  });

  it('is there still when the browser lost its database, and when the copy was not kept', async () => {
    const { clock, copy, reload } = makeTablet();
    await reload().set('908172');
    const without = createRoot(() => createPin(makePinStore(new IDBFactory(), copy), () => clock.nowMs, FEW));
    expect(await without.attempt('111111')).toBe('wrong');
    copy.all.clear();
    const pin = reload();
    await pin.refresh();
    expect(pin.isSet()).toBe(true);
  });

  it('falls a day after somebody said that it is forgotten, unless a right one comes first', async () => {
    const { clock, reload } = makeTablet();
    await reload().set('908172');
    const pin = reload();
    expect(await pin.forget()).toBe(true);
    expect(pin.fallsAtMs()).toBe(clock.nowMs + 24 * 3_600_000);
    expect(await pin.attempt('908172')).toBe('right');
    expect(pin.fallsAtMs()).toBeNull();
    await pin.forget();
    clock.nowMs += 24 * 3_600_000 - 1;
    await pin.refresh();
    expect(pin.isSet()).toBe(true);
    clock.nowMs += 1;
    await pin.refresh();
    expect(pin.isSet()).toBe(false);
  });

  it('that cannot be read is none: it keeps a screen closed, and an owner is not shut out by a broken file', async () => {
    const { clock } = makeTablet();
    const broken: PinStore = { read: async () => ({ salt: 1 }), write: async () => undefined };
    const pin = createRoot(() => createPin(broken, () => clock.nowMs, FEW));
    await pin.refresh();
    expect(pin.isSet()).toBe(false);
  });
});

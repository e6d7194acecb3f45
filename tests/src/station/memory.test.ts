import { describe, expect, it } from 'vitest';
import { refuse } from '../../../shared/result';
import { makeMemory } from '../../../src/station/memory';
import type { WriteFailure } from '../../../src/storage/store';
import { makeTablet, switchOn } from '../storage/tablet';

const failure: WriteFailure = {
  name: 'open-k3f9',
  kind: 'quotaExceeded',
  copy: 'index',
  mayBeHeld: true,
  detail: 'full',
};

async function makeFailing(failAt: number) {
  const { store } = switchOn(makeTablet());
  const failed: WriteFailure[] = [];
  let writes = 0;
  const memory = makeMemory(
    {
      ...store,
      append: async (name, seq, ...entries) => {
        writes += 1;
        const written = await store.append(name, seq, ...entries);
        return writes === failAt ? refuse(failure) : written;
      },
    },
    {
      onAcknowledged: () => undefined,
      onDropped: () => undefined,
      onRewritten: () => undefined,
      onMonth: () => undefined,
      onFailed: (each) => failed.push(each),
    },
  );
  await memory.restore();
  return { memory, failed };
}

describe('what both copies hold', () => {
  it('is read again after a failed write, and what turns out to be held is what counts', async () => {
    const { memory, failed } = await makeFailing(2);
    await memory.append('open-k3f9', { at: 0 });
    expect(await memory.append('open-k3f9', { at: 1 })).toStrictEqual(refuse(failure));
    expect(failed).toStrictEqual([failure]);
    expect(memory.logs().get('open-k3f9')).toStrictEqual([{ at: 0 }, { at: 1 }]);
    expect(await memory.append('open-k3f9', { at: 2 })).toMatchObject({ ok: true });
  });

  it('forgets a log that was removed', async () => {
    const { memory } = await makeFailing(-1);
    await memory.append('open-k3f9', { at: 0 });
    await memory.remove('open-k3f9');
    expect(memory.logs().has('open-k3f9')).toBe(false);
  });
});

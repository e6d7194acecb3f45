import { describe, expect, it } from 'vitest';
import { makeIndexCopy } from '../../../src/storage/indexCopy';
import { makeStrictStore } from '../../../src/storage/strictStore';
import { lineAt, linesUpTo, makeTablet, switchOn } from './tablet';

describe('the index', () => {
  it('adds all lines of a call or none', async () => {
    const { index } = switchOn(makeTablet());
    await index.append('settings', 1, [lineAt(1)]);
    expect(await index.append('settings', 0, linesUpTo(3))).toMatchObject({
      ok: false,
      error: { copy: 'index', kind: 'indexUnavailable', detail: expect.stringMatching('Constraint') },
    });
    expect(await index.read('settings')).toMatchObject({
      ok: true,
      value: { lines: [], claimed: 2, fault: 'gap' },
    });
  });

  it('never writes over a line that is there', async () => {
    const { index } = switchOn(makeTablet());
    await index.append('settings', 0, linesUpTo(2));
    expect((await index.append('settings', 1, [lineAt(5)])).ok).toBe(false);
    expect(await index.read('settings')).toMatchObject({
      ok: true,
      value: { lines: linesUpTo(2), fault: null },
    });
  });

  it('exchanges a log for other lines and keeps the old ones aside', async () => {
    const { index } = switchOn(makeTablet());
    await index.append('settings', 0, [lineAt(3)]);
    expect(await index.replace('settings', 'badLine', linesUpTo(2))).toStrictEqual({
      ok: true,
      value: { name: 'settings', copy: 'index', reason: 'badLine', kept: 'aside:settings:badLine:0001' },
    });
    expect(await index.read('settings')).toMatchObject({
      ok: true,
      value: { lines: linesUpTo(2), fault: null },
    });
    expect(await index.setAside('open-a', 'gap'), 'nothing held, nothing noted').toStrictEqual({
      ok: true,
      value: null,
    });
    expect(await index.listAside()).toMatchObject({ ok: true, value: [{ name: 'settings' }] });
  });

  it('lets go of a connection that never answers, and the next call opens another', async () => {
    const living = makeStrictStore(makeTablet().factory, 'strandproof', 'lines');
    let isSilent = true;
    const index = makeIndexCopy(
      {
        use: (mode, work) => (isSilent ? new Promise(() => undefined) : living.use(mode, work)),
        close: () => {
          isSilent = false;
        },
      },
      50,
    );
    expect(await index.append('settings', 0, linesUpTo(1))).toMatchObject({ error: { kind: 'timedOut' } });
    expect(await index.append('settings', 0, linesUpTo(1))).toMatchObject({ ok: true });
    expect(await index.read('settings')).toMatchObject({ value: { lines: linesUpTo(1), fault: null } });
  });

  it('answers that it timed out when the browser never does', async () => {
    const silent = { use: () => new Promise<never>(() => undefined), close: () => undefined };
    expect(await makeIndexCopy(silent, 10).readAll(null)).toMatchObject({
      ok: false,
      error: { kind: 'timedOut' },
    });
  });
});

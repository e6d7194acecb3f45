import { describe, expect, it, vi } from 'vitest';
import { type Folder, type HandedFile, type HandOverParts, makeHandOver } from '../../../src/tablet/handOver';

const fault = (name: string): Error => Object.assign(new Error(name), { name });
const file = (name: string, text: HandedFile['text'] = () => ['one\n', 'two\n']): HandedFile => ({
  name,
  type: 'text/csv',
  text,
});
const table = file('day.csv');
const records = file('day.json', () => '{}');

/** A folder of these files, each there once its writing was closed. */
function makeFolder(fails: { readonly at?: 'open' | 'write' | 'close'; readonly name?: string } = {}) {
  const files = new Map<string, string>();
  const asked: string[] = [];
  const stop = (at: string) => {
    if (fails.at === at) throw fault(fails.name ?? 'QuotaExceededError');
  };
  const folder: Folder = {
    name: 'Records',
    requestPermission: async () => {
      asked.push('permission');
      return 'granted';
    },
    getFileHandle: async (name, how) => {
      stop('open');
      if (!files.has(name) && how?.create !== true) throw fault('NotFoundError');
      if (!files.has(name)) files.set(name, '');
      let written = '';
      return {
        createWritable: async () => ({
          write: async (piece) => {
            stop('write');
            written += piece;
          },
          close: async () => {
            stop('close');
            files.set(name, written);
          },
          abort: async () => {
            written = '';
          },
        }),
      };
    },
    removeEntry: async (name) => void files.delete(name),
  };
  return { folder, files, asked };
}

const choose = (folder: Folder) => {
  const pickFolder = vi.fn(async () => folder);
  return { pickFolder, ways: makeHandOver({ pickFolder }) };
};

describe('sharing', () => {
  const sharing = (parts: Partial<NonNullable<HandOverParts['sharing']>>) =>
    makeHandOver({ sharing: { canShare: () => true, share: async () => undefined, ...parts } });

  it('is not offered where the tablet has none, or takes none of the files', () => {
    expect(makeHandOver({}).listShared([table])).toEqual([]);
    expect(sharing({ canShare: () => false }).listShared([table])).toEqual([]);
  });

  it('hands on all files together, or the first alone that it takes', async () => {
    const handed: string[] = [];
    const share = async ({ files }: { files: File[] }) => {
      for (const each of files) handed.push(`${each.name}: ${await each.text()}`);
    };
    const all = await sharing({ share }).share([table, records]);
    expect(all).toEqual({ ok: true, value: { names: ['day.csv', 'day.json'], folder: null } });
    expect(handed).toEqual(['day.csv: one\ntwo\n', 'day.json: {}']);
    const canShare = ({ files }: { files: File[] }) => files.every(({ name }) => name.endsWith('.csv'));
    expect(sharing({ canShare }).listShared([records, table])).toEqual([table]);
  });

  it('says nothing of a window that was closed, and names what failed', async () => {
    const closed = sharing({ share: () => Promise.reject(fault('AbortError')) });
    expect(await closed.share([table])).toEqual({ ok: true, value: null });
    const refused = sharing({ share: () => Promise.reject(fault('NotAllowedError')) });
    expect(await refused.share([table])).toEqual({ ok: false, error: 'notShared' });
  });
});

describe('a chosen folder', () => {
  it('is asked for once, and may be another one', async () => {
    const { folder, files, asked } = makeFolder();
    const { pickFolder, ways } = choose(folder);
    expect(await ways.intoFolder([table, records])).toEqual({
      ok: true,
      value: { names: ['day.csv', 'day.json'], folder: 'Records' },
    });
    expect(Object.fromEntries(files)).toEqual({ 'day.csv': 'one\ntwo\n', 'day.json': '{}' });
    await ways.intoFolder([table]);
    expect(pickFolder).toHaveBeenCalledTimes(1);
    expect(asked).toEqual(['permission', 'permission']);
    await ways.intoFolder([table], true);
    expect(pickFolder).toHaveBeenCalledTimes(2);
  });

  it('that nobody chose says nothing', async () => {
    const ways = makeHandOver({ pickFolder: () => Promise.reject(fault('AbortError')) });
    expect(await ways.intoFolder([table])).toEqual({ ok: true, value: null });
    expect(makeHandOver({}).hasFolders).toBe(false);
  });

  it.each(['write', 'close'] as const)('keeps nothing half-written where it fails at %s', async (at) => {
    const { folder, files } = makeFolder({ at });
    expect(await choose(folder).ways.intoFolder([table])).toEqual({ ok: false, error: 'notWritten' });
    expect([...files.keys()]).toEqual([]);
  });

  it('leaves what stood there under that name as it was', async () => {
    const { folder, files } = makeFolder({ at: 'close' });
    files.set('day.csv', 'of this morning');
    await choose(folder).ways.intoFolder([table]);
    expect(files.get('day.csv')).toBe('of this morning');
  });

  it.each([
    ['NotFoundError', 'folderGone'],
    ['NotAllowedError', 'folderForbidden'],
  ])('that throws %s is named, and the next tap asks for one', async (name, error) => {
    const { folder } = makeFolder({ at: 'write', name });
    const { pickFolder, ways } = choose(folder);
    expect(await ways.intoFolder([table])).toEqual({ ok: false, error });
    await ways.intoFolder([table]);
    expect(pickFolder).toHaveBeenCalledTimes(2);
  });

  it.each(['open', 'write', 'close'] as const)(
    'that vanished is named where it is missed at %s',
    async (at) => {
      const { folder, files } = makeFolder({ at, name: 'NotFoundError' });
      expect(await choose(folder).ways.intoFolder([table, records])).toEqual({
        ok: false,
        error: 'folderGone',
      });
      expect(files.size).toBe(0);
    },
  );

  it('on a disk that is full is named as not written, and the files before it stay whole', async () => {
    const { folder, files } = makeFolder();
    const getFileHandle: Folder['getFileHandle'] = async (name, how) =>
      name === 'day.json'
        ? makeFolder({ at: 'write' }).folder.getFileHandle(name, how)
        : folder.getFileHandle(name, how);
    expect(await choose({ ...folder, getFileHandle }).ways.intoFolder([table, records])).toEqual({
      ok: false,
      error: 'notWritten',
    });
    expect(Object.fromEntries(files)).toEqual({ 'day.csv': 'one\ntwo\n' });
  });

  it('whose permission was taken back is not written into', async () => {
    const { folder, files } = makeFolder();
    const { ways } = choose({ ...folder, requestPermission: async () => 'denied' });
    expect(await ways.intoFolder([table])).toEqual({ ok: false, error: 'folderForbidden' });
    expect(files.size).toBe(0);
  });
});

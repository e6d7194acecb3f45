import { MessageChannel } from 'node:worker_threads';
import { afterEach, describe, expect, it } from 'vitest';
import { makeJournalClient } from '../../../src/storage/journalClient';
import { makeJournalCopy } from '../../../src/storage/journalCopy';
import type { JournalFiles } from '../../../src/storage/journalFiles';
import type { JournalReply, JournalRequest } from '../../../src/storage/journalMessages';
import { serveJournal } from '../../../src/storage/serveJournal';
import type { JournalWorker } from '../../../src/storage/workerLine';
import { makeMemoryDisk, makeMemoryFiles } from './memoryFiles';
import { linesUpTo } from './tablet';

const ends: (() => void)[] = [];
afterEach(() => {
  for (const end of ends.splice(0)) end();
});

/** A worker whose line is a real message channel: what crosses it is cloned, as in a browser. */
const startOver = (files: JournalFiles): JournalWorker & { isEnded: boolean } => {
  const { port1: page, port2: own } = new MessageChannel();
  const serve = serveJournal(makeJournalCopy(files), (reply: JournalReply) => own.postMessage(reply));
  own.on('message', (request: JournalRequest) => void serve(request));
  const worker: JournalWorker & { isEnded: boolean } = {
    isEnded: false,
    onmessage: null,
    onmessageerror: null,
    onerror: null,
    postMessage: (request) => page.postMessage(request),
    terminate: () => {
      worker.isEnded = true;
      page.close();
    },
  };
  page.on('message', (data: JournalReply) => worker.onmessage?.({ data } as MessageEvent<JournalReply>));
  ends.push(() => page.close());
  return worker;
};

describe('the line to the journal', () => {
  it('carries every call and its answer', async () => {
    const disk = makeMemoryDisk();
    const journal = makeJournalClient(() => startOver(makeMemoryFiles(disk)));
    const mark = { name: 'open-a', reason: 'gap' } as const;
    expect(await journal.append('settings', 0, linesUpTo(2))).toStrictEqual({ ok: true, value: undefined });
    expect(await journal.append('open-a', 0, linesUpTo(1))).toStrictEqual({ ok: true, value: undefined });
    expect(await journal.read('settings')).toMatchObject({ ok: true, value: { lines: linesUpTo(2) } });
    expect(await journal.read('open-b')).toStrictEqual({ ok: true, value: null });
    const all = await journal.readAll(null);
    expect(all.ok && [...all.value.readings.keys()]).toStrictEqual(['open-a', 'settings']);
    expect(await journal.cutTail('settings')).toStrictEqual({ ok: true, value: null });
    expect((await journal.mark(mark)).ok).toBe(true);
    expect(await journal.listMarks()).toStrictEqual({ ok: true, value: [mark] });
    expect((await journal.unmark(mark)).ok).toBe(true);
    expect(await journal.listMarks()).toStrictEqual({ ok: true, value: [] });
    expect(await journal.setAside('open-a', 'gap')).toMatchObject({ ok: true, value: { name: 'open-a' } });
    expect(await journal.listAside()).toMatchObject({ ok: true, value: [{ name: 'open-a', reason: 'gap' }] });
    expect((await journal.remove('settings')).ok).toBe(true);
    expect(disk.journals.size).toBe(0);
  });

  it('does one thing after the other, in the order asked', async () => {
    const order: string[] = [];
    const files = makeMemoryFiles(makeMemoryDisk());
    const journal = makeJournalClient(() =>
      startOver({
        ...files,
        append: async (folder, file, bytes) => {
          order.push(`begin ${file}`);
          await new Promise((resolve) => setTimeout(resolve, file === 'open-a' ? 20 : 0));
          await files.append(folder, file, bytes);
          order.push(`end ${file}`);
        },
      }),
    );
    await Promise.all([journal.append('open-a', 0, linesUpTo(1)), journal.append('open-b', 0, linesUpTo(1))]);
    expect(order).toStrictEqual(['begin open-a', 'end open-a', 'begin open-b', 'end open-b']);
  });

  it('names an error of the file system', async () => {
    const files = makeMemoryFiles(makeMemoryDisk());
    const append = async (): Promise<never> => {
      throw new DOMException('no room', 'QuotaExceededError');
    };
    const journal = makeJournalClient(() => startOver({ ...files, append }));
    expect(await journal.append('settings', 0, linesUpTo(1))).toStrictEqual({
      ok: false,
      error: { copy: 'journal', kind: 'quotaExceeded', detail: 'QuotaExceededError: no room' },
    });
  });

  it('gives up on a worker that is silent, ends it, answers all that waited, and starts another', async () => {
    const disk = makeMemoryDisk();
    const started: (JournalWorker & { isEnded: boolean })[] = [];
    const journal = makeJournalClient(() => {
      const worker = startOver(makeMemoryFiles(disk));
      if (started.length === 0) worker.postMessage = () => undefined;
      started.push(worker);
      return worker;
    }, 20);
    const failed = { ok: false, error: { copy: 'journal', kind: 'timedOut' } };
    const both = [journal.append('settings', 0, linesUpTo(1)), journal.read('settings')];
    expect(await Promise.all(both)).toMatchObject([failed, failed]);
    expect(started.map(({ isEnded }) => isEnded)).toStrictEqual([true]);
    expect(await journal.append('settings', 0, linesUpTo(1))).toStrictEqual({ ok: true, value: undefined });
    expect(started).toHaveLength(2);
  });

  it.each([
    ['breaks off', (worker: JournalWorker) => worker.onerror?.({ message: 'broken' } as ErrorEvent)],
    ['says what cannot be read', (worker: JournalWorker) => worker.onmessageerror?.({} as MessageEvent)],
  ])('reports at once a worker that %s, and starts another', async (_, harm) => {
    const files = makeMemoryFiles(makeMemoryDisk());
    let count = 0;
    const journal = makeJournalClient(() => {
      const worker = startOver(files);
      if (count++ === 0) worker.postMessage = () => queueMicrotask(() => harm(worker));
      return worker;
    });
    expect(await journal.listMarks()).toMatchObject({ ok: false, error: { kind: 'journalUnavailable' } });
    expect(await journal.listMarks()).toStrictEqual({ ok: true, value: [] });
    expect(count).toBe(2);
  });

  it('reports a worker that cannot be started', async () => {
    const journal = makeJournalClient(() => {
      throw new TypeError('no workers here');
    });
    expect(await journal.readAll(null)).toStrictEqual({
      ok: false,
      error: { copy: 'journal', kind: 'journalUnavailable', detail: 'TypeError: no workers here' },
    });
  });

  it('ends the worker on close, after what was asked before is answered', async () => {
    const worker = startOver(makeMemoryFiles(makeMemoryDisk()));
    const journal = makeJournalClient(() => worker);
    const written = journal.append('settings', 0, linesUpTo(1));
    expect((await journal.close()).ok).toBe(true);
    expect((await written).ok).toBe(true);
    expect(worker.isEnded).toBe(true);
  });
});

import { accept, type Result, refuse } from '../../shared/result';
import type { Copies } from './copies';
import type { CopyFailure } from './copyFailure';
import { writeJson } from './json';
import { encodeLine, readEntry } from './line';
import { isLogName } from './logName';
import { unpack } from './packed';
import { makeQueues } from './queue';
import { type PastReader, readPastFrom } from './readPast';
import { restoreAll } from './restoreAll';
import { finishRewrites, rewrite } from './rewrite';
import { settleLog, standRewritten } from './settleLog';
import type { Store, WriteFailure } from './store';
import { finishLeaving, takeOut } from './takeOut';

/** Where a log stands: how many entries it has, and the failure after which it must first be reloaded. */
interface Standing {
  readonly next: number;
  readonly trouble: CopyFailure | null;
}

const readHere = (copies: Copies): PastReader => ({ read: readPastFrom(copies), close: () => undefined });

/** Keeps logs in the two copies it is given. The questions it answers stand at `Store`; `past` reads what was let wait. */
export const makeStore = (copies: Copies, past: PastReader = readHere(copies)): Store => {
  const { journal, index } = copies;
  const turns = makeQueues();
  const queues = makeQueues();
  const standings = new Map<string, Standing>();
  /** Logs that are still to be read: where they stand is not known, so they take nothing. */
  let later = new Set<string>();
  let isOpen = false;
  let wholeTrouble: CopyFailure | null = null;

  const readStanding = (name: string): Standing => standings.get(name) ?? { next: 0, trouble: wholeTrouble };

  const enqueue = async <T>(
    name: string,
    work: () => Promise<Result<T, WriteFailure>>,
  ): Promise<Result<T, WriteFailure>> => {
    if (!isLogName(name)) return refuseBefore(name, 'badName');
    if (!isOpen) return refuseBefore(name, 'notRestored');
    return queues.run(name, work);
  };

  /** Work on a log in good standing: what fails in a copy stands against the log until it is reloaded. */
  const change = <T>(
    name: string,
    work: (
      next: number,
    ) => Promise<Result<{ readonly value: T; readonly next: number }, CopyFailure | WriteFailure>>,
  ): Promise<Result<T, WriteFailure>> =>
    enqueue(name, async () => {
      if (later.has(name)) return refuseBefore(name, 'notRestored', 'it is still to be read');
      const { next, trouble } = readStanding(name);
      if (trouble !== null) return refuse({ ...trouble, name, mayBeHeld: false });
      const done = await work(next);
      if (done.ok) {
        standings.set(name, { next: done.value.next, trouble: null });
        return accept(done.value.value);
      }
      if ('mayBeHeld' in done.error) return refuse(done.error);
      standings.set(name, { next, trouble: done.error });
      return refuse({ ...done.error, name, mayBeHeld: true });
    });

  return {
    restore: (begin = null) =>
      turns.run('store', async () => {
        isOpen = false;
        await queues.drain();
        const { restored, wholeTrouble: trouble, standings: found } = await restoreAll(copies, begin);
        wholeTrouble = trouble;
        later = new Set(restored.later);
        standings.clear();
        for (const [name, standing] of found) standings.set(name, standing);
        isOpen = true;
        return restored;
      }),

    append: (name, seq, ...entries) => {
      const jsons = entries.map(writeJson);
      return change(name, async (next) => {
        if (!jsons.every((json) => json !== null)) return refuseBefore(name, 'notJson');
        if (seq !== next) return refuseBefore(name, 'wrongSeq', `${seq} was given, ${next} is next`);
        const lines = jsons.map((json, at) => encodeLine(seq + at, json));
        const inJournal = await journal.append(name, seq, lines);
        if (!inJournal.ok) return inJournal;
        const inIndex = await index.append(name, seq, lines);
        return inIndex.ok ? accept({ value: undefined, next: next + lines.length }) : inIndex;
      });
    },

    remove: (name) =>
      change(name, async () => {
        const removed = await takeOut(copies, { name, reason: 'removed' });
        return removed.ok ? accept({ value: undefined, next: 0 }) : removed;
      }),

    rewrite: (name, entries) => {
      const jsons = entries.map(writeJson);
      return change(name, async () => {
        if (!jsons.every((json) => json !== null)) return refuseBefore(name, 'notJson');
        const lines = jsons.map((json, seq) => encodeLine(seq, json));
        const written = await rewrite(copies, name, lines);
        return written.ok ? accept({ value: undefined, next: lines.length }) : written;
      });
    },

    setAside: (name, why) =>
      change(name, async () => {
        const moved = await takeOut(copies, { name, reason: why });
        return moved.ok ? accept({ value: moved.value, next: 0 }) : moved;
      }),

    reload: (name) =>
      enqueue(name, async () => {
        const marks = await finishLeaving(copies, name);
        const moved = marks.ok ? (marks.value.get(name) ?? accept([])) : accept([]);
        if (!moved.ok) return refuse({ ...moved.error, name, mayBeHeld: false });
        const rewrites = marks.ok ? await finishRewrites(copies, name) : marks;
        const fromJournal = rewrites.ok ? await journal.read(name) : rewrites;
        const fromIndex = await index.read(name);
        if (!fromJournal.ok && !fromIndex.ok) return refuse({ ...fromJournal.error, name, mayBeHeld: true });
        const rewritten = rewrites.ok ? standRewritten(name, rewrites.value.get(name)) : null;
        const { lines, ...said } = rewritten ?? (await settleLog(copies, name, fromJournal, fromIndex));
        standings.set(name, { next: lines.length, trouble: said.troubles[0] ?? null });
        later.delete(name);
        const aside = [...moved.value, ...said.aside];
        return accept({ ...said, aside, entries: lines.map(readEntry) });
      }),

    readPast: (name) =>
      enqueue(name, async () => {
        const read = await past.read(name);
        if (!read.ok) return refuse({ ...read.error, name, mayBeHeld: true });
        const { packed, ...said } = read.value;
        standings.set(name, { next: packed.ends.length, trouble: said.troubles[0] ?? null });
        later.delete(name);
        if (later.size === 0) past.close();
        return accept({ ...said, entries: unpack(packed) });
      }),

    listAside: async () => {
      const kept = await Promise.all([journal.listAside(), index.listAside()]);
      return kept.flatMap((answer) => (answer.ok ? answer.value : []));
    },

    release: () =>
      turns.run('store', async () => {
        isOpen = false;
        await queues.drain();
        past.close();
        await Promise.all([journal.close(), index.close()]);
      }),
  };
};

const refuseBefore = (name: string, kind: WriteFailure['kind'], detail = '') =>
  refuse<WriteFailure>({ name, kind, copy: null, mayBeHeld: false, detail });

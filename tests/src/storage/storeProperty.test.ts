import { IDBFactory } from 'fake-indexeddb';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Json } from '../../../src/storage/json';
import { writeKey } from '../../../src/storage/readIndex';
import { chooseSize, tellShare } from '../../long';
import { makeMemoryDisk } from './memoryFiles';
import { makePower } from './power';
import { editIndex, makeTablet, switchOn, type Tablet } from './tablet';

const names = ['open-a', 'open-ab', 'settings'] as const;
const LONG_RUNS = 1000;
const numRuns = chooseSize(250, LONG_RUNS);
const quiet = { later: [], aside: [], mended: [], troubles: [], unread: [] };

/** What happens between two starts: some answers, an end, and harm to at most one of the copies. */
interface Day {
  readonly tasks: readonly { readonly name: string; readonly kind: 'append' | 'remove' | 'rewrite' }[];
  readonly end: {
    readonly kind: 'released' | 'killed' | 'powerCut';
    readonly step: number;
    readonly tornBytes: number;
  };
  readonly harm: { readonly kind: Harm; readonly name: string; readonly at: number };
  /** The power also fails at this step of the next restore; null: it holds. */
  readonly restoreFailsAt: number | null;
}

type Harm =
  | 'none'
  | 'indexDeleted'
  | 'journalsDeleted'
  | 'journalCut'
  | 'journalFlipped'
  | 'indexFlipped'
  | 'indexBehind';

const name = fc.constantFrom(...names);
const day: fc.Arbitrary<Day> = fc.record({
  tasks: fc.array(
    fc.record({
      name,
      kind: fc.oneof(
        { weight: 8, arbitrary: fc.constant('append' as const) },
        { weight: 1, arbitrary: fc.constant('remove' as const) },
        { weight: 1, arbitrary: fc.constant('rewrite' as const) },
      ),
    }),
    { maxLength: 8 },
  ),
  end: fc.record({
    kind: fc.constantFrom('released', 'killed', 'powerCut'),
    step: fc.nat({ max: 12 }),
    tornBytes: fc.nat({ max: 60 }),
  }),
  harm: fc.record({
    kind: fc.constantFrom<Harm>(
      'none',
      'indexDeleted',
      'journalsDeleted',
      'journalCut',
      'journalFlipped',
      'indexFlipped',
      'indexBehind',
    ),
    name,
    at: fc.nat({ max: 4000 }),
  }),
  restoreFailsAt: fc.option(fc.nat({ max: 6 }), { nil: null }),
});

/** What a log may be: what was acknowledged, or that and the one thing that was under way. */
type Model = Map<string, readonly (readonly Json[])[]>;

/** What each task makes of a log; rewritten, it loses every second entry. */
const changes = {
  append: (held: readonly Json[], entry: Json) => [...held, entry],
  remove: () => [],
  rewrite: (held: readonly Json[]) => held.filter((_, seq) => seq % 2 === 0),
};

const readModel = (model: Model, log: string): readonly (readonly Json[])[] => model.get(log) ?? [[]];

it('gives every acknowledged entry while one valid copy is, whatever happens to the other', async () => {
  const seen = new Map<string, number>();
  const count = (what: string): void => void seen.set(what, (seen.get(what) ?? 0) + 1);

  await fc.assert(
    fc.asyncProperty(fc.array(day, { minLength: 1, maxLength: 5 }), async (days) => {
      const tablet = makeTablet();
      const model: Model = new Map();
      let serial = 0;
      for (const { tasks, end, harm, restoreFailsAt } of days) {
        const power = end.kind === 'powerCut' ? makePower(end.step, end.tornBytes) : makePower();
        const { store } = switchOn(tablet, power);
        await store.restore();
        for (const task of tasks) {
          const [held = []] = readModel(model, task.name);
          const entry: Json = { serial: serial++, says: 'ä🟡' };
          const after = changes[task.kind](held, entry);
          const done = await {
            append: () => store.append(task.name, held.length, entry),
            remove: () => store.remove(task.name),
            rewrite: () => store.rewrite(task.name, after),
          }[task.kind]();
          model.set(task.name, done.ok ? [after] : [held, after]);
          count(done.ok ? `${task.kind} acknowledged` : `${task.kind} broken off`);
          if (!done.ok) break;
        }
        if (end.kind === 'released') await store.release();
        if (await doHarm(tablet, harm)) count(harm.kind);
        if (restoreFailsAt !== null) {
          const { troubles } = await switchOn(
            tablet,
            makePower(restoreFailsAt, end.tornBytes),
          ).store.restore();
          if (troubles.length > 0) count('restore broken off');
        }
        const restored = await switchOn(tablet).store.restore();
        expect([...restored.logs.keys()].every((log) => names.some((known) => known === log))).toBe(true);
        for (const log of names) {
          const held = restored.logs.get(log) ?? [];
          expect(readModel(model, log)).toContainEqual(held);
          model.set(log, [held]);
        }
        expect(await switchOn(tablet).store.restore()).toStrictEqual({ ...quiet, logs: restored.logs });
      }
    }),
    { numRuns },
  );

  const did = [...seen]
    .sort()
    .map(([what, times]) => `${what}: ${times}`)
    .join(', ');
  process.stdout.write(`${tellShare('store', `${numRuns} tablets, ${did}`, `${LONG_RUNS} tablets`)}\n`);
  for (const what of [
    'append acknowledged',
    'append broken off',
    'remove acknowledged',
    'remove broken off',
    'rewrite acknowledged',
    'rewrite broken off',
    'restore broken off',
    'indexDeleted',
    'journalsDeleted',
    'journalCut',
    'journalFlipped',
    'indexFlipped',
    'indexBehind',
  ]) {
    expect(seen.get(what) ?? 0, `${what} must have happened, or nothing was tested`).toBeGreaterThan(5);
  }
});

/** Harms one copy; false when there was nothing to harm. */
const doHarm = async (tablet: Tablet, { kind, name: log, at }: Day['harm']): Promise<boolean> => {
  const bytes = tablet.disk.journals.get(log) ?? new Uint8Array();
  const { index, strict } = switchOn(tablet);
  const reading = await index.read(log);
  strict.close();
  const lines = reading.ok ? (reading.value?.lines ?? []) : [];
  const line = at % Math.max(lines.length, 1);
  switch (kind) {
    case 'none':
      return false;
    case 'indexDeleted':
      tablet.factory = new IDBFactory();
      return lines.length > 0;
    case 'journalsDeleted':
      tablet.disk = makeMemoryDisk();
      return bytes.length > 0;
    case 'journalCut':
      if (bytes.length > 0) tablet.disk.journals.set(log, bytes.slice(0, at % bytes.length));
      return bytes.length > 0;
    case 'journalFlipped':
      if (bytes.length > 0) bytes[at % bytes.length] = (bytes[at % bytes.length] ?? 0) ^ (1 << (at & 7));
      return bytes.length > 0;
    case 'indexFlipped':
      if (lines.length > 0)
        await editIndex(tablet, (place) => place.put(`${lines[line]}!`, writeKey(log, line)));
      return lines.length > 0;
    case 'indexBehind': {
      const last = lines.length - 1;
      if (lines.length > 0) await editIndex(tablet, (place) => place.delete(writeKey(log, last)));
      return lines.length > 0;
    }
  }
};

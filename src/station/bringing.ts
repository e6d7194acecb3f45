import type { ClosedRecord } from '../../shared/records/closedRecord';
import type { NewerDocument, RecordDocument } from '../../shared/records/documents/document';
import { accept, type Result, refuse } from '../../shared/result';
import type { Queues } from '../storage/queue';
import type { Taken } from '../storage/replica/replica';
import { inTurns } from '../tablet/inTurns';
import type { Board } from './board';
import { type BroughtIn, planBringIn } from './bringIn';
import { planRecords, type RecordsBrought } from './bringInRecords';
import { makeBurying } from './burying';
import { leaveOutErased, listErased } from './erased';
import type { NotTakenUp } from './judgeDocument';
import { type LeftOut, makeUnjudgedKeeping } from './keepUnjudged';
import { nameClosedLog } from './logNames';
import type { Memory } from './memory';
import { type Judged, judgeDocuments, placeTelling } from './merging';
import { findSettingsIn, type ReadLogs } from './readLogs';
import { readSkinTests } from './skinTestLogs';
import { SKIN_TESTS } from './skinTests';
import { findNewestAtMs } from './stationState';
import type { SubmitRefusal } from './submitRefusal';
import type { Taking } from './taking';
import type { UnjudgedWhy } from './unjudged';

type Done<T = void> = Promise<Result<T, SubmitRefusal>>;

/** What is taken up from files. Each works within the line in which consultations are opened. */
export interface Bringing {
  bringIn(file: string): Done<BroughtIn>;
  bringInRecords(file: string): Done<RecordsBrought>;
  /** Takes up what another station shares, each document by itself: what is refused or has to wait is named, the rest comes. */
  takeUp(documents: readonly RecordDocument[]): Done<Taken>;
  /** Notes what is of a newer edition and cannot even be read here. */
  noteNewer(documents: readonly NewerDocument[]): Done;
  /** Judges anew what could not be judged when it came: what this edition can judge is taken up, and stands apart no longer. */
  judgeAnew(): Promise<void>;
  /** Shows what was taken up. */
  showAll(): Promise<void>;
}

/** Those of one month that follow each other, as they stand, at most so many together. */
function splitByMonth(
  records: Judged['comes'],
  atOnce: number,
): readonly [ClosedRecord, ...ClosedRecord[]][] {
  const pieces: [ClosedRecord, ...ClosedRecord[]][] = [];
  let month = '';
  for (const each of records) {
    const own = nameClosedLog(each.endedAtMs);
    const last = pieces.at(-1);
    if (last !== undefined && own === month && last.length < atOnce) last.push(each);
    else pieces.push([each]);
    month = own;
  }
  return pieces;
}

/**
 * Brings files in: judged whole first, then written thing by thing, each of them whole, so that whatever stops it, the same
 * file goes on from there. Checked in tests/src/station/bringIn.test.ts, merging.test.ts and takingTurns.test.ts.
 */
export function makeBringing(
  board: Board,
  { append, keep }: Pick<Taking, 'append' | 'keep'>,
  memory: Memory,
  queues: Queues,
  {
    now,
    isDemo,
    showLogs,
  }: { readonly now: () => number; readonly isDemo: boolean; readonly showLogs: () => ReadLogs },
  {
    sweep,
    ripen,
    finishOpen,
  }: {
    readonly sweep: () => Done;
    readonly ripen: () => Promise<number>;
    readonly finishOpen: () => Promise<void>;
  },
): Bringing {
  const { bury, buryShared } = makeBurying(board, { append }, memory, { now, sweep });
  const unjudged = makeUnjudgedKeeping(board, { append }, memory, queues);

  /** When it came in, by this station's clock, and never before what is known here already. */
  const findBroughtAtMs = (): number => Math.max(now(), findNewestAtMs(board.read()) + 1);

  /** So many of a month at one go, and shown after each: a stop that is written holds the next bowl, however much still comes. */
  const keepAll = async (records: Judged['comes'], atOnce = 1): Done => {
    let came = 0;
    for (const piece of splitByMonth(records, atOnce)) {
      const written = await keep(...piece);
      if (!written.ok) {
        showLogs();
        return refuse({ kind: 'recordsNotSaved', came });
      }
      const stops = piece.filter(({ hasStandingStop }) => hasStandingStop);
      if (stops.length > 0) board.show({ closed: [...board.read().closed, ...stops] });
      came += piece.length;
    }
    return accept(undefined);
  };

  /** In the line of the skin tests, so that nobody reads one in between; answers how many came, or went on. */
  const keepTests = ({ tests, comes }: Judged): Done<number> =>
    queues.run(SKIN_TESTS, async () => {
      let came = 0;
      for (const test of tests) {
        const placed = placeTelling(memory.logs(), test, now());
        if (placed === null) continue;
        const written = await append(placed.name, placed.entry);
        if (!written.ok) {
          showLogs();
          return refuse({ kind: 'recordsNotSaved', came: comes.length + came } as const);
        }
        came += 1;
      }
      const logs = leaveOutErased(memory.logs());
      // Shown before the line goes on: whoever reads a test next reads it as it is written.
      if (came > 0) board.show({ skinTests: readSkinTests(logs, findSettingsIn(logs)).tests });
      return accept(came);
    });

  /** Answers how much went that another house had erased for its age, and that is past this one's own time. */
  const showAll = async (): Promise<number> => {
    const came = showLogs();
    board.note(...came.notices.filter(({ kind }) => kind === 'refusedLog'));
    for (const { name, isNewer } of came.refused) await memory.setAside(name, isNewer);
    await finishOpen();
    return ripen();
  };

  const takeUp: Bringing['takeUp'] = async (documents) => {
    const buried = await buryShared(documents);
    if (!buried.ok) return buried;
    const { waiting, waitingIds } = buried.value;
    const erased = new Set([...listErased(memory.logs()), ...waitingIds]);
    const clock = { nowMs: now(), broughtAtMs: findBroughtAtMs() };
    const refused: Taken['refused'][number][] = [];
    const later = waiting.map(({ id }) => id);
    const leftOut: LeftOut[] = [];
    const leaveOut = (document: RecordDocument, why: NotTakenUp['why']): void => {
      if (why === 'fromLater' || document.kind === 'erased') later.push(document.id);
      else {
        refused.push({ id: document.id, why });
        leftOut.push({ document, why });
      }
    };
    const judged = await inTurns(judgeDocuments(board.read(), documents, erased, clock, leaveOut));
    if (!judged.ok) return judged;
    const kept = await keepAll(judged.value.comes, documents.length);
    if (!kept.ok) return kept;
    const tests = await keepTests(judged.value);
    if (!tests.ok) return tests;
    const noted = await unjudged.note(clock.nowMs, leftOut);
    return noted.ok ? accept({ refused, later }) : noted;
  };

  const judgeAnew = async (): Promise<void> => {
    const documents = unjudged.listReadable();
    if (documents.length === 0) return;
    const taken = await takeUp(documents);
    if (!taken.ok) return;
    const judged = new Map<string, UnjudgedWhy | null>(documents.map(({ id }) => [id, null]));
    for (const { id, why } of taken.value.refused) judged.set(id, why === 'newer' ? why : 'notJudged');
    for (const id of taken.value.later) judged.delete(id);
    if ([...judged.values()].includes(null)) await showAll();
    await unjudged.settle(judged);
  };

  return {
    async showAll() {
      await showAll();
    },

    takeUp,
    noteNewer: (documents) =>
      unjudged.note(
        now(),
        documents.map((document) => ({ document, why: 'newer' })),
      ),
    judgeAnew,

    async bringIn(file) {
      const plan = planBringIn(memory.logs(), file, { isDemo, nowMs: now(), state: board.read() });
      if (!plan.ok) return plan;
      const { tombstones, gone, comes } = plan.value;
      if ('writings' in comes) {
        const buried = await bury(tombstones);
        if (!buried.ok) return buried;
        for (const writing of comes.writings) {
          if (writing.do === 'clear') await memory.remove(writing.log);
          else {
            const { log, entry } = writing;
            const written = await queues.run(log, () => append(log, entry));
            if (!written.ok) return written;
          }
        }
        const ripe = await showAll();
        await judgeAnew();
        return accept({ closed: comes.closed, gone: gone + ripe, beside: null });
      }
      const clock = { nowMs: now(), broughtAtMs: findBroughtAtMs() };
      const judged = await inTurns(judgeDocuments(board.read(), comes.documents, comes.erased, clock));
      if (!judged.ok) return judged;
      const buried = await bury(tombstones);
      if (!buried.ok) return buried;
      const kept = await keepAll(judged.value.comes);
      if (!kept.ok) return kept;
      const tests = await keepTests(judged.value);
      if (!tests.ok) return tests;
      const brought = await unjudged.bring(comes.unjudged);
      if (!brought.ok) return brought;
      const ripe = await showAll();
      await judgeAnew();
      const { here, toldTwice } = judged.value;
      const beside = { here, toldTwice, tests: tests.value, open: comes.open };
      return accept({ closed: judged.value.comes.length, gone: gone + ripe, beside });
    },

    async bringInRecords(file) {
      const plan = await inTurns(
        planRecords(board.read(), file, {
          isDemo,
          nowMs: now(),
          broughtAtMs: findBroughtAtMs(),
          erased: listErased(memory.logs()),
        }),
      );
      if (!plan.ok) return plan;
      const { comes, ...rest } = plan.value;
      const kept = await keepAll(comes);
      if (!kept.ok) return kept;
      showLogs();
      return accept({ came: comes.length, ...rest });
    },
  };
}

import * as v from 'valibot';
import { beginConsultation } from '../../machines/consultation/consultation';
import { findWaitsSinceMs } from '../../shared/judgement/skinTest';
import { writeBackup } from '../../shared/records/backupFile';
import { countJumpSince, isInDoubt } from '../../shared/records/clockJump';
import { findLastTime } from '../../shared/records/findLastTime';
import { makePracticeId } from '../../shared/records/practiceId';
import type { RawForm } from '../../shared/records/readForm';
import { defaultSettings, type Settings, settingsSchema } from '../../shared/records/settings';
import { accept, type Result, refuse } from '../../shared/result';
import type { CopyName } from '../storage/asideNote';
import { makeQueues } from '../storage/queue';
import type { Reloaded } from '../storage/store';
import { BENCH_TRIALS, makeBenchTrials } from './benchTrials';
import { makeBoard } from './board';
import { makeBringing } from './bringing';
import { leaveOutErased } from './erased';
import { makeErasing } from './erasing';
import { examine } from './examining';
import { inheritsStop } from './inheritsStop';
import { CLOSED, SETTINGS_LOG } from './logNames';
import { makeMemory } from './memory';
import { listNotices } from './notice';
import { makePast } from './past';
import { makePractising } from './practice/practising';
import { findSettingsIn, type ReadLogs, readLogs } from './readLogs';
import { makeSharing } from './sharing';
import { makeSkinTests, SKIN_TESTS } from './skinTests';
import type { Station, StationParts } from './station';
import { findNewestAtMs, type StationState } from './stationState';
import type { SubmitRefusal } from './submitRefusal';
import { makeTaking } from './taking';
import { type Enqueue, makeTapping } from './tapping';

/** The line in which consultations are opened: no log has this name. */
const OPENING = 'opening';

/** Last time, where the start names it: found here, whatever a screen says of it. */
const findNamed = (closed: StationState['closed'], { ticket, lastTimeId }: RawForm) =>
  typeof lastTimeId === 'string' && lastTimeId !== '' && typeof ticket === 'string'
    ? findLastTime(closed, ticket)
    : null;

/** The station without its screens. Nothing is shown that is not written to both copies. */
export function makeStation(parts: StationParts): Station {
  const { store, now, isDemo = false } = parts;
  const queues = makeQueues();
  const makeId = parts.practice === undefined ? parts.makeId : () => makePracticeId(parts.makeId());
  const board = makeBoard(parts.publish);
  const { note, show, read: readState } = board;

  const memory = makeMemory(store, {
    onAcknowledged: parts.onAcknowledged,
    onDropped: parts.onDropped,
    onRewritten: () => parts.onRewritten?.(),
    onFailed: (failure) => {
      showLogs();
      note({ kind: 'notSaved', failure });
    },
    onMonth: noteMonth,
  });
  const past = makePast(board, memory);
  // In the line of the skin tests, which waits for consultations: nobody in their lines waits for it.
  const forget = () => (past.isRead() ? queues.run(SKIN_TESTS, () => skinTests.forget()) : Promise.resolve());
  const taking = makeTaking(board, memory, queues, now, () => void forget());
  const { append, take, close } = taking;
  const skinTests = makeSkinTests(board, { ...taking, remove: memory.remove, logs: memory.logs }, queues, {
    ...parts,
    makeId,
  });
  const bench = makeBenchTrials(board, taking, parts);
  const erasing = makeErasing(board, taking, memory, queues, { now, showLogs });

  const bringing = makeBringing(
    board,
    taking,
    memory,
    queues,
    { now, isDemo, showLogs },
    {
      sweep: erasing.sweep,
      ripen: erasing.ripen,
      finishOpen: async () => {
        await settleOpen();
        await finishOpen();
      },
    },
  );

  function showLogs(): ReadLogs {
    const read = readLogs(memory.logs());
    const { settings, open, skinTests: tests, bench: trials, erasings, unjudged, practice } = read;
    const { closed, months } = past.isRead() ? { closed: read.closed, months: countMonths() } : readState();
    const practised = practice === null ? {} : { practice };
    show({
      settings,
      open,
      closed,
      months,
      skinTests: tests,
      bench: trials,
      erasings,
      unjudged,
      ...practised,
    });
    return read;
  }

  /** A new edition; those before stay as they are. */
  async function keepSettings(by: string, settings: Settings): Promise<Result<void, SubmitRefusal>> {
    const written = await append(SETTINGS_LOG, { settings, by, atMs: now() });
    if (written.ok) showLogs();
    return written;
  }

  const listMonths = () =>
    [...memory.later(), ...[...memory.logs().keys()].filter((name) => name.startsWith(CLOSED))]
      .sort()
      .reverse();
  const countMonths = (): StationState['months'] => {
    const all = listMonths().length;
    return { read: all - memory.later().length, all };
  };

  /** What a month has to tell; of a copy that is out of reach as a whole it was told already. */
  function noteMonth(read: Omit<Reloaded, 'entries'>): void {
    note(
      ...listNotices(read).filter((each) => !(each.kind === 'trouble' && isWholeTrouble(each.trouble.copy))),
    );
  }
  const isWholeTrouble = (copy: CopyName): boolean =>
    readState().notices.some(
      (each) => each.kind === 'trouble' && each.trouble.name === null && each.trouble.copy === copy,
    );

  /** What stopped half way is finished: what ended is closed, and what was not to be kept is forgotten. */
  async function finishOpen(): Promise<void> {
    for (const { id } of readState().open.values()) await queues.run(id, () => finishOne(id));
    await forget();
  }
  const finishOne = async (id: string): Promise<void> => {
    const consultation = readState().open.get(id);
    if (consultation !== undefined) await close(consultation);
  };
  /** Skin tests that were read are cited. */
  async function settleOpen(): Promise<void> {
    for (const { id } of readState().open.values()) {
      await queues.run(id, () => skinTests.settle(id));
    }
  }

  /** What closed earlier is there: it is shown, and what hung on it is finished. */
  async function finishStart(): Promise<void> {
    const { notices } = showLogs();
    note(...notices.filter((each) => each.kind === 'refusedEntry' && each.name.startsWith(CLOSED)));
    if (readState().mode !== 'writing') return;
    await erasing.sweep();
    await bringing.judgeAnew();
    await finishOpen();
    await erasing.eraseOverdue();
  }

  /** Refused at the door or taken to the end: what stands in line is written even when the place is given up. */
  const enqueue: Enqueue = async (line, work) =>
    readState().mode === 'writing' ? queues.run(line, work) : refuse({ kind: 'notWriting' });

  /** In the line of those that need the past: each waits until all of it was read. */
  const enqueuePast = <T>(work: () => Promise<Result<T, SubmitRefusal>>) =>
    enqueue(OPENING, async () => ((await past.wait()) ? work() : refuse({ kind: 'notWriting' })));

  const tapping = makeTapping(board, taking, skinTests, enqueue);
  /** Nothing comes into practice, and nothing leaves it. */
  const outsidePractice = <T>(work: () => Promise<Result<T, SubmitRefusal>>) =>
    parts.practice === undefined ? work() : Promise.resolve(refuse<SubmitRefusal>({ kind: 'notNow' }));

  return {
    ...tapping,
    ...makePractising(
      board,
      taking,
      enqueue,
      { now, makeId, show: showLogs },
      parts.practice?.readWallMs ?? null,
    ),

    finishClosing: (id) =>
      enqueue(id, async () => {
        const consultation = readState().open.get(id);
        return consultation === undefined ? accept(undefined) : close(consultation);
      }),

    open(by, answers) {
      const id = makeId();
      const { ticket } = answers;
      // One after another, so that two of them never take the same chair.
      return enqueuePast(async () => {
        const inherits = inheritsStop(readState(), typeof ticket === 'string' ? ticket : '');
        const from = { inheritsStop: inherits, lastTime: findNamed(readState().closed, answers) };
        const taken = await take(beginConsultation(id), by, { type: 'OPENED', answers }, from);
        if (!taken.ok) return taken;
        await queues.run(id, () => skinTests.settle(id));
        return accept(id);
      });
    },

    async startWriting(onUsable = () => undefined) {
      show({ mode: 'starting', closed: [] });
      const restored = await memory.restore();
      const read = showLogs();
      note(...listNotices(restored), ...read.notices);
      for (const { name, isNewer } of read.refused) await memory.setAside(name, isNewer);
      const isStoreThere = restored.troubles.every(({ name }) => name !== null);
      if (isStoreThere && !memory.logs().has(SETTINGS_LOG)) {
        await append(SETTINGS_LOG, { settings: defaultSettings });
      }
      if (isStoreThere) await settleOpen();
      show({
        mode: isStoreThere ? 'writing' : 'noStore',
        months: countMonths(),
      });
      const looked = past.read(finishStart, isStoreThere);
      onUsable();
      await looked;
    },

    watch(logs, later = []) {
      memory.replace(logs);
      past.follow(later.length === 0);
      showLogs();
      const all = listMonths().length + later.length;
      show({ mode: 'watching', months: { read: all - later.length, all } });
    },

    async stopWriting(then = 'watching') {
      show({ mode: then });
      past.giveUp();
      await queues.drain();
      await store.release();
    },

    startBenchTrial: (by, answers) => enqueue(BENCH_TRIALS, () => bench.start(by, answers)),

    changeBenchTrial: (id, by, raw) => enqueue(BENCH_TRIALS, () => bench.change(id, by, raw)),

    saveSettings: (by, settings) =>
      enqueue(SETTINGS_LOG, async () => {
        const read = v.safeParse(settingsSchema, settings);
        if (!read.success) return refuse({ kind: 'badSettings', path: v.getDotPath(read.issues[0]) ?? '' });
        return keepSettings(by, read.output);
      }),

    undoSettings: (by) =>
      enqueue(SETTINGS_LOG, async () => {
        const { id } = readState().settings;
        // A station that nobody has set up has nothing before.
        return id === 0 ? accept(undefined) : keepSettings(by, findSettingsIn(memory.logs())(id - 1));
      }),

    async correctClocks(by, seenMs) {
      const shiftMs = now() - Math.max(seenMs, findNewestAtMs(readState()));
      if (shiftMs >= 0) return accept(undefined);
      const raw = { type: 'CLOCK_CORRECTED', answers: { shiftMs: String(shiftMs) } } as const;
      // The tests first: a consultation then says of them what they say.
      const tests = readState().skinTests.filter(({ takenBack }) => takenBack === null);
      const told = await Promise.all(
        tests.map(({ id }) => enqueue(SKIN_TESTS, () => skinTests.change(id, by, raw))),
      );
      const failed = told.find(({ ok }) => !ok);
      if (failed !== undefined) return failed;
      const said = await Promise.all([...readState().open.keys()].map((id) => tapping.submit(id, by, raw)));
      return said.find(({ ok }) => !ok) ?? accept(undefined);
    },

    async sayPutAhead(by, jump) {
      for (const test of readState().skinTests.filter((each) => isInDoubt(each, jump))) {
        const aheadMs = countJumpSince(jump, findWaitsSinceMs(test));
        const raw = { type: 'CLOCK_PUT_AHEAD', answers: { aheadMs: String(aheadMs) } } as const;
        const told = await enqueue(SKIN_TESTS, () => skinTests.change(test.id, by, raw));
        if (!told.ok) return told;
      }
      return accept(undefined);
    },

    erase: (by, what) => enqueuePast(() => erasing.erase(by, what)),

    finishErasing: () => enqueuePast(erasing.sweep),

    eraseOverdue: () => enqueuePast(erasing.eraseOverdue),

    backUp: () =>
      writeBackup(parts.practice === undefined ? leaveOutErased(memory.logs()) : new Map(), {
        madeAtMs: now(),
        isDemo,
      }),

    bringIn: (file) => outsidePractice(() => enqueuePast(() => bringing.bringIn(file))),

    bringInRecords: (file) => outsidePractice(() => enqueuePast(() => bringing.bringInRecords(file))),

    ...makeSharing(board, memory, bringing, (work) => enqueue(OPENING, work)),

    examine: async () =>
      readState().mode === 'writing' ? queues.run(SETTINGS_LOG, () => examine(store)) : null,

    readSettings: () => findSettingsIn(memory.logs()),

    readLogs: memory.logs,
    listMonths,
    readMonth: async (name) => {
      await memory.readLater(name);
      return memory.logs().get(name) ?? [];
    },
    readState,
    note,
    dismiss: (notice) => show({ notices: readState().notices.filter((each) => each !== notice) }),
  };
}

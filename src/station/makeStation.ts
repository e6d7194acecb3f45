import * as v from 'valibot';
import { beginConsultation } from '../../machines/consultation/consultation';
import { writeBackup } from '../../shared/records/backupFile';
import { countJumpSince, isInDoubt } from '../../shared/records/clockJump';
import { findLastTime } from '../../shared/records/findLastTime';
import type { RawForm } from '../../shared/records/readForm';
import { defaultSettings, settingsSchema } from '../../shared/records/settings';
import { accept, refuse } from '../../shared/result';
import { makeQueues } from '../storage/queue';
import { inTurns } from '../tablet/inTurns';
import { makeBoard } from './board';
import { planBringIn } from './bringIn';
import { planRecords } from './bringInRecords';
import { leaveOutErased, listErased } from './erased';
import { makeErasing } from './erasing';
import { inheritsStop } from './inheritsStop';
import { ERASED_LOG, SETTINGS_LOG } from './logNames';
import { makeMemory } from './memory';
import { listNotices } from './notice';
import { findSettingsIn, type ReadLogs, readLogs } from './readLogs';
import { makeSkinTests, SKIN_TESTS } from './skinTests';
import type { Station, StationParts } from './station';
import { findNewestAtMs, type StationState } from './stationState';
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
  });
  // In the line of the skin tests, which waits for consultations: nobody in their lines waits for it.
  const forget = () => queues.run(SKIN_TESTS, () => skinTests.forget());
  const taking = makeTaking(board, memory, queues, now, () => void forget());
  const { append, take, close } = taking;
  const skinTests = makeSkinTests(board, { ...taking, remove: memory.remove }, queues, parts);
  const erasing = makeErasing(board, taking, memory, queues, { now, showLogs });

  function showLogs(): ReadLogs {
    const read = readLogs(memory.logs());
    const { settings, open, closed, skinTests: tests, erasings } = read;
    show({ settings, open, closed, skinTests: tests, erasings });
    return read;
  }

  /** What stopped half way is finished: skin tests that were read are cited, what ended is closed, and what was not to be kept is forgotten. */
  async function finishOpen(): Promise<void> {
    for (const { id } of readState().open.values()) await skinTests.settle(id);
    for (const consultation of readState().open.values()) await close(consultation);
    await forget();
  }

  /** Refused at the door or taken to the end: what stands in line is written even when the place is given up. */
  const enqueue: Enqueue = async (line, work) =>
    readState().mode === 'writing' ? queues.run(line, work) : refuse({ kind: 'notWriting' });

  const tapping = makeTapping(board, taking, skinTests, enqueue);

  return {
    ...tapping,

    finishClosing: (id) =>
      enqueue(id, async () => {
        const consultation = readState().open.get(id);
        return consultation === undefined ? accept(undefined) : close(consultation);
      }),

    open(by, answers) {
      const id = parts.makeId();
      const { ticket } = answers;
      // One after another, so that two of them never take the same chair.
      return enqueue(OPENING, async () => {
        const inherits = inheritsStop(readState(), typeof ticket === 'string' ? ticket : '');
        const from = { inheritsStop: inherits, lastTime: findNamed(readState().closed, answers) };
        const taken = await take(beginConsultation(id), by, { type: 'OPENED', answers }, from);
        if (!taken.ok) return taken;
        await queues.run(id, () => skinTests.settle(id));
        return accept(id);
      });
    },

    async startWriting() {
      show({ mode: 'starting' });
      const restored = await memory.restore();
      const read = showLogs();
      note(...listNotices(restored), ...read.notices);
      for (const { name, isNewer } of read.refused) await memory.setAside(name, isNewer);
      const isStoreThere = restored.troubles.every(({ name }) => name !== null);
      if (!isStoreThere) return show({ mode: 'noStore' });
      if (!memory.logs().has(SETTINGS_LOG)) await append(SETTINGS_LOG, { settings: defaultSettings });
      await erasing.sweep();
      await finishOpen();
      await erasing.eraseOverdue();
      show({ mode: 'writing' });
    },

    watch(logs) {
      memory.replace(logs);
      showLogs();
      show({ mode: 'watching' });
    },

    async stopWriting(then = 'watching') {
      show({ mode: then });
      await queues.drain();
      await store.release();
    },

    saveSettings: (by, settings) =>
      enqueue(SETTINGS_LOG, async () => {
        const read = v.safeParse(settingsSchema, settings);
        if (!read.success) return refuse({ kind: 'badSettings', path: v.getDotPath(read.issues[0]) ?? '' });
        const written = await append(SETTINGS_LOG, { settings: read.output, by, atMs: now() });
        if (written.ok) showLogs();
        return written;
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
        const aheadMs = countJumpSince(jump, test.putOnAtMs);
        const raw = { type: 'CLOCK_PUT_AHEAD', answers: { aheadMs: String(aheadMs) } } as const;
        const told = await enqueue(SKIN_TESTS, () => skinTests.change(test.id, by, raw));
        if (!told.ok) return told;
      }
      return accept(undefined);
    },

    erase: (by, what) => enqueue(OPENING, () => erasing.erase(by, what)),

    finishErasing: () => enqueue(OPENING, erasing.sweep),

    eraseOverdue: () => enqueue(OPENING, erasing.eraseOverdue),

    backUp: () => writeBackup(leaveOutErased(memory.logs()), { madeAtMs: now(), isDemo }),

    bringIn: (file) =>
      enqueue(OPENING, async () => {
        const plan = planBringIn(memory.logs(), file, { isDemo, nowMs: now(), state: readState() });
        if (!plan.ok) return plan;
        const { tombstones, writings, ...broughtIn } = plan.value;
        for (const tombstone of tombstones) {
          const written = await append(ERASED_LOG, tombstone);
          if (!written.ok) return written;
        }
        const swept = await erasing.sweep();
        if (!swept.ok) return swept;
        for (const writing of writings) {
          if (writing.do === 'clear') await memory.remove(writing.log);
          else {
            const { log, entry } = writing;
            const written = await queues.run(log, () => append(log, entry));
            if (!written.ok) return written;
          }
        }
        const came = showLogs();
        note(...came.notices.filter(({ kind }) => kind === 'refusedLog'));
        for (const { name, isNewer } of came.refused) await memory.setAside(name, isNewer);
        await finishOpen();
        return accept(broughtIn);
      }),

    bringInRecords: (file) =>
      enqueue(OPENING, async () => {
        const broughtAtMs = Math.max(now(), findNewestAtMs(readState()) + 1);
        const plan = await inTurns(
          planRecords(readState(), file, {
            isDemo,
            nowMs: now(),
            broughtAtMs,
            erased: listErased(memory.logs()),
          }),
        );
        if (!plan.ok) return plan;
        const { comes, ...rest } = plan.value;
        for (const [came, record] of comes.entries()) {
          const written = await taking.keep(record);
          if (written.ok) continue;
          showLogs();
          return refuse({ kind: 'recordsNotSaved', came });
        }
        showLogs();
        return accept({ came: comes.length, ...rest });
      }),

    readSettings: () => findSettingsIn(memory.logs()),

    readLogs: memory.logs,
    readState,
    note,
    dismiss: (notice) => show({ notices: readState().notices.filter((each) => each !== notice) }),
  };
}

import * as v from 'valibot';
import { beginConsultation } from '../../machines/consultation/consultation';
import type { RawEvent } from '../../shared/records/classify';
import { findLastTime } from '../../shared/records/findLastTime';
import type { RawForm } from '../../shared/records/readForm';
import { defaultSettings, settingsSchema } from '../../shared/records/settings';
import type { RawSkinTestEvent } from '../../shared/records/skinTest/classify';
import { accept, type Result, refuse } from '../../shared/result';
import { makeQueues } from '../storage/queue';
import { makeBoard } from './board';
import { inheritsStop } from './inheritsStop';
import { makeMemory } from './memory';
import { listNotices } from './notice';
import { type ReadLogs, readLogs, SETTINGS_LOG } from './readLogs';
import { makeSkinTests, SKIN_TESTS } from './skinTests';
import type { Station, StationParts } from './station';
import { findNewestAtMs, type StationState } from './stationState';
import type { SubmitRefusal } from './submitRefusal';
import { makeTaking } from './taking';

/** The line in which consultations are opened: no log has this name. */
const OPENING = 'opening';

/** Last time, where the start names it: found here, whatever a screen says of it. */
const findNamed = (closed: StationState['closed'], { ticket, lastTimeId }: RawForm) =>
  typeof lastTimeId === 'string' && lastTimeId !== '' && typeof ticket === 'string'
    ? findLastTime(closed, ticket)
    : null;

/** The station without its screens. Nothing is shown that is not written to both copies. */
export function makeStation(parts: StationParts): Station {
  const { store, now } = parts;
  const queues = makeQueues();
  const board = makeBoard(parts.publish);
  const { note, show, read: readState } = board;

  const memory = makeMemory(store, {
    onAcknowledged: parts.onAcknowledged,
    onDropped: parts.onDropped,
    onFailed: (failure) => {
      showLogs();
      note({ kind: 'notSaved', failure });
    },
  });
  const taking = makeTaking(board, memory, queues, now);
  const { append, take, close } = taking;
  const skinTests = makeSkinTests(board, taking, queues, parts);

  function showLogs(): ReadLogs {
    const read = readLogs(memory.logs());
    show({ settings: read.settings, open: read.open, closed: read.closed, skinTests: read.skinTests });
    return read;
  }

  /** Refused at the door or taken to the end: what stands in line is written even when the place is given up. */
  const enqueue = async <T>(
    line: string,
    work: () => Promise<Result<T, SubmitRefusal>>,
  ): Promise<Result<T, SubmitRefusal>> =>
    readState().mode === 'writing' ? queues.run(line, work) : refuse({ kind: 'notWriting' });

  /** One tap within the line of its consultation, which says by then, and again after it, what its skin tests say. */
  const takeTap = async (id: string, by: string, raw: RawEvent): Promise<Result<void, SubmitRefusal>> => {
    if (raw.type === 'BOWL_WEIGHED' || raw.type === 'BOWL_APPLIED') {
      const settled = await skinTests.settle(id);
      if (!settled.ok) return settled;
    }
    const consultation = readState().open.get(id);
    // A skin test is noted in its own record first.
    const isNote = raw.type === 'SKIN_TEST_NOTED';
    if (consultation === undefined || isNote) return refuse({ kind: 'notNow' });
    const taken = await take(consultation, by, raw);
    if (taken.ok) await skinTests.settle(id);
    return taken;
  };

  const submit: Station['submit'] = (id, by, raw) => {
    const noted = readState().open.get(id)?.record.skinTest?.skinTestId;
    const isOfTest = raw.type === 'CORRECTED' && raw.answers?.answer === 'skinTest';
    if (raw.type === 'SKIN_TEST_NOTED') {
      return enqueue(SKIN_TESTS, () => skinTests.noteFor(id, by, raw.answers ?? {}));
    }
    // That it is another client's says nothing of the test itself.
    const isOwn = isOfTest && raw.answers?.code !== 'wrongClient';
    return isOwn && readState().skinTests.some((test) => test.id === noted)
      ? enqueue(SKIN_TESTS, () => skinTests.correctFor(id, by, raw))
      : enqueue(id, () => takeTap(id, by, raw));
  };

  const changeTest = (id: string, by: string, raw: RawSkinTestEvent) =>
    enqueue(SKIN_TESTS, () => skinTests.change(id, by, raw));

  return {
    submit,

    submitAll: (id, by, raws) =>
      enqueue(id, async () => {
        for (const raw of raws) {
          const taken = await takeTap(id, by, raw);
          if (!taken.ok) return taken;
        }
        return accept(undefined);
      }),

    putOnSkinTest: (by, answers) => enqueue(SKIN_TESTS, () => skinTests.putOn(by, answers)),

    changeSkinTest: (id, by, raw) => changeTest(id, by, raw),

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
      for (const { id } of readState().open.values()) await skinTests.settle(id);
      for (const consultation of readState().open.values()) await close(consultation);
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
      const told = await Promise.all(tests.map(({ id }) => changeTest(id, by, raw)));
      const failed = told.find(({ ok }) => !ok);
      if (failed !== undefined) return failed;
      const said = await Promise.all([...readState().open.keys()].map((id) => submit(id, by, raw)));
      return said.find(({ ok }) => !ok) ?? accept(undefined);
    },

    readLogs: memory.logs,
    readState,
    note,
    dismiss: (notice) => show({ notices: readState().notices.filter((each) => each !== notice) }),
  };
}

import crc32 from 'crc-32';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judgeTold } from '../../../../machines/consultation/bringIn';
import { digestLesson } from '../../../../machines/practice/practiceEvent';
import { settleLesson } from '../../../../machines/practice/practiceRoom';
import { sitThrough as sit } from '../../../../machines/practice/sitThrough';
import { lessons } from '../../../../seeds/practice/lessons';
import { salon } from '../../../../seeds/salon';
import { writeBackup } from '../../../../shared/records/backupFile';
import { parseClosedLog } from '../../../../shared/records/closedRecord';
import { gatherDay } from '../../../../shared/records/day/dayRecords';
import { documentConsultation, readDocument } from '../../../../shared/records/documents/document';
import { leanEdition } from '../../../../shared/records/documents/leanSettings';
import { listDocuments } from '../../../../shared/records/documents/listDocuments';
import type { ConsultationEvent } from '../../../../shared/records/event';
import { askForms } from '../../../../shared/records/forms/asked';
import { listEditions } from '../../../../shared/records/json/carriedSettings';
import { writeConsultations } from '../../../../shared/records/json/consultationFile';
import { isPracticeId, makePracticeId } from '../../../../shared/records/practiceId';
import { fold } from '../../../../shared/records/reduce';
import { readReportFile } from '../../../../shared/records/report/readReportFile';
import { writeForm } from '../../../../shared/records/writeForm';
import { writeDay } from '../../../../src/screens/day/dayFile';
import { writeDayTable, writeMoment } from '../../../../src/screens/day/dayTable';
import { makeId } from '../../../../src/station/makeId';
import { makeStation } from '../../../../src/station/makeStation';
import { careless, perfect } from '../../../machines/practice/trainee';
import { makeTablet, switchOn } from '../../storage/tablet';
import { startSalon } from '../stationUnderTest';

const startAtMs = Date.UTC(2026, 2, 3, 9, 0);
const minuteMs = 60_000;
/** As the ids of a salon are. */
const SALON_ID = 'abcd2345wxyz';

/** A station of practice, with a clock that the test turns. */
async function startPractice(tablet = makeTablet()) {
  const clock = { atMs: startAtMs };
  const station = makeStation({
    store: switchOn(tablet).store,
    now: () => clock.atMs,
    makeId,
    practice: { readWallMs: () => clock.atMs },
    publish: () => undefined,
    onAcknowledged: () => undefined,
    onDropped: () => undefined,
  });
  await station.startWriting();
  return { station, clock };
}

type Started = Awaited<ReturnType<typeof startPractice>>;

/** Somebody sits through this lesson as this trainee does, tap by tap through the station, and leaves it off at the end. */
async function sitThrough({ station, clock }: Started, at: number, isCareless: boolean) {
  const { lesson } = lessons[at % lessons.length] ?? lessons[0] ?? { lesson: undefined };
  if (lesson === undefined) throw new Error('no lesson');
  const { consultation } = sit(lesson, isCareless ? careless : perfect, at, salon);
  const seat = { ticket: `${lesson.seat.ticket} ${at}`.slice(0, 12), chair: '1', stylist: '' };
  const begun = { lessonId: lesson.id, seed: at, isExam: isCareless, digest: digestLesson(lesson) };
  const opened = await station.beginLesson('Opal', { settings: settleLesson(lesson, salon), seat, begun });
  if (!opened.ok) throw new Error(JSON.stringify(opened.error));
  const id = opened.value;
  await station.tellOfSitting(id, 'Opal', { type: 'ASKED_CLOSER', payload: { path: 'client.reactions' } });
  const put = {
    ...{ ticket: seat.ticket, method: 'makersMethod', site: 'behindEar', line: '' },
    ...{ putOnAtMs: clock.atMs, seen: 'notReadYet' },
  };
  await station.putOnSkinTest('Opal', put);
  // What was tapped is told again to the station, as far as it takes it.
  const before = consultation.log[0]?.atMs ?? startAtMs;
  const beganAtMs = clock.atMs;
  for (const event of consultation.log.slice(1)) {
    clock.atMs = beganAtMs + (event.atMs - before);
    if (event.type === 'ANSWERED') {
      const { step } = event.payload;
      const form = askForms[step];
      const answers = writeForm(form, consultation.record.answers[step] ?? {}, salon.units);
      await station.submit(id, 'Opal', { type: 'ANSWERED', step, answers });
    }
    if (event.type === 'STEP_CONFIRMED') {
      await station.submit(id, 'Opal', { type: 'STEP_CONFIRMED', answers: event.payload });
    }
  }
  clock.atMs += minuteMs;
  const off = await station.submit(id, 'Opal', { type: 'CALLED_OFF', answers: { reason: 'other' } });
  if (!off.ok) throw new Error(JSON.stringify(off.error));
  return id;
}

const join = (pieces: Iterable<string>): string => [...pieces].join('');

describe('practice', () => {
  it('begins one lesson at a time, in a log beside her own, and names every record as practised', async () => {
    const started = await startPractice();
    const { lesson } = lessons[0] ?? {};
    if (lesson === undefined) throw new Error('no lesson');
    const begun = { lessonId: lesson.id, seed: 1, isExam: false, digest: digestLesson(lesson) };
    const given = {
      settings: settleLesson(lesson, salon),
      seat: { ticket: 'A.B.', chair: '1', stylist: '' },
      begun,
    };
    const opened = await started.station.beginLesson('Opal', given);
    expect(opened.ok && isPracticeId(opened.value)).toBe(true);
    expect(await started.station.beginLesson('Opal', given)).toMatchObject({ ok: false });
    const names = [...started.station.readLogs().keys()].filter((name) => name !== 'settings');
    expect(names.map((name) => name.split('-')[0]).sort()).toEqual(['open', 'practice']);
    expect(started.station.readState().settings.settings.shelf).toEqual(given.settings.shelf);
  });

  it('is told nothing in a salon', async () => {
    const { station } = await startSalon(makeTablet());
    const before = [...station.readLogs().keys()];
    const said = await Promise.all([
      station.setSpeed('Opal', 60),
      station.tellOfSitting('x', 'Opal', { type: 'ASKED_CLOSER', payload: { path: 'client.scalp' } }),
      station.beginLesson('Opal', {
        settings: salon,
        seat: { ticket: 'A.B.', chair: '1', stylist: '' },
        begun: { lessonId: 'x', seed: 1, isExam: false, digest: '0'.repeat(64) },
      }),
    ]);
    expect(said.map(({ ok }) => ok)).toEqual([false, false, false]);
    expect([...station.readLogs().keys()]).toEqual(before);
  });

  it('stands as it was after a restart: its clock, its sittings, and who is at her chair', async () => {
    const tablet = makeTablet();
    const started = await startPractice(tablet);
    await started.station.setSpeed('Opal', 10);
    const id = await sitThrough(started, 0, false);
    await started.station.stopWriting();
    const again = await startPractice(tablet);
    const { practice, closed, notices } = again.station.readState();
    expect(practice?.changes).toEqual([{ wallMs: startAtMs, times: 10 }]);
    expect([...(practice?.sittings.get(id) ?? [])].map(({ type }) => type)).toEqual([
      'LESSON_BEGUN',
      'ASKED_CLOSER',
    ]);
    expect(closed.map((record) => record.id)).toEqual([id]);
    expect(notices).toEqual([]);
  });
});

describe('what was practised', () => {
  it('is in no file that leaves the station, whatever was sat', async () => {
    let records = 0;
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.tuple(fc.nat(lessons.length - 1), fc.boolean()), { minLength: 1, maxLength: 3 }),
        async (sittings) => {
          const started = await startPractice();
          for (const [index, [at, isCareless]] of sittings.entries()) {
            await sitThrough(started, at + index * lessons.length, isCareless);
          }
          const { station, clock } = started;
          const state = station.readState();
          expect(state.closed.length).toBe(sittings.length);
          records += state.closed.length;
          const find = station.readSettings();
          const kept = { open: state.open, closed: state.closed, skinTests: state.skinTests };
          const days = { from: '2026-01-01', day: '2026-12-31', nameDay: () => '2026-03-03' };
          const day = gatherDay(kept, clock.atMs, days);
          const made = { madeAtMs: clock.atMs, isDemo: false };
          const leaves = [
            join(station.backUp()),
            join(writeBackup(station.readLogs(), made)),
            join(writeDay(day, find, made)),
            join(writeDayTable(day, salon.units)),
            JSON.stringify([...listDocuments(station.readHeld().held, find)]),
          ];
          for (const text of leaves)
            expect(text).not.toMatch(/practice0|"practice|ASKED_CLOSER|LESSON_BEGUN/);
          expect([day.closed, day.open, day.goneOn, day.skinTests, day.unread].flat()).toEqual([]);
          expect([...listDocuments(station.readHeld().held, find)]).toEqual([]);
        },
      ),
      { seed: 20261127, numRuns: 12 },
    );
    expect(records).toBeGreaterThan(12);
  });

  it('is refused wherever it is brought in, and nothing of it is written', async () => {
    const started = await startPractice();
    const id = await sitThrough(started, 3, true);
    const { station, clock } = started;
    const [record] = station.readState().closed;
    if (record === undefined) throw new Error('nothing closed');
    const log = parseClosedLog(record) ?? [];
    const settings = listEditions(log, station.readSettings());
    // As somebody with the tools of the browser would make them: the writers themselves leave it out.
    const backup = makeBackup(station.readLogs(), clock.atMs);
    const file = makeRecordsFile(id, log, settings, clock.atMs);
    const salonStation = await startSalon(makeTablet());
    salonStation.clock.atMs = clock.atMs;
    const before = JSON.stringify([...salonStation.station.readLogs()]);
    expect(await salonStation.station.bringIn(backup)).toEqual({
      ok: false,
      error: { kind: 'backup', why: 'practice' },
    });
    expect(await salonStation.station.bringInRecords(file)).toEqual({
      ok: false,
      error: { kind: 'records', why: 'practice' },
    });
    const document = documentConsultation({ id, settings: settings.map(leanEdition), log });
    expect(readDocument(JSON.parse(JSON.stringify(document)))).toMatchObject({ ok: false });
    for (const text of [backup, file]) expect(readReportFile(text)).toMatchObject({ ok: false });
    expect(JSON.stringify([...salonStation.station.readLogs()])).toBe(before);
    // The same log under a name of a salon is one: it is the name alone that says it was practised.
    expect(judgeTold({ id: SALON_ID, settings, log }).ok).toBe(true);
    const asSalon = makeRecordsFile(SALON_ID, log, settings, clock.atMs);
    expect(await salonStation.station.bringInRecords(asSalon)).toMatchObject({
      ok: true,
      value: { came: 1 },
    });
  });

  it('takes nothing in from a salon', async () => {
    const { station } = await startPractice();
    const salonStation = await startSalon(makeTablet());
    expect((await station.bringIn(join(salonStation.station.backUp()))).ok).toBe(false);
    expect((await station.bringInRecords('{}')).ok).toBe(false);
  });

  it('is told from every id of chance by its name', () => {
    fc.assert(
      fc.property(fc.nat(), () => {
        const id = makeId();
        expect(isPracticeId(id)).toBe(false);
        expect(isPracticeId(makePracticeId(id))).toBe(true);
      }),
      { seed: 20261127, numRuns: 2_000 },
    );
  });
});

const sumUp = (text: string): string => (crc32.str(text) >>> 0).toString(16).padStart(8, '0');

/** A backup of these logs as the file is set out, with nothing left out of it, and a check sum that is right. */
function makeBackup(logs: ReadonlyMap<string, readonly unknown[]>, madeAtMs: number): string {
  const [head = ''] = join(writeBackup(new Map(), { madeAtMs, isDemo: false })).split('\n');
  const entries = [...logs].flatMap(([log, each]) => each.map((entry) => JSON.stringify({ log, entry })));
  const lines = [head, ...entries];
  const body = `${lines.join('\n')}\n`;
  return `${body}end ${lines.length} ${sumUp(body)}\n`;
}

/** A file of this one consultation as it is set out, its check sum right. */
function makeRecordsFile(
  id: string,
  log: readonly ConsultationEvent[],
  settings: ReturnType<typeof listEditions>,
  madeAtMs: number,
): string {
  const head = { madeAtMs, isDemo: false, from: '2026-03-03', to: '2026-03-03', skinTests: [], unread: [] };
  const leaving = { record: fold(SALON_ID, log), log, settings };
  const file = JSON.parse(join(writeConsultations([leaving], head, writeMoment)));
  const { sum: _sum, ...body } = file.consultations[0];
  const told = { ...body, id, record: { ...body.record, id } };
  return JSON.stringify({ ...file, consultations: [{ ...told, sum: sumUp(JSON.stringify(told)) }] });
}

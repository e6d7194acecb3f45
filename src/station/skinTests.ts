import { advance, type Consultation } from '../../machines/consultation/consultation';
import { findLapsesAtMs, findReadableAtMs, findWaitsSinceMs } from '../../shared/judgement/skinTest';
import { classify, type RawEvent } from '../../shared/records/classify';
import { countDoubtMs } from '../../shared/records/clockJump';
import type { RawForm } from '../../shared/records/readForm';
import type { ConsultationRecord } from '../../shared/records/record';
import { findCitation, findPutOnRefusal, listStandingTests } from '../../shared/records/skinTest/citation';
import { classifySkinTest, type RawSkinTestEvent } from '../../shared/records/skinTest/classify';
import type { SkinTestEvent } from '../../shared/records/skinTest/event';
import { advanceSkinTest, type SkinTest } from '../../shared/records/skinTest/skinTest';
import { isToForget } from '../../shared/records/skinTest/visit';
import { formTicketKey } from '../../shared/records/ticket';
import { accept, type Result, refuse } from '../../shared/result';
import type { Json } from '../storage/json';
import type { Queues } from '../storage/queue';
import type { Logs } from '../storage/watcherChannel';
import type { Board } from './board';
import { nameSkinTestLog } from './logNames';
import type { Memory } from './memory';
import { findSettingsIn } from './readLogs';
import { findOwnLog, listSkinTestLogs, readSkinTests } from './skinTestLogs';
import { stampTime } from './stampTime';
import type { StationParts } from './station';
import type { SubmitRefusal } from './submitRefusal';
import type { Taking } from './taking';

/** The line in which skin tests are put on, read and taken back: no log has this name. */
export const SKIN_TESTS = 'skintests';

type Done<T = void> = Promise<Result<T, SubmitRefusal>>;

/** What is done about skin tests. Each works within the line `SKIN_TESTS`, but for `settle`. */
export interface SkinTestKeeping {
  /** `visit`: within whose consultation; tests of the ticket that a person named as another client's are none of hers. Answers the new test's id. */
  putOn(
    by: string,
    answers: RawForm,
    visit?: Pick<ConsultationRecord, 'id' | 'notHerSkinTests'>,
  ): Done<string>;
  change(id: string, by: string, raw: RawSkinTestEvent): Done;
  /** What is said of a skin test within a consultation goes into the test's own record first. */
  noteFor(consultationId: string, by: string, answers: RawForm): Done;
  /** `id`: the test that stood there when it was said; refused once another one stands there. */
  correctFor(consultationId: string, id: string, by: string, raw: RawEvent): Done;
  /** Adds to this consultation what it does not say yet of its ticket's tests. Within the consultation's own line. */
  settle(consultationId: string): Done;
  /** Forgets the tests whose visit is over where she did not agree that they are kept. */
  forget(): Promise<void>;
}

const readSkinTest = (logs: Logs, id: string): SkinTest | undefined =>
  readSkinTests(new Map(listSkinTestLogs(logs, id)), findSettingsIn(logs)).tests[0];

const toJson = (event: SkinTestEvent): Json => event as unknown as Json;

/**
 * Skin tests are written by ticket, each in a log of its own, and cited by the open consultations of the ticket: first
 * the test's log, then the consultations. Broken off in between, the next tap or the next start finishes it.
 * Checked in tests/src/station/skinTests.test.ts.
 */
export function makeSkinTests(
  board: Board,
  { append, take, remove, logs }: Pick<Taking, 'append' | 'take'> & Pick<Memory, 'remove' | 'logs'>,
  queues: Queues,
  { now, makeId, readJumps = () => [] }: Pick<StationParts, 'now' | 'makeId' | 'readJumps'>,
): SkinTestKeeping {
  const find = (id: string | undefined): SkinTest | undefined =>
    board.read().skinTests.find((test) => test.id === id);

  const settle: SkinTestKeeping['settle'] = async (consultationId) => {
    // A test taken back under a stop takes two corrections, and the next one of the ticket is cited then.
    for (let turn = 0; turn < 4; turn += 1) {
      const { open, skinTests, settings } = board.read();
      const consultation = open.get(consultationId);
      if (consultation === undefined) return accept(undefined);
      const citation = findCitation(consultation.record, skinTests, settings.settings.profile);
      if (citation === null) return accept(undefined);
      const taken = await take(consultation, citation.by, citation.raw, { isStation: true });
      if (!taken.ok) return taken;
    }
    return accept(undefined);
  };

  /** Every open consultation of the ticket is told. One that cannot take it now is told at its next tap. */
  const settleTicket = async (ticketKey: string): Promise<void> => {
    const same = [...board.read().open.values()].filter(
      ({ record }) => formTicketKey(record.ticket) === ticketKey,
    );
    await Promise.all(same.map(({ id }) => queues.run(id, () => settle(id))));
  };

  const write = async (id: string, before: SkinTest | null, event: SkinTestEvent): Done => {
    const after = advanceSkinTest(id, before, event);
    if (after === null) return refuse({ kind: 'notNow' });
    const isToldOtherwise = listSkinTestLogs(logs(), id).length > 1;
    const name = isToldOtherwise ? findOwnLog(logs(), id, findSettingsIn(logs())) : nameSkinTestLog(id);
    const written = await append(name, toJson(event));
    if (!written.ok) return written;
    const all = board.read().skinTests.filter((test) => test.id !== id);
    // What other stations tell of it may be the more careful one from now on.
    const joined = isToldOtherwise ? readSkinTest(logs(), id) : after;
    board.show({ skinTests: [...all, joined ?? after] });
    // A consultation corrects its own clock, and says by then what its test says.
    if (event.type !== 'CLOCK_CORRECTED') await settleTicket(after.ticketKey);
    return accept(undefined);
  };

  const judge = (test: SkinTest | null, by: string, raw: RawSkinTestEvent, visit: string | null = null) => {
    const { id: settingsId, settings } = board.read().settings;
    const atMs = raw.type === 'CLOCK_CORRECTED' ? now() : stampTime(now(), test?.newestAtMs ?? 0);
    const event = classifySkinTest(test, raw, { settings, settingsId, atMs, by, visit });
    if (!event.ok || !('seen' in event.value.payload) || event.value.payload.seen !== 'nothing') return event;
    const begun = test ?? ('putOnAtMs' in event.value.payload ? event.value.payload : { putOnAtMs: atMs });
    const doubtMs = countDoubtMs(readJumps(), findWaitsSinceMs(begun));
    return atMs < findReadableAtMs(begun, settings.profile) + doubtMs
      ? refuse({ kind: 'waitInDoubt', doubtMs } as const)
      : event;
  };

  const putOn: SkinTestKeeping['putOn'] = async (by, answers, visit) => {
    const event = judge(null, by, { type: 'SKIN_TEST_PUT_ON', answers }, visit?.id);
    if (!event.ok) return event;
    if (event.value.type !== 'SKIN_TEST_PUT_ON') return refuse({ kind: 'notNow' });
    const { payload, atMs } = event.value;
    const { skinTests, settings } = board.read();
    const standing = listStandingTests(skinTests, payload.ticket, visit?.notHerSkinTests ?? []);
    const refusal = findPutOnRefusal(standing, payload, settings.settings.profile, atMs);
    if (refusal !== null) return refuse(refusal);
    const id = makeId();
    const written = await write(id, null, event.value);
    return written.ok ? accept(id) : written;
  };

  const change: SkinTestKeeping['change'] = async (id, by, raw) => {
    const test = find(id);
    if (test === undefined) return refuse({ kind: 'notNow' });
    const event = judge(test, by, raw);
    return event.ok ? write(id, test, event.value) : event;
  };

  /** Would the consultation take it now? Tried out, written nowhere. */
  const tryOut = (
    { record, ...rest }: Consultation,
    by: string,
    raw: RawEvent,
  ): Result<void, SubmitRefusal> => {
    const { id: settingsId, settings } = board.read().settings;
    const atMs = stampTime(now(), record.newestAtMs);
    const event = classify(record, raw, { settings, settingsId, atMs, by, inheritsStop: false });
    if (!event.ok) return event;
    return advance({ record, ...rest }, event.value).ok ? accept(undefined) : refuse({ kind: 'notNow' });
  };

  return {
    putOn,
    change,
    settle,

    async forget() {
      const { skinTests, open, settings } = board.read();
      // Her visit may be over as another station tells it, and go on here.
      const closed = board.read().closed.filter(({ id }) => !open.has(id));
      const counting = skinTests.filter((test) => now() <= findLapsesAtMs(test, settings.settings.profile));
      for (const { id } of skinTests.filter((test) => isToForget(test, counting, closed))) {
        for (const [name] of listSkinTestLogs(logs(), id)) await remove(name);
        board.show({ skinTests: board.read().skinTests.filter((test) => test.id !== id) });
      }
    },

    async noteFor(consultationId, by, answers) {
      const record = board.read().open.get(consultationId)?.record;
      if (record === undefined) return refuse({ kind: 'notNow' });
      const cited = find(record.skinTest?.skinTestId);
      const isReading = cited !== undefined && answers.putOnAtMs === cited.putOnAtMs;
      if (isReading) return change(cited.id, by, { type: 'SKIN_TEST_READ', answers });
      const put = await putOn(by, { ...answers, ticket: record.ticket }, record);
      return put.ok ? accept(undefined) : put;
    },

    async correctFor(consultationId, id, by, raw) {
      const consultation = board.read().open.get(consultationId);
      const cited = find(consultation?.record.skinTest?.skinTestId);
      if (consultation === undefined || cited?.id !== id) return refuse({ kind: 'notNow' });
      const tried = tryOut(consultation, by, raw);
      if (!tried.ok) return tried;
      const what = cited.seen === 'reaction' ? 'reading' : 'test';
      return change(cited.id, by, { type: 'SKIN_TEST_TAKEN_BACK', answers: { ...raw.answers, what } });
    },
  };
}

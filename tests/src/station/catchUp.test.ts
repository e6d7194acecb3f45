import { afterEach, describe, expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import type { RawEvent } from '../../../shared/records/classify';
import { type ClosedRecord, closeRecord } from '../../../shared/records/closedRecord';
import type { ConsultationEvent } from '../../../shared/records/event';
import { fold } from '../../../shared/records/reduce';
import { msPerDay } from '../../../shared/units/time';
import { inheritsStop } from '../../../src/station/inheritsStop';
import { nameClosedLog, SETTINGS_LOG } from '../../../src/station/logNames';
import type { Json } from '../../../src/storage/json';
import { type Database, openDatabase } from '../storage/replica/database';
import { makeTablet, switchOn, type Tablet } from '../storage/tablet';
import { startSharing } from './sharingStation';
import { play, type StationUnderTest, startAtMs, startStation } from './stationUnderTest';

/** REPLICA_RECORDS=10000, or `npm run prove:replica`, for the long form. */
const count = Number(process.env.REPLICA_RECORDS ?? 600);
/** So many of each station are tapped while the database is away. */
const TAPPED = 12;

const by = 'Opal';
const minute = 60_000;
const hives: RawEvent = { type: 'ANSWERED', step: 'client', answers: { reactions: ['hives'] } };
const callOff: RawEvent = { type: 'CALLED_OFF', answers: { reason: 'noTime' } };

let database: Database;
afterEach(() => database.close());

const visit = (under: StationUnderTest, ticket: string, ...raws: readonly RawEvent[]): Promise<string> =>
  play(under, [
    { afterMs: minute, by, raw: { type: 'OPENED', answers: { ticket, chair: '3' } } },
    ...[...raws, callOff].map((raw) => ({ afterMs: minute, by, raw })),
  ]);

/** The same visit as another client's, on another day. */
function asHers(told: ClosedRecord, id: string, ticket: string, byMs: number): ClosedRecord {
  const log = told.log.map((entry) => {
    const event = entry as ConsultationEvent;
    const payload = event.type === 'OPENED' ? { ...event.payload, ticket } : event.payload;
    return { ...event, payload, atMs: event.atMs + byMs } as ConsultationEvent;
  });
  const closed = closeRecord(fold(id, log), log);
  if (closed === null) throw new Error('it does not close');
  return closed;
}

/** Years of a salon's visits in both copies of a tablet, every tenth with a stop, as the station itself would leave them. */
async function plant(tablet: Tablet, records: number, idBegins: string): Promise<void> {
  const scratch = await startStation(makeTablet());
  await scratch.station.saveSettings(by, salon);
  await visit(scratch, 'A.A.');
  await visit(scratch, 'B.B.', hives);
  const [plain, stopped] = scratch.station.readState().closed;
  if (plain === undefined || stopped === undefined) throw new Error('nothing closed');
  const months = new Map<string, Json[]>();
  for (let made = 0; made < records; made += 1) {
    const name = `${idBegins}${made.toString(36).padStart(5, '0')}`;
    const byMs = -Math.floor(((records - made) * 3 * 365) / records) * msPerDay;
    const closed = asHers(made % 10 === 9 ? stopped : plain, name, `${idBegins} ${made}`, byMs);
    const month = nameClosedLog(closed.endedAtMs);
    months.set(month, [...(months.get(month) ?? []), closed as unknown as Json]);
  }
  const { store } = switchOn(tablet);
  await store.restore();
  const settings = scratch.station.readLogs().get(SETTINGS_LOG) ?? [];
  for (const [log, entries] of [[SETTINGS_LOG, settings] as const, ...months])
    if (!(await store.append(log, 0, ...entries)).ok) throw new Error('not written');
  await store.release();
}

/** A station that shares. */
type Sharing = Awaited<ReturnType<typeof startSharing>>;

/** Ends it in the midst of a station's question of this kind, once; answers how often it was asked. */
function killAt(question: (path: string) => boolean, at: number) {
  const asked = { all: 0, ofKind: 0, kills: 0 };
  database.onAsked = async (_method, path) => {
    asked.all += 1;
    if (question(path)) asked.ofKind += 1;
    if (!question(path) || asked.ofKind !== at || asked.kills > 0) return;
    asked.kills += 1;
    await database.kill();
  };
  return asked;
}
const isPush = (path: string): boolean => path.includes('_bulk_docs');
const isPull = (path: string): boolean => path.includes('include_docs');

/** As rounds do: what broke off goes on with the next one. Answers why rounds failed. */
async function untilInStep(station: Sharing): Promise<readonly string[]> {
  const failed: string[] = [];
  for (let tries = 0; tries < 20; tries += 1) {
    const ended = await station.tryExchange();
    if (ended.ok) return failed;
    failed.push(ended.error);
  }
  throw new Error(`never in step: ${failed.join(', ')}`);
}

/** Clients come while nothing is shared: some are stopped, one skin test is put on, and one record is erased. */
async function workOn(under: Sharing, ticket: string): Promise<void> {
  const ids = [];
  for (let made = 0; made < TAPPED; made += 1)
    ids.push(await visit(under, `${ticket} ${made}`, ...(made % 3 === 0 ? [hives] : [])));
  await under.station.putOnSkinTest(by, {
    ...{ ticket, method: 'makersMethod', site: 'behindEar', line: '', seen: 'notReadYet' },
    putOnAtMs: under.clock.atMs,
  });
  const erased = await under.station.erase(by, { ids: [ids[1] ?? ''], code: 'sheAsked' });
  if (!erased.ok) throw new Error(erased.error.kind);
}

describe('two stations that were apart', () => {
  it(`hold the same ${count} records in the end, the server killed while one sends and while one takes up`, async () => {
    database = await openDatabase();
    const tablets = [makeTablet(), makeTablet()] as const;
    const atMs = startAtMs + msPerDay;
    const planted = count / 2 - TAPPED * 2;
    await plant(tablets[0], planted, 'one');
    await plant(tablets[1], planted, 'two');
    const one = await startSharing(database, 'onetap', tablets[0], atMs);
    const other = await startSharing(database, 'twotap', tablets[1], atMs);
    expect([one, other].map(({ station }) => station.readState().closed.length)).toEqual([planted, planted]);

    const whilePushing = killAt(isPush, 2);
    expect(await one.tryExchange()).toEqual({ ok: false, error: 'silent' });
    for (const [under, ticket] of [
      [one, 'K.L.'],
      [other, 'M.N.'],
    ] as const) {
      await workOn(under, ticket);
      expect(await under.tryExchange()).toMatchObject({ ok: false });
    }
    await database.rise();
    const failed = [...(await untilInStep(one))];

    // What is erased is asked for first; then the records, piece by piece.
    const whilePulling = killAt(isPull, 3);
    expect(await other.tryExchange()).toEqual({ ok: false, error: 'silent' });
    const came = other.station.readState().closed.length;
    await workOn(other, 'P.R.');
    await workOn(one, 'S.T.');
    await database.rise();
    for (const under of [other, one, other]) failed.push(...(await untilInStep(under)));
    expect([whilePushing.kills, whilePulling.kills]).toEqual([1, 1]);
    // Something had come before it was killed, and not everything.
    expect(came).toBeGreaterThan(planted + TAPPED);
    expect(came).toBeLessThan(count - 4 * TAPPED);

    const erased = 4;
    for (const { station } of [one, other]) {
      const { closed, skinTests, erasings, notices, unjudged } = station.readState();
      expect(closed).toHaveLength(count - erased);
      expect([skinTests.length, erasings.tombstones.length, notices, unjudged]).toEqual([4, 4, [], []]);
      expect(
        ['K.L. 0', 'K.L. 2', 'M.N. 3', 'P.R. 0', 'S.T. 2', 'one 9', 'two 9', 'two 8'].map((ticket) =>
          inheritsStop(station.readState(), ticket),
        ),
      ).toEqual([true, false, true, true, false, true, true, false]);
    }
    const digests = [await one.digest(), await other.digest()];
    expect(digests[0]).toBe(digests[1]);
    const asked = whilePushing.all + whilePulling.all;
    // What both hold is in both copies: switched off and on they say the same.
    for (const [under, idBegins] of [
      [one, 'onenext'],
      [other, 'twonext'],
    ] as const) {
      await under.station.stopWriting();
      const again = await startSharing(database, idBegins, under.tablet, atMs + 30 * msPerDay);
      expect(await again.digest()).toBe(digests[0]);
      expect(await again.exchange()).toMatchObject({ came: 0, went: 0, gone: 0, refused: [], later: [] });
    }
    console.info(
      `${count} records of two stations, ${asked} questions, the server killed at the 2nd piece that was sent and at the 2nd that was taken up; rounds broken off after that: ${failed.join(', ') || 'none'}; ` +
        `${erased} erased, digest of both sets ${digests[0]?.slice(0, 16)} = ${digests[1]?.slice(0, 16)}, and so after a restart of both`,
    );
  }, 3_600_000);
});

import { describe, expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import type { RawEvent } from '../../../shared/records/classify';
import {
  documentConsultation,
  documentErased,
  documentSkinTest,
  type RecordDocument,
} from '../../../shared/records/documents/document';
import { listDocuments } from '../../../shared/records/documents/listDocuments';
import { MODEL_VERSION } from '../../../shared/records/event';
import { msPerHour } from '../../../shared/units/time';
import { inheritsStop } from '../../../src/station/inheritsStop';
import { UNJUDGED_LOG } from '../../../src/station/logNames';
import { listHeld } from '../../../src/station/merging';
import type { Json } from '../../../src/storage/json';
import { makePower } from '../storage/power';
import { makeTablet, switchOn, type Tablet } from '../storage/tablet';
import { play, type StationUnderTest, startStation } from './stationUnderTest';

const by = 'Opal';
const minute = 60_000;
const hives: RawEvent = { type: 'ANSWERED', step: 'client', answers: { reactions: ['hives'] } };
const callOff: RawEvent = { type: 'CALLED_OFF', answers: { reason: 'noTime' } };

async function start(idBegins: string, tablet: Tablet = makeTablet()): Promise<StationUnderTest> {
  const under = await startStation(tablet, undefined, undefined, undefined, idBegins);
  await under.station.saveSettings(by, salon);
  return under;
}

const visit = (under: StationUnderTest, ticket: string, ...raws: readonly RawEvent[]): Promise<string> =>
  play(under, [
    { afterMs: minute, by, raw: { type: 'OPENED', answers: { ticket, chair: '3' } } },
    ...raws.map((raw) => ({ afterMs: minute, by, raw })),
  ]);

const share = ({ station }: StationUnderTest): readonly RecordDocument[] => [
  ...listDocuments(listHeld(station.readLogs()), station.readSettings()),
];

/** The same as an edition after this one would write it. */
const makeNewer = (each: RecordDocument): readonly RecordDocument[] => {
  const newer = (entry: unknown) => ({ ...Object(entry), modelVersion: MODEL_VERSION + 1 });
  if (each.kind === 'consultation')
    return [documentConsultation({ ...each.body, log: each.body.log.map(newer) })];
  if (each.kind === 'erased') return [];
  const log = each.body.log.map((told) => ({ ...told, entry: { ...Object(told.entry), v: 99 } }));
  return [documentSkinTest({ ...each.body, log })];
};

/** Her record of another station, with a stop in it: as it is, of a newer edition, and with a tap left out. */
async function tellStopped() {
  const there = await start('there');
  await visit(there, 'Q.F.', hives, callOff);
  const [whole] = share(there);
  if (whole?.kind !== 'consultation') throw new Error('no record');
  const [newer] = makeNewer(whole);
  const forged = documentConsultation({ ...whole.body, log: whole.body.log.slice(0, -1) });
  return { whole, newer: newer as RecordDocument, forged, atMs: there.clock.atMs };
}

const isStopped = ({ station }: StationUnderTest): boolean => inheritsStop(station.readState(), 'q f');
const listWhy = ({ station }: StationUnderTest) =>
  (station.readState().unjudged ?? []).map(({ id, kind, why }) => ({ id, kind, why }));

/** The entry under which this edition, when it was an older one, kept what it could not judge. */
const keepAs = (document: RecordDocument, cameAtMs: number): Json =>
  ({
    ...{ v: 1, id: Object(document.body).id, cameAtMs, from: 'otherStations', why: 'newer' },
    document,
  }) as unknown as Json;

/** Writes it into both copies, as the edition before left it. */
async function leave(tablet: Tablet, ...entries: readonly Json[]): Promise<void> {
  const { store } = switchOn(tablet);
  await store.restore();
  expect(await store.append(UNJUDGED_LOG, 0, ...entries)).toMatchObject({ ok: true });
  await store.release();
}

describe('what came from another station and cannot be judged', () => {
  it('stops her after a restart too, in the window that writes and in one that watches', async () => {
    const { newer, atMs } = await tellStopped();
    const tablet = makeTablet();
    const here = await start('here', tablet);
    here.clock.atMs = atMs;
    await here.station.takeDocuments([newer]);
    await here.station.takeDocuments([newer]);
    await here.station.stopWriting();
    const again = await startStation(tablet);
    const watching = await startStation(makeTablet());
    watching.station.watch(again.station.readLogs());
    for (const each of [again, watching]) {
      expect(isStopped(each)).toBe(true);
      expect(listWhy(each)).toEqual([{ id: 'there0001', kind: 'consultation', why: 'newer' }]);
      expect(each.station.readState().notices).toEqual([]);
    }
    expect(again.station.readLogs().get(UNJUDGED_LOG)).toEqual([
      { v: 1, id: 'there0001', cameAtMs: atMs, from: 'otherStations', why: 'newer', document: newer },
    ]);
  });

  it('is told apart by why: of a newer edition, or it could not have been tapped', async () => {
    const { newer, forged, atMs } = await tellStopped();
    for (const [document, why] of [
      [newer, 'newer'],
      [forged, 'notJudged'],
    ] as const) {
      const here = await start('here');
      here.clock.atMs = atMs;
      expect(await here.station.takeDocuments([document])).toEqual({
        ok: true,
        value: { refused: [{ id: document.id, why }], later: [] },
      });
      expect(listWhy(here)).toEqual([{ id: 'there0001', kind: 'consultation', why }]);
      expect(isStopped(here)).toBe(true);
    }
  });

  it('may be a skin test as well', async () => {
    const there = await start('there');
    const put = await there.station.putOnSkinTest(by, {
      ...{ ticket: 'Q.F.', method: 'makersMethod', site: 'behindEar', line: '', seen: 'notReadYet' },
      putOnAtMs: there.clock.atMs,
    });
    there.clock.atMs += 49 * msPerHour;
    await there.station.changeSkinTest(put.ok ? put.value : '', by, {
      type: 'SKIN_TEST_READ',
      answers: { seen: 'reaction' },
    });
    const newer = share(there).flatMap(makeNewer);
    const tablet = makeTablet();
    const here = await start('here', tablet);
    here.clock.atMs = there.clock.atMs;
    await here.station.takeDocuments(newer);
    await here.station.stopWriting();
    const again = await startStation(tablet);
    expect(listWhy(again)).toEqual([{ id: put.ok ? put.value : '', kind: 'skinTest', why: 'newer' }]);
    expect(isStopped(again)).toBe(true);
    expect(again.station.readState().skinTests).toEqual([]);
  });

  it('stops her too where not even its form is known here, as long as it says whose it is', async () => {
    const { whole, atMs } = await tellStopped();
    if (whole.kind !== 'consultation') throw new Error('no record');
    const body = { ...whole.body, addedLater: 1 };
    const here = await start('here');
    here.clock.atMs = atMs;
    await here.station.takeDocuments([], [{ id: 'consultation:there0001:0', kind: 'consultation', body }]);
    await here.station.takeDocuments(
      [],
      [{ id: 'consultation:there0002:0', kind: 'consultation', body: { id: 'there0002' } }],
    );
    expect(listWhy(here)).toEqual([{ id: 'there0001', kind: 'consultation', why: 'newer' }]);
    expect(isStopped(here)).toBe(true);
  });

  it('is judged at the start of an edition that can, and stands in its place then, once', async () => {
    const { whole, atMs } = await tellStopped();
    const tablet = makeTablet();
    await leave(tablet, keepAs(whole, atMs));
    const here = await startStation(tablet, undefined, undefined, atMs);
    expect(listWhy(here)).toEqual([]);
    expect(here.station.readLogs().has(UNJUDGED_LOG)).toBe(false);
    expect(here.station.readState().closed.map(({ id }) => id)).toEqual(['there0001']);
    expect(isStopped(here)).toBe(true);
    await here.station.stopWriting();
    const again = await startStation(tablet, undefined, undefined, atMs);
    expect(again.station.readState().closed).toHaveLength(1);
    expect(again.station.readState().notices).toEqual([]);
  });

  it('stops her wherever the power goes while it is judged anew, and stands once after that', async () => {
    const { whole, atMs } = await tellStopped();
    let cut = 0;
    for (let step = 0; ; step += 1) {
      const tablet = makeTablet();
      await leave(tablet, keepAs(whole, atMs));
      const power = makePower(step);
      const first = await startStation(tablet, power, undefined, atMs);
      expect(isStopped(first), `at ${step}`).toBe(true);
      const again = await startStation(tablet, undefined, undefined, atMs);
      expect([isStopped(again), listWhy(again)], `after ${step}`).toEqual([true, []]);
      expect(again.station.readState().closed, `after ${step}`).toHaveLength(1);
      if (power.count() <= step) break;
      cut += 1;
    }
    expect(cut).toBeGreaterThan(4);
  });

  it('stays with another why where the edition that knows it says that it could not have been tapped', async () => {
    const { forged, newer, atMs } = await tellStopped();
    const tablet = makeTablet();
    await leave(tablet, keepAs(newer, atMs), keepAs({ ...forged, id: forged.id }, atMs));
    const here = await startStation(tablet, undefined, undefined, atMs);
    expect(here.station.readLogs().get(UNJUDGED_LOG)).toMatchObject([{ why: 'newer' }, { why: 'notJudged' }]);
    expect(isStopped(here)).toBe(true);
  });

  it('goes when its record is erased, here or at another station, and stops nobody then', async () => {
    const { newer, atMs } = await tellStopped();
    const erasing = documentErased({ v: 1, ids: ['there0001'], atMs, by, code: 'sheAsked' });
    for (const erase of [
      ({ station }: StationUnderTest) => station.erase(by, { ids: ['there0001'], code: 'sheAsked' }),
      ({ station }: StationUnderTest) => station.takeDocuments([erasing]),
    ]) {
      const tablet = makeTablet();
      const here = await start('here', tablet);
      here.clock.atMs = atMs;
      await here.station.takeDocuments([newer]);
      expect(isStopped(here)).toBe(true);
      expect(await erase(here)).toMatchObject({ ok: true });
      expect([isStopped(here), listWhy(here)]).toEqual([false, []]);
      expect(here.station.readLogs().has(UNJUDGED_LOG)).toBe(false);
      await here.station.takeDocuments([newer]);
      expect(isStopped(here)).toBe(false);
      await here.station.stopWriting();
      expect(isStopped(await startStation(tablet))).toBe(false);
    }
  });

  it('is not taken away by an erasing that nobody asked for, nor while somebody of the ticket is open', async () => {
    const { newer, atMs } = await tellStopped();
    const here = await start('here');
    here.clock.atMs = atMs;
    await here.station.takeDocuments([newer]);
    const kept = documentErased({ v: 1, ids: ['there0001'], atMs, by, code: 'keptLongEnough' });
    expect(await here.station.takeDocuments([kept])).toMatchObject({ ok: true });
    expect([isStopped(here), here.station.readLogs().has(UNJUDGED_LOG)]).toEqual([true, true]);
    await visit(here, 'QF');
    const asked = documentErased({ v: 1, ids: ['there0001'], atMs, by, code: 'sheAsked' });
    expect(await here.station.takeDocuments([asked])).toMatchObject({ value: { later: [asked.id] } });
    expect(isStopped(here)).toBe(true);
  });

  it('comes along with a backup, onto an empty tablet and beside clients, and once', async () => {
    const { newer, atMs } = await tellStopped();
    const old = await start('old0');
    old.clock.atMs = atMs;
    await old.station.takeDocuments([newer]);
    await visit(old, 'A.K.', callOff);
    const file = [...old.station.backUp()].join('');
    const empty = await startStation(makeTablet());
    const beside = await start('here');
    await visit(beside, 'B.B.', callOff);
    for (const each of [empty, beside]) {
      each.clock.atMs = old.clock.atMs;
      for (const _twice of [1, 2]) expect(await each.station.bringIn(file)).toMatchObject({ ok: true });
      expect(isStopped(each)).toBe(true);
      expect(each.station.readLogs().get(UNJUDGED_LOG)).toHaveLength(1);
    }
  });

  it('is refused as a whole where it cannot be written, and comes again', async () => {
    const { newer, atMs } = await tellStopped();
    let isFull = true;
    const here = await startStation(makeTablet(), undefined, ({ journal }) => ({
      journal: {
        ...journal,
        append: (name, from, lines) =>
          isFull && name === UNJUDGED_LOG
            ? Promise.resolve({ ok: false, error: { copy: 'journal', kind: 'quotaExceeded', detail: '' } })
            : journal.append(name, from, lines),
      },
    }));
    here.clock.atMs = atMs;
    expect(await here.station.takeDocuments([newer])).toEqual({ ok: false, error: 'notTaken' });
    isFull = false;
    expect(await here.station.takeDocuments([newer])).toMatchObject({ ok: true });
    expect(isStopped(here)).toBe(true);
  });
});

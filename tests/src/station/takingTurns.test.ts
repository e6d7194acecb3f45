import { describe, expect, it } from 'vitest';
import { endsIronedWet } from '../../../seeds/endsIronedWet';
import { salon } from '../../../seeds/salon';
import type { RawEvent } from '../../../shared/records/classify';
import { digest } from '../../../shared/records/documents/canonical';
import {
  documentConsultation,
  documentErased,
  type RecordDocument,
} from '../../../shared/records/documents/document';
import { listDocuments } from '../../../shared/records/documents/listDocuments';
import { refuse } from '../../../shared/result';
import { msPerHour } from '../../../shared/units/time';
import { inheritsStop, isStoppedElsewhere, listSpokenFor } from '../../../src/station/inheritsStop';
import { listHeld } from '../../../src/station/merging';
import { makeTablet } from '../storage/tablet';
import { play, type StationUnderTest, startStation, storyUpTo } from './stationUnderTest';

const by = 'Opal';
const minute = 60_000;
const hives: RawEvent = { type: 'ANSWERED', step: 'client', answers: { reactions: ['hives'] } };
const callOff: RawEvent = { type: 'CALLED_OFF', answers: { reason: 'noTime' } };

async function start(idBegins: string): Promise<StationUnderTest> {
  const under = await startStation(makeTablet(), undefined, undefined, undefined, idBegins);
  await under.station.saveSettings(by, salon);
  return under;
}

const visit = (under: StationUnderTest, ticket: string, ...raws: readonly RawEvent[]): Promise<string> =>
  play(under, [
    { afterMs: minute, by, raw: { type: 'OPENED', answers: { ticket, chair: '3' } } },
    ...raws.map((raw) => ({ afterMs: minute, by, raw })),
  ]);

/** Other clients of the same afternoon, who come in with the rest. */
async function visitMany(under: StationUnderTest): Promise<void> {
  for (let count = 0; count < 25; count += 1) await visit(under, `X${count}`, callOff);
}

async function putOn({ station, clock }: StationUnderTest, ticket: string): Promise<string> {
  const put = await station.putOnSkinTest(by, {
    ticket,
    method: 'makersMethod',
    site: 'behindEar',
    line: '',
    seen: 'notReadYet',
    putOnAtMs: clock.atMs,
  });
  if (!put.ok) throw new Error(put.error.kind);
  return put.value;
}

const read = ({ station }: StationUnderTest, id: string, seen: 'reaction' | 'nothing') =>
  station.changeSkinTest(id, by, { type: 'SKIN_TEST_READ', answers: { seen } });

/** What this station shares, the skin tests first. */
function share({ station }: StationUnderTest): readonly RecordDocument[] {
  const all = [...listDocuments(listHeld(station.readLogs()), station.readSettings())];
  return [...all].sort((one, other) => (one.kind === other.kind ? 0 : one.kind === 'skinTest' ? -1 : 1));
}

const turn = () => new Promise<void>((resolve) => setImmediate(resolve));

async function untilWritten({ station }: StationUnderTest, word: string): Promise<void> {
  while (!JSON.stringify([...station.readLogs()]).includes(word)) await turn();
}

const beforeStep = (type: string): number => endsIronedWet.steps.findIndex(({ raw }) => raw.type === type);
const ticketOf = ({ station }: StationUnderTest, id: string): string =>
  station.readState().open.get(id)?.record.ticket ?? '';

describe('what comes in while somebody works', () => {
  it('keeps a reaction that was just told, though nothing seen is tapped before the rest is in', async () => {
    const there = await start('there');
    const here = await start('here');
    const id = await play(here, storyUpTo('OPENED'));
    const test = await putOn(there, ticketOf(here, id));
    here.clock.atMs = there.clock.atMs + minute;
    await here.station.takeDocuments(share(there));
    there.clock.atMs += 49 * msPerHour;
    expect(await read(there, test, 'reaction')).toMatchObject({ ok: true });
    await visitMany(there);
    here.clock.atMs = there.clock.atMs + minute;
    const taking = here.station.takeDocuments(share(there));
    await untilWritten(here, '"reaction"');
    expect(await read(here, test, 'nothing')).toMatchObject({ ok: false });
    expect(await taking).toMatchObject({ ok: true });
    const { skinTests, open, notices } = here.station.readState();
    expect(skinTests.map(({ seen }) => seen)).toEqual(['reaction']);
    expect(open.get(id)?.record.skinTest?.seen).toBe('reaction');
    expect(notices).toEqual([]);
  });

  it('holds the next bowl by a stop that is written, before the rest is in', async () => {
    const at = beforeStep('BOWL_WEIGHED');
    const here = await start('here');
    const id = await play(here, endsIronedWet.steps.slice(0, at));
    const there = await start('there');
    there.clock.atMs = here.clock.atMs - 40 * minute;
    await visit(there, ticketOf(here, id), hives, callOff);
    there.clock.atMs -= 30 * minute;
    await visitMany(there);
    here.clock.atMs = Math.max(here.clock.atMs, there.clock.atMs) + minute;
    const first = share(there).filter(({ body }) => JSON.stringify(body).includes('hives'));
    const rest = share(there).filter((each) => !first.some(({ id: named }) => named === each.id));
    let isIn = false;
    const taking = here.station.takeDocuments([...first, ...rest]).then(() => {
      isIn = true;
    });
    await untilWritten(here, 'hives');
    const step = endsIronedWet.steps[at];
    const weighed = await here.station.submit(id, by, step?.raw ?? callOff);
    expect([weighed, isIn]).toEqual([refuse({ kind: 'stoppedElsewhere' }), false]);
    await taking;
  });

  it('is written to its month in one go, and shown once, however many of it stop somebody', async () => {
    const there = await start('there');
    for (let count = 0; count < 10; count += 1) await visit(there, `X${count}`, hives, callOff);
    const costs = [];
    for (const documents of [share(there).slice(0, 1), share(there)]) {
      let appended = 0;
      const here = await startStation(makeTablet(), undefined, ({ journal }) => ({
        journal: {
          ...journal,
          append: (...args) => {
            appended += 1;
            return journal.append(...args);
          },
        },
      }));
      here.clock.atMs = there.clock.atMs;
      const before = here.shown.times;
      appended = 0;
      expect(await here.station.takeDocuments(documents)).toMatchObject({ ok: true });
      expect(here.station.readState().closed).toHaveLength(documents.length);
      costs.push({ appended, shown: here.shown.times - before });
    }
    const [one, ten] = costs;
    expect(one).toMatchObject({ appended: 1 });
    expect(ten).toEqual(one);
  });

  it('lets whoever opens a client have her turn after each piece', async () => {
    const there = await start('there');
    await visitMany(there);
    const here = await start('here');
    here.clock.atMs = there.clock.atMs + minute;
    const inOrder: string[] = [];
    const taking = here.station.takeDocuments(share(there)).then(() => inOrder.push('all in'));
    const opened = here.station.open(by, { ticket: 'Q.F.', chair: '3' }).then(({ ok }) => {
      const closed = here.told.filter(({ name }) => name.startsWith('closed-')).length;
      inOrder.push(`opened ${ok} beside ${closed} of 25`);
    });
    await Promise.all([taking, opened]);
    expect(inOrder).toEqual(['opened true beside 10 of 25', 'all in']);
  });

  it('refuses no rinse, whenever it is tapped', async () => {
    const at = beforeStep('BOWL_RINSED');
    for (let wait = 0; wait < 12; wait += 1) {
      const here = await start('here');
      const id = await play(here, endsIronedWet.steps.slice(0, at));
      const there = await start('there');
      there.clock.atMs = here.clock.atMs - minute;
      await read(there, await putOn(there, ticketOf(here, id)), 'reaction');
      const step = endsIronedWet.steps[at];
      here.clock.atMs += step?.afterMs ?? 0;
      const taking = here.station.takeDocuments(share(there));
      for (let count = 0; count < wait; count += 1) await (count % 2 === 0 ? Promise.resolve() : turn());
      expect(await here.station.submit(id, by, step?.raw ?? callOff)).toMatchObject({ ok: true });
      await taking;
      expect(here.station.readState().notices).toEqual([]);
    }
  });

  it('stops whoever has a record that this edition cannot judge, until that is corrected', async () => {
    const there = await start('there');
    await visit(there, 'Q.F.', hives, callOff);
    const ofModel = (modelVersion: number) =>
      share(there).flatMap(({ kind, body }) =>
        kind === 'consultation'
          ? [
              documentConsultation({
                ...body,
                log: body.log.map((event) => ({ ...Object(event), modelVersion })),
              }),
            ]
          : [],
      );
    const newer = ofModel(99);
    const here = await start('here');
    here.clock.atMs = there.clock.atMs;
    const sitting = await visit(here, 'q f');
    expect(inheritsStop(here.station.readState(), 'QF')).toBe(false);
    await here.station.takeDocuments(newer);
    const record = here.station.readState().open.get(sitting)?.record;
    if (record === undefined) throw new Error('not open');
    const state = here.station.readState();
    expect([inheritsStop(state, 'QF'), isStoppedElsewhere(state, record)]).toEqual([true, true]);
    expect(inheritsStop(state, 'AK')).toBe(false);
    const [{ body } = { body: { id: '', log: [] } }] = newer;
    const unread = { record: body.id, stop: 'unread', entry: digest(body.log) };
    expect(listSpokenFor(state, record)).toEqual([unread]);
    // Another text of the same record is another stop, for which nobody spoke yet; the same one again is none.
    const [other = newer[0]] = ofModel(98);
    await here.station.takeDocuments([...newer, ...ofModel(98)]);
    expect(listSpokenFor(here.station.readState(), record)).toEqual([
      unread,
      { ...unread, entry: digest(other?.body.log) },
    ]);
  });
});

describe('an erasing that comes in', () => {
  const erasing = (id: string, atMs: number, code: string) =>
    documentErased({ v: 1, ids: [id], atMs, by, code });

  it('from a clock years ahead waits, and the stop stands', async () => {
    const here = await start('here');
    const id = await visit(here, 'S.T.', hives, callOff);
    const atMs = here.clock.atMs + 5 * 365 * 24 * msPerHour;
    const taken = await here.station.takeDocuments([erasing(id, atMs, 'sheAsked')]);
    expect(taken).toMatchObject({ ok: true, value: { later: [expect.stringMatching(/^erased:/)] } });
    expect(inheritsStop(here.station.readState(), 'S.T.')).toBe(true);
  });

  it('that she asked for goes through', async () => {
    const here = await start('here');
    const id = await visit(here, 'S.T.', hives, callOff);
    const taken = await here.station.takeDocuments([erasing(id, here.clock.atMs, 'sheAsked')]);
    expect(taken).toMatchObject({ ok: true, value: { later: [] } });
    expect(inheritsStop(here.station.readState(), 'S.T.')).toBe(false);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import { writeBackup } from '../../../shared/records/backupFile';
import type { RawEvent } from '../../../shared/records/classify';
import { documentErased, type RecordDocument } from '../../../shared/records/documents/document';
import { listDocuments } from '../../../shared/records/documents/listDocuments';
import type { EraseCode } from '../../../shared/records/tombstone';
import { msPerDay } from '../../../shared/units/time';
import { CLOSED, ERASED_LOG, SETTINGS_LOG } from '../../../src/station/logNames';
import { listHeld } from '../../../src/station/merging';
import type { Json } from '../../../src/storage/json';
import { makePower } from '../storage/power';
import { makeTablet, type Tablet } from '../storage/tablet';
import { play, type StationUnderTest, startAtMs, startStation } from './stationUnderTest';

const by = 'Opal';
const month = 31 * msPerDay;
const callOff: RawEvent = { type: 'CALLED_OFF', answers: { reason: 'noTime' } };
const hives: RawEvent = { type: 'ANSWERED', step: 'client', answers: { reactions: ['hives'] } };

/** A house that keeps its records for so many months. */
async function start(idBegins: string, keepMonths: number | null, tablet: Tablet = makeTablet()) {
  const under = await startStation(tablet, undefined, undefined, undefined, idBegins);
  await under.station.saveSettings(by, { ...salon, keepMonths });
  return under;
}

/** So many months after the beginning. */
const goTo = (under: StationUnderTest, months: number): void => {
  under.clock.atMs = startAtMs + months * month;
};
const visit = (under: StationUnderTest, ticket: string, ...raws: readonly RawEvent[]): Promise<string> =>
  play(under, [
    { afterMs: 1000, by, raw: { type: 'OPENED', answers: { ticket, chair: '3' } } },
    ...[...raws, callOff].map((raw) => ({ afterMs: 1000, by, raw })),
  ]);
const share = ({ station }: StationUnderTest) => [
  ...listDocuments(listHeld(station.readLogs()), station.readSettings()),
];
const take = async (to: StationUnderTest, documents: readonly RecordDocument[]) => {
  const taken = await to.station.takeDocuments(documents);
  if (!taken.ok) throw new Error(taken.error);
  return taken.value;
};
const bring = async (to: StationUnderTest, from: StationUnderTest) => {
  const brought = await to.station.bringIn([...from.station.backUp()].join(''));
  if (!brought.ok) throw new Error(JSON.stringify(brought.error));
  return brought.value;
};
const idsOf = ({ station }: StationUnderTest) => station.readState().closed.map(({ id }) => id);

/** Two houses that know the same old record; the one that keeps for a year has erased it for its age. */
async function erasedByOne(tablet: Tablet = makeTablet()) {
  const short = await start('short', 12);
  const long = await start('long', 36, tablet);
  const id = await visit(short, 'Q.F.');
  goTo(long, 13);
  goTo(short, 13);
  await visit(long, 'A.K.');
  await take(long, share(short));
  expect(await short.station.erase(by, { ids: [id], code: 'keptLongEnough' })).toMatchObject({ ok: true });
  return { short, long, id };
}

describe('what another house erased for its age', () => {
  it.each([
    ['shared', async (to: StationUnderTest, from: StationUnderTest) => void (await take(to, share(from)))],
    ['brought by hand', async (to: StationUnderTest, from: StationUnderTest) => void (await bring(to, from))],
  ])(
    '%s, stays here until it is past this house’s own time, and comes back to the other by no way',
    async (_, exchange) => {
      const tablet = makeTablet();
      const { short, long, id } = await erasedByOne(tablet);
      await exchange(long, short);
      expect(idsOf(long)).toContain(id);
      // It is told on, under the name it has, and what it names is not offered.
      const erasings = share(short).filter(({ kind }) => kind === 'erased');
      expect(share(long)).toEqual(expect.arrayContaining(erasings));
      expect([long.station.isErased(id), long.station.isHeldBack(id)]).toEqual([false, true]);
      await exchange(short, long);
      expect(idsOf(short)).not.toContain(id);
      const again = await startStation(tablet, undefined, undefined, undefined, 'again');
      expect(idsOf(again)).toContain(id);
      expect(again.station.readState().notices).toEqual([]);
      goTo(again, 37);
      await visit(again, 'A.K.');
      expect(await again.station.eraseOverdue()).toMatchObject({ ok: true });
      expect(idsOf(again)).not.toContain(id);
      expect(again.station.isErased(id)).toBe(true);
      goTo(short, 38);
      await exchange(short, again);
      expect(idsOf(short)).not.toContain(id);
    },
  );

  it('goes at once where it is past this house’s own time too, whatever its settings say of going by itself', async () => {
    const { short, long, id } = await erasedByOne();
    const third = await start('third', 12);
    const held = await start('held', null);
    for (const station of [third, held]) {
      goTo(station, 13);
      await visit(station, 'A.K.');
      await take(station, share(long));
      expect(idsOf(station)).toContain(id);
      await take(station, share(short));
    }
    expect([idsOf(third).includes(id), idsOf(held).includes(id)]).toEqual([false, true]);
    expect(third.station.readState().erasings.tombstones).toMatchObject([
      { ids: [id], by, code: 'keptLongEnough', atMs: third.clock.atMs },
    ]);
  });

  it('goes at once where she asked for it, though it is kept here', async () => {
    const { short, long, id } = await erasedByOne();
    const asked = documentErased({ v: 1, ids: [id], atMs: short.clock.atMs, by, code: 'sheAsked' });
    await take(long, share(short));
    await take(long, [asked]);
    expect(idsOf(long)).not.toContain(id);
  });

  it('is finished by the next start, wherever the power went', async () => {
    const { short, long, id } = await erasedByOne();
    const documents = share(long);
    const erasings = share(short).filter(({ kind }) => kind === 'erased');
    const lived = async (tablet: Tablet, power = makePower()) => {
      const under = await startStation(tablet, power, undefined, startAtMs + 13 * month, 'third');
      await under.station.saveSettings(by, { ...salon, keepMonths: 12 });
      const own = await visit(under, 'O.W.');
      await take(under, documents);
      return { under, own };
    };
    const counting = makePower();
    await lived(makeTablet(), counting);
    const before = counting.count();
    const seen = { unheard: 0, half: 0, whole: 0 };
    for (let after = 0; after < 40; after += 1) {
      const tablet = makeTablet();
      const { under, own } = await lived(tablet, makePower(before + after));
      await under.station.takeDocuments(erasings);
      const isWhole = under.station.isErased(id) && under.station.readState().erasings.unfinished === 0;
      const again = await startStation(tablet, undefined, undefined, startAtMs + 13 * month + 1, 'again');
      const isKnown = again.station.isHeldBack(id);
      // Not a word of it, or all of it: nothing else is ever gone, and nothing is left half erased.
      expect(idsOf(again).includes(id), `cut at ${after}`).toBe(!isKnown);
      expect(idsOf(again)).toContain(own);
      expect(again.station.readState()).toMatchObject({ erasings: { unfinished: 0 } });
      seen[isWhole ? 'whole' : isKnown ? 'half' : 'unheard'] += 1;
      if (seen.whole > 2) break;
    }
    console.info(`cut in the midst of it: ${JSON.stringify(seen)}`);
    expect(seen.unheard).toBeGreaterThan(0);
    expect(seen.half).toBeGreaterThan(2);
    expect(seen.whole).toBeGreaterThan(2);
  }, 60_000);

  it('from a clock years ahead waits, and keeps no record from coming in', async () => {
    const { long, id } = await erasedByOne();
    const third = await start('third', 12);
    goTo(third, 13);
    await visit(third, 'A.K.');
    const atMs = third.clock.atMs + 60 * month;
    const ahead = documentErased({ v: 1, ids: [id], atMs, by, code: 'keptLongEnough' });
    expect(await take(third, [ahead, ...share(long)])).toEqual({ refused: [], later: [ahead.id] });
    expect([idsOf(third).includes(id), third.station.isErased(id)]).toEqual([true, false]);
  });

  it('takes no stop that stands, however old it is', async () => {
    const here = await start('here', 12);
    const id = await visit(here, 'S.T.', hives);
    goTo(here, 14);
    await visit(here, 'A.K.');
    const told = documentErased({ v: 1, ids: [id], atMs: here.clock.atMs, by, code: 'keptLongEnough' });
    expect(await take(here, [told])).toEqual({ refused: [], later: [] });
    expect(idsOf(here)).toContain(id);
  });

  it('comes to the same in whatever order records and erasings come in, by whatever way, however often', async () => {
    const there = await start('there', null);
    const ids: string[] = [];
    for (const months of [0, 10, 20, 25, 30, 37]) {
      goTo(there, months);
      ids.push(await visit(there, `T.${months}`));
    }
    const months = [...there.station.readLogs()].filter(([name]) => name.startsWith(CLOSED));
    const records = share(there);
    const settings = there.station.readLogs().get(SETTINGS_LOG) ?? [];
    const code = fc.constantFrom<EraseCode>('keptLongEnough', 'keptLongEnough', 'sheAsked', 'wrongClient');
    const named = fc.uniqueArray(fc.nat(ids.length - 1), { minLength: 1, maxLength: 3 });
    const drawn = fc.record({
      erasings: fc.array(fc.tuple(code, named), { minLength: 1, maxLength: 3 }),
      pieces: fc.array(fc.tuple(fc.nat(255), fc.nat(7), fc.boolean()), { maxLength: 4 }),
      keepMonths: fc.constantFrom(12, 24, null),
    });
    const seen = { kept: 0, gone: 0 };
    await fc.assert(
      fc.asyncProperty(drawn, async ({ erasings, pieces, keepMonths }) => {
        const tombstones = erasings.map(([why, at], index) => {
          const ids_ = at.map((each) => ids[each] ?? '');
          return { v: 1, ids: ids_, atMs: startAtMs + 37 * month + index, by, code: why };
        });
        const tablet = makeTablet();
        const here = await start('here', keepMonths, tablet);
        goTo(here, 38);
        const own = await visit(here, 'O.W.');
        const isIn = (mask: number, index: number) => Math.floor(mask / 2 ** index) % 2 === 1;
        // Whatever is drawn, at last all of it.
        for (const [recordMask, erasedMask, byHand] of [...pieces, [255, 7, false] as const]) {
          const some = tombstones.filter((_each, index) => isIn(erasedMask, index));
          if (!byHand) {
            const part = records.filter((_each, index) => isIn(recordMask, index));
            await take(here, [...some.map((each) => documentErased(each)), ...part]);
            continue;
          }
          const logs = new Map<string, readonly Json[]>([
            [SETTINGS_LOG, settings],
            ...months.filter((_each, index) => isIn(recordMask, index)),
            [ERASED_LOG, some],
          ]);
          const file = [...writeBackup(logs, { madeAtMs: here.clock.atMs, isDemo: false })].join('');
          expect(await here.station.bringIn(file)).toMatchObject({ ok: true });
        }
        const isPast = (index: number) =>
          keepMonths !== null && 38 - ([0, 10, 20, 25, 30, 37][index] ?? 0) > keepMonths;
        const isNamed = (index: number, isForAge: boolean) =>
          erasings.some(([why, at]) => (why === 'keptLongEnough') === isForAge && at.includes(index));
        const expected = ids.filter(
          (_id, index) => !isNamed(index, false) && !(isNamed(index, true) && isPast(index)),
        );
        expect([...idsOf(here)].sort()).toEqual([...expected, own].sort());
        const again = await startStation(tablet, undefined, undefined, undefined, 'again');
        expect([...idsOf(again)].sort()).toEqual([...expected, own].sort());
        expect(again.station.readState()).toMatchObject({ notices: [], erasings: { unfinished: 0 } });
        seen.kept += ids.filter((_id, index) => isNamed(index, true) && !isPast(index)).length;
        seen.gone += ids.length - expected.length;
      }),
      { numRuns: 40, seed: 20_261_127 },
    );
    console.info(`erased for age: ${JSON.stringify(seen)}`);
    expect(seen.kept).toBeGreaterThan(20);
    expect(seen.gone).toBeGreaterThan(20);
  }, 120_000);
});

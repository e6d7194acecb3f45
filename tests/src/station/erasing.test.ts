import { describe, expect, it } from 'vitest';
import { endsIronedWet } from '../../../seeds/endsIronedWet';
import { salon } from '../../../seeds/salon';
import type { StoryStep } from '../../../seeds/story';
import { refuse } from '../../../shared/result';
import { msPerDay } from '../../../shared/units/time';
import { ERASED_LOG } from '../../../src/station/logNames';
import { makePower } from '../storage/power';
import { makeTablet, readEverything, type Tablet } from '../storage/tablet';
import { play, startAtMs, startStation } from './stationUnderTest';

const as =
  (ticket: string, chair: string) =>
  (step: StoryStep): StoryStep =>
    step.raw.type === 'OPENED'
      ? { ...step, raw: { ...step.raw, answers: { ...step.raw.answers, ticket, chair } } }
      : step;

/** She sits down. */
const opening = endsIronedWet.steps.slice(0, 1);
/** The same with the skin test that is on record already. */
const withoutTest = endsIronedWet.steps.filter(({ raw }) => raw.type !== 'SKIN_TEST_NOTED');

/** Three who came and went, Z.Z. twice, and her skin test. */
async function makeSalon(
  tablet: Tablet,
  ...given: Parameters<typeof startStation> extends [unknown, ...infer R] ? R : never
) {
  const under = await startStation(tablet, ...given);
  await under.station.saveSettings('Opal', salon);
  await play(under, endsIronedWet.steps.map(as('A.A.', '2')));
  await play(under, endsIronedWet.steps.map(as('Z.Z.', '3')));
  await play(under, withoutTest.map(as('zz', '4')));
  return under;
}

const idsOf = ({ station }: Awaited<ReturnType<typeof startStation>>, key: string) => {
  const { closed, skinTests } = station.readState();
  return [...closed, ...skinTests].filter(({ ticketKey }) => ticketKey === key).map(({ id }) => id);
};

describe('erasing what is kept of a ticket', () => {
  it('takes all of it out of both copies, and leaves who did it, when and why, without her initials', async () => {
    const tablet = makeTablet();
    const under = await makeSalon(tablet);
    const ids = idsOf(under, 'ZZ');
    expect(ids.length).toBeGreaterThanOrEqual(2);
    const others = idsOf(under, 'AA');
    expect(await readEverything(tablet)).toMatch(/Z\.Z\.|"zz"/);
    expect(await under.station.erase('Opal', { ids, code: 'sheAsked' })).toMatchObject({ ok: true });
    expect(idsOf(under, 'ZZ')).toEqual([]);
    expect(idsOf(under, 'AA')).toEqual(others);
    const left = await readEverything(tablet);
    expect(left).not.toMatch(/Z\.Z\.|"zz"|"ZZ"/);
    expect(left).toContain('A.A.');
    const [tombstone] = under.station.readLogs().get(ERASED_LOG) ?? [];
    expect(tombstone).toEqual({ v: 1, ids, atMs: under.clock.atMs, by: 'Opal', code: 'sheAsked' });
    const again = await startStation(tablet);
    expect(again.station.readState().notices).toEqual([]);
    expect(again.station.readState().erasings).toMatchObject({ unfinished: 0, tombstones: [{ ids }] });
    expect(idsOf(again, 'AA')).toEqual(others);
  });

  it('lets the month grow on', async () => {
    const tablet = makeTablet();
    const under = await makeSalon(tablet);
    await under.station.erase('Opal', { ids: idsOf(under, 'ZZ'), code: 'sheAsked' });
    await play(under, endsIronedWet.steps.map(as('B.B.', '5')));
    const again = await startStation(tablet);
    expect(again.station.readState().closed.map(({ ticketKey }) => ticketKey)).toEqual(['AA', 'BB']);
    expect(again.station.readState().notices).toEqual([]);
  });

  it('is refused while somebody of the ticket is open, unnamed, of nothing, and of what is not here', async () => {
    const under = await makeSalon(makeTablet());
    const ids = idsOf(under, 'ZZ');
    const before = JSON.stringify([...under.station.readLogs()]);
    await expect(under.station.erase('', { ids, code: 'sheAsked' })).resolves.toMatchObject({ ok: false });
    await expect(under.station.erase('Opal', { ids: [], code: 'sheAsked' })).resolves.toMatchObject({
      ok: false,
    });
    await expect(
      under.station.erase('Opal', { ids: [...ids, 'nobody'], code: 'sheAsked' }),
    ).resolves.toMatchObject({ ok: false });
    expect(JSON.stringify([...under.station.readLogs()])).toBe(before);
    await play(under, opening.map(as('z z', '6')));
    expect(await under.station.erase('Opal', { ids, code: 'sheAsked' })).toEqual(
      refuse({ kind: 'ticketOpen' }),
    );
    expect(idsOf(under, 'ZZ')).toEqual(ids);
  });

  it('is all or nothing wherever the power fails, and never comes back once its tombstone stands', async () => {
    const seen = { before: 0, after: 0 };
    for (let failsAfter = 0; failsAfter < 14; failsAfter += 1) {
      const tablet = makeTablet();
      const counting = makePower();
      const first = await makeSalon(tablet);
      const ids = idsOf(first, 'ZZ');
      await first.station.stopWriting();
      const starting = await startStation(tablet, counting);
      await starting.station.stopWriting();
      const { station } = await startStation(
        tablet,
        makePower(counting.count() + failsAfter, failsAfter * 7),
      );
      const done = await station.erase('Opal', { ids, code: 'sheAsked' });
      const again = await startStation(tablet);
      const about = `${failsAfter} steps in`;
      const isErased = again.station.readState().erasings.tombstones.length > 0;
      expect(idsOf(again, 'ZZ'), about).toEqual(isErased ? [] : ids);
      expect(idsOf(again, 'AA').length, about).toBeGreaterThan(0);
      if (done.ok) expect(isErased, about).toBe(true);
      if (isErased) expect(await readEverything(tablet), about).not.toMatch(/Z\.Z\.|"zz"|"ZZ"/);
      expect(again.station.readState().erasings.unfinished, about).toBe(0);
      seen[isErased ? 'after' : 'before'] += 1;
    }
    expect(seen.before).toBeGreaterThan(0);
    expect(seen.after).toBeGreaterThan(5);
  });

  it('on a full tablet is said to be unfinished, shows nothing of her, and is finished by doing it again', async () => {
    const tablet = makeTablet();
    let isFull = false;
    const full = { copy: 'journal', kind: 'quotaExceeded', detail: 'no room' } as const;
    const under = await makeSalon(tablet, undefined, ({ journal }) => ({
      journal: {
        ...journal,
        prepare: async (...given) => (isFull ? refuse(full) : journal.prepare(...given)),
      },
    }));
    isFull = true;
    const erased = await under.station.erase('Opal', { ids: idsOf(under, 'ZZ'), code: 'sheAsked' });
    expect(erased).toMatchObject({
      ok: false,
      error: { kind: 'eraseUnfinished', failure: { kind: 'quotaExceeded' } },
    });
    expect(idsOf(under, 'ZZ')).toEqual([]);
    expect(under.station.readState().erasings.unfinished).toBeGreaterThan(0);
    expect([...under.station.backUp()].join('')).not.toMatch(/Z\.Z\.|"zz"|"ZZ"/);
    expect(await readEverything(tablet)).toContain('Z.Z.');
    // What closes in the meantime is kept.
    await play(under, endsIronedWet.steps.map(as('B.B.', '5')));
    isFull = false;
    expect(await under.station.finishErasing()).toMatchObject({ ok: true });
    expect(under.station.readState().erasings.unfinished).toBe(0);
    expect(await readEverything(tablet)).not.toMatch(/Z\.Z\.|"zz"|"ZZ"/);
    const again = await startStation(tablet);
    expect(again.station.readState().closed.map(({ ticketKey }) => ticketKey)).toEqual(['AA', 'BB']);
  });
});

describe('what is past the time it is kept for', () => {
  const past = startAtMs + 37 * 31 * msPerDay;
  const years = async (tablet: Tablet, erasesByItself: boolean) => {
    const first = await makeSalon(tablet);
    await first.station.saveSettings('Juno', { ...salon, erasesByItself });
    await first.station.stopWriting();
    return startStation(tablet, undefined, undefined, past, 'later');
  };

  it('stays until somebody holds, unless the owner chose otherwise', async () => {
    const { station } = await years(makeTablet(), false);
    await station.eraseOverdue();
    expect(station.readState().closed).toHaveLength(3);
  });

  it('stays on a station that wrote nothing for more than a month: its clock may be wrong', async () => {
    const { station } = await years(makeTablet(), true);
    await station.eraseOverdue();
    expect(station.readState().closed).toHaveLength(3);
  });

  it('goes by itself where the owner chose so, in her name, but for what belongs to somebody who is open', async () => {
    const tablet = makeTablet();
    const under = await years(tablet, true);
    await play(under, opening.map(as('Z.Z.', '2')));
    await under.station.eraseOverdue();
    const { closed, erasings } = under.station.readState();
    expect(closed.map(({ ticketKey }) => ticketKey)).toEqual(['ZZ', 'ZZ']);
    expect(erasings.tombstones).toMatchObject([{ by: 'Juno', code: 'keptLongEnough' }]);
  });
});

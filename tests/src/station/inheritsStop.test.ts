import { describe, expect, it } from 'vitest';
import { endsIronedWet } from '../../../seeds/endsIronedWet';
import type { RawEvent } from '../../../shared/records/classify';
import { digest } from '../../../shared/records/documents/canonical';
import { inheritsStop } from '../../../src/station/inheritsStop';
import { makeTablet } from '../storage/tablet';
import { play, type StationUnderTest, startSalon, startStation, storyUpTo } from './stationUnderTest';

const opal = 'Opal';
const minute = 60_000;

const hives: RawEvent = { type: 'ANSWERED', step: 'client', answers: { reactions: ['hives'] } };
const correct: RawEvent = {
  type: 'CORRECTED',
  answers: { answer: 'inherited', code: 'wrongClient', words: 'another Q.F.' },
};
const sayNo: RawEvent = { type: 'WE_SAID_NO', answers: { reason: 'notSafeToday' } };
const callOff: RawEvent = { type: 'CALLED_OFF', answers: { reason: 'noTime' } };
const weigh = endsIronedWet.steps.find(({ raw }) => raw.type === 'BOWL_WEIGHED')?.raw as RawEvent;

/** Plays these on a new consultation of the same ticket at a free chair, a minute apart; answers its id. */
const openAnd = (under: StationUnderTest, ...raws: readonly RawEvent[]): Promise<string> => {
  const taken = [...under.station.readState().open.values()].map(({ record }) => record.chair);
  const chair = [8, 7, 6, 5].find((each) => !taken.includes(each));
  const opened: RawEvent = { type: 'OPENED', answers: { ticket: 'Q.F.', chair: String(chair) } };
  return play(under, [
    { afterMs: 0, by: opal, raw: opened },
    ...raws.map((raw) => ({ afterMs: minute, by: opal, raw })),
  ]);
};

const then = (under: StationUnderTest, id: string, raw: RawEvent) => {
  under.clock.atMs += minute;
  return under.station.submit(id, opal, raw);
};

/** Does a consultation of the same ticket that is opened now inherit a stop? */
const opensStopped = async (under: StationUnderTest): Promise<boolean | undefined> => {
  const id = await openAnd(under);
  return under.station.readState().open.get(id)?.record.inheritedStop;
};

describe('a stop handed on from closed records', () => {
  it('stands until a later record of the ticket clears it by name', async () => {
    const under = await startSalon(makeTablet());
    await openAnd(under, hives, sayNo);
    await openAnd(under, callOff);
    await openAnd(under, correct, callOff);
    expect(
      under.station.readState().closed.map((each) => [each.hasStandingStop, each.hasClearedStop]),
    ).toEqual([
      [true, false],
      [true, false],
      [false, true],
    ]);
    expect(await opensStopped(under)).toBe(false);
  });

  it('stands again when she is stopped anew after that', async () => {
    const under = await startSalon(makeTablet());
    await openAnd(under, hives, sayNo);
    await openAnd(under, correct, callOff);
    await openAnd(under, hives, sayNo);
    expect(await opensStopped(under)).toBe(true);
  });

  it('is read in the order in which they were closed, also when the tablet’s clock was set back in between', async () => {
    const tablet = makeTablet();
    const under = await startSalon(tablet);
    await openAnd(under, hives, sayNo);
    await openAnd(under, correct, callOff);
    under.clock.atMs -= 60 * minute;
    await openAnd(under, hives, sayNo);
    const again = await startStation(tablet);
    again.clock.atMs = under.clock.atMs;
    expect(await opensStopped(again)).toBe(true);
    expect(await opensStopped(under)).toBe(true);
  });
});

describe('a named correction', () => {
  const speaksFor = (under: StationUnderTest, id: string) =>
    under.station
      .readState()
      .open.get(id)
      ?.record.corrections.map((each) => each.speaksFor);

  it('says which stops it lifts, open and closed, each by its record and name, whatever a screen sends', async () => {
    const under = await startSalon(makeTablet());
    const closed = await openAnd(under, hives, sayNo);
    const open = await openAnd(under, hives);
    const { station } = under;
    const log = station.readState().open.get(open)?.log ?? [];
    const spoken = [{ record: 'x', stop: 'y', entry: 'z' }];
    const forged = { ...correct, answers: { ...correct.answers, speaksFor: spoken } };
    const corrected = await openAnd(under, forged as RawEvent);
    const [before] = station.readState().closed;
    expect(speaksFor(under, corrected)).toEqual([
      [
        { record: closed, stop: 'client.reactions.hives', entry: digest(before?.log[1]) },
        { record: open, stop: 'inherited', entry: digest(log[0]) },
        { record: open, stop: 'client.reactions.hives', entry: digest(log[1]) },
      ],
    ]);
  });

  it('does not lift what the same record told after it', async () => {
    const under = await startSalon(makeTablet());
    const stopped = await openAnd(under, hives);
    await openAnd(under, correct, callOff);
    const more = { type: 'REACTION_SUSPECTED' } as const;
    await then(under, stopped, more);
    await then(under, stopped, { type: 'REACTION_RECORDED', answers: { signs: ['hives'] } });
    await then(under, stopped, { type: 'CARE_GIVEN', answers: { care: 'rinsedAndDoctor' } });
    expect(under.station.readState().open.size).toBe(0);
    expect(await opensStopped(under)).toBe(true);
  });

  it('of a model before 6 names none, and lifts what was closed here before it, as it did then', async () => {
    const under = await startSalon(makeTablet());
    await openAnd(under, hives, sayNo);
    await openAnd(under, correct, callOff);
    const { closed } = under.station.readState();
    const asBefore = closed.map((each) => ({
      ...each,
      log: JSON.parse(JSON.stringify(each.log), (name, value) =>
        name === 'speaksFor' ? undefined : name === 'modelVersion' ? 5 : value,
      ),
    }));
    const isStopped = (records: typeof closed) => inheritsStop({ open: new Map(), closed: records }, 'Q.F.');
    expect(isStopped(asBefore)).toBe(false);
    expect(isStopped([...asBefore].reverse())).toBe(true);
    const broughtIn = { atMs: 0, settings: [] };
    expect(isStopped(asBefore.map((each, at) => (at === 0 ? { ...each, broughtIn } : each)))).toBe(true);
    expect(isStopped(asBefore.map((each, at) => (at === 1 ? { ...each, broughtIn } : each)))).toBe(true);
    expect(isStopped(closed.map((each) => ({ ...each, broughtIn })).reverse())).toBe(false);
  });
});

describe('two open consultations of one ticket', () => {
  it('stop each other before the bowl: what one of them says reaches the other, and one started anew inherits it', async () => {
    const under = await startSalon(makeTablet());
    const first = await play(under, storyUpTo('DECIDED'));
    const second = await openAnd(under);
    await then(under, second, hives);
    expect(await then(under, first, weigh)).toMatchObject({ error: { kind: 'stoppedElsewhere' } });
    await then(under, first, callOff);
    expect(await opensStopped(under)).toBe(true);
  });

  it('keep a weighed bowl off the head, and let what is on it be rinsed', async () => {
    const under = await startSalon(makeTablet());
    const weighed = await play(under, storyUpTo('BOWL_WEIGHED'));
    const second = await openAnd(under, hives);
    const apply: RawEvent = { type: 'BOWL_APPLIED', answers: { zone: 'lengths', skinFirst: 'calm' } };
    expect(await then(under, weighed, apply)).toMatchObject({ error: { kind: 'stoppedElsewhere' } });
    expect(await then(under, weighed, { type: 'BOWL_THROWN', answers: { zone: 'lengths' } })).toMatchObject({
      ok: true,
    });
    await then(under, second, sayNo);
    const other = await startSalon(makeTablet());
    const on = await play(other, storyUpTo('BOWL_APPLIED'));
    await openAnd(other, hives);
    const rinse: RawEvent = { type: 'BOWL_RINSED', answers: { zone: 'lengths' } };
    expect(await then(other, on, rinse)).toMatchObject({ ok: true });
  });

  it('of another ticket stop nobody', async () => {
    const under = await startSalon(makeTablet());
    const first = await play(under, storyUpTo('DECIDED'));
    const other = await under.station.open(opal, { ticket: 'Q.G.', chair: '5' });
    await then(under, other.ok ? other.value : '', hives);
    expect(await then(under, first, weigh)).toMatchObject({ ok: true });
  });

  it('are told apart by a named correction, which speaks for what stood then and not for what comes later', async () => {
    const under = await startSalon(makeTablet());
    const clean = await openAnd(under);
    const stopped = await openAnd(under, hives);
    const corrected = await openAnd(under, correct);
    await play(under, storyUpTo('DECIDED').slice(1), corrected);
    const weighed = await then(under, corrected, weigh);
    expect(weighed).toMatchObject({ ok: true });
    await then(under, corrected, { type: 'BOWL_THROWN', answers: { zone: 'lengths' } });
    await then(under, stopped, sayNo);
    expect(await then(under, corrected, weigh)).toMatchObject({ ok: true });
    await then(under, corrected, { type: 'BOWL_THROWN', answers: { zone: 'lengths' } });
    await then(under, clean, hives);
    expect(await then(under, corrected, weigh)).toMatchObject({ error: { kind: 'stoppedElsewhere' } });
    await then(under, clean, sayNo);
    expect(await then(under, corrected, weigh)).toMatchObject({ error: { kind: 'stoppedElsewhere' } });
  });
});

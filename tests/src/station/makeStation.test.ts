import { describe, expect, it } from 'vitest';
import { endsIronedWet } from '../../../seeds/endsIronedWet';
import { salon } from '../../../seeds/salon';
import { parseClosedLog } from '../../../shared/records/closedRecord';
import { fold } from '../../../shared/records/reduce';
import { refuse } from '../../../shared/result';
import { makePower } from '../storage/power';
import { makeTablet } from '../storage/tablet';
import { play, startSalon, startStation, storyUpTo } from './stationUnderTest';

const opal = 'Opal';

describe('a station that writes', () => {
  it('keeps its first settings on a new tablet, so that every event names settings that are kept', async () => {
    const { station } = await startStation(makeTablet());
    expect(station.readState()).toMatchObject({ mode: 'writing', settings: { id: 0 }, notices: [] });
    expect(station.readLogs().get('settings')).toHaveLength(1);
  });

  it('shows a whole story again after a restart in the middle of it', async () => {
    const tablet = makeTablet();
    const before = await startSalon(tablet);
    const id = await play(before, storyUpTo('STRAND_STARTED'));
    const shown = before.station.readState().open.get(id);
    const after = await startStation(tablet);
    const again = after.station.readState().open.get(id);
    expect(again?.record).toStrictEqual(shown?.record);
    expect(again?.state.value).toStrictEqual(shown?.state.value);
    expect(again?.record.clocks[0]?.dueAtMs).toBe((again?.record.clocks[0]?.startedAtMs ?? 0) + 25 * 60_000);
  });

  it('takes up a bowl that was thrown away although the outcome it was weighed on was retracted afterwards', async () => {
    const tablet = makeTablet();
    const under = await startSalon(tablet);
    const id = await play(under, storyUpTo('BOWL_WEIGHED'));
    const zone = 'lengths';
    const wrong = { zone, code: 'wrongTap', words: 'the row above' };
    await play(
      under,
      [
        { afterMs: 1000, by: opal, raw: { type: 'BOWL_THROWN', answers: { zone } } },
        { afterMs: 1000, by: opal, raw: { type: 'REOPENED', answers: { step: 'decision' } } },
        { afterMs: 1000, by: opal, raw: { type: 'OUTCOME_RETRACTED', answers: wrong } },
      ],
      id,
    );
    const again = (await startStation(tablet)).station.readState();
    expect(again.notices).toStrictEqual([]);
    expect(again.open.get(id)?.record.bowls).toMatchObject([{ state: 'thrown', proof: { grade: 'sound' } }]);
    expect(again.open.get(id)?.record.strands[1]?.outcome).toBeNull();
  });

  it('closes a finished consultation into its month and empties its place', async () => {
    const tablet = makeTablet();
    const under = await startSalon(tablet);
    const id = await play(under, endsIronedWet.steps);
    expect(under.station.readState().open.size).toBe(0);
    expect(under.station.readState().closed).toMatchObject([{ id, how: 'done', hasStandingStop: false }]);
    expect([...under.station.readLogs().keys()].sort()).toStrictEqual([
      'closed-2026-03',
      'settings',
      'skintest-client0002',
    ]);
    expect(under.dropped).toStrictEqual([`open-${id}`]);
    const closed = (await startStation(tablet)).station.readState().closed[0];
    expect(fold(id, (closed && parseClosedLog(closed)) ?? []).ended?.how).toBe('done');
  });

  it('finishes closing when the power failed between the record and the open log', async () => {
    const last = endsIronedWet.steps.at(-1);
    if (last === undefined) throw new Error('the story has no end');
    let closed = 0;
    for (let step = 0; step < 12; step += 1) {
      const tablet = makeTablet();
      const under = await startSalon(tablet);
      const id = await play(under, endsIronedWet.steps.slice(0, -1));
      await under.station.stopWriting();
      const dying = await startStation(tablet, makePower(step));
      dying.clock.atMs = under.clock.atMs + last.afterMs;
      await dying.station.submit(id, opal, last.raw).catch(() => undefined);
      const again = (await startStation(tablet)).station.readState();
      expect(again.open.size + again.closed.length, `power failed at step ${step}`).toBe(1);
      closed += again.closed.length;
    }
    expect(closed).toBeGreaterThan(2);
    expect(closed).toBeLessThan(12);
  });

  it('takes nothing while it watches, and nothing for a consultation it does not know', async () => {
    const { station } = await startSalon(makeTablet());
    expect(await station.submit('nobody0000', opal, { type: 'FINISHED' })).toMatchObject({
      error: { kind: 'notNow' },
    });
    await station.stopWriting();
    expect(await station.open(opal, { ticket: 'A.B.', chair: '1' })).toMatchObject({
      error: { kind: 'notWriting' },
    });
  });

  it('writes what was tapped before it gave its place up, and nothing after', async () => {
    const tablet = makeTablet();
    const under = await startSalon(tablet);
    const id = await play(under, storyUpTo('OPENED'));
    const say = (length: string) =>
      under.station.submit(id, opal, { type: 'ANSWERED', step: 'client', answers: { length } });
    const taps = ['ear', 'chin', 'waist'].map(say);
    const stopping = under.station.stopWriting();
    const late = say('collarbone');
    await stopping;
    expect((await Promise.all(taps)).map(({ ok }) => ok)).toEqual([true, true, true]);
    expect(await late).toMatchObject({ error: { kind: 'notWriting' } });
    const again = (await startStation(tablet)).station.readState();
    expect(again.open.get(id)?.record.answers.client).toMatchObject({ length: 'waist' });
    expect(again.open.get(id)?.log).toHaveLength(4);
  });

  it('follows taps on one client in their order, however fast they come', async () => {
    const under = await startSalon(makeTablet());
    const id = await play(under, storyUpTo('STEP_CONFIRMED'));
    const levels = ['6', '6.5', '7', '7.5', '8'];
    const answers = (targetLevel: string) => ({ type: 'REOPENED', answers: { step: targetLevel } }) as const;
    await under.station.submit(id, opal, answers('client'));
    await Promise.all(
      levels.map((targetLevel) =>
        under.station.submit(id, opal, { type: 'ANSWERED', step: 'client', answers: { targetLevel } }),
      ),
    );
    const { log, record } = under.station.readState().open.get(id) ?? { log: [], record: null };
    expect(log.slice(-5).map(({ payload }) => payload)).toMatchObject(
      levels.map((level) => ({ answers: { targetLevel: Number(level) } })),
    );
    expect(record?.answers.client?.targetLevel).toBe(8);
  });

  it('tells other windows what it acknowledged, in order', async () => {
    const under = await startSalon(makeTablet());
    const id = await play(under, storyUpTo('STEP_CONFIRMED'));
    const mine = under.told.filter(({ name }) => name === `open-${id}`);
    expect(mine.map(({ seq }) => seq)).toStrictEqual(mine.map((_, index) => index));
    expect(mine).toHaveLength(storyUpTo('STEP_CONFIRMED').length);
  });
});

describe('settings', () => {
  it('are kept in every edition, and each event names the one it was judged under', async () => {
    const under = await startSalon(makeTablet());
    const id = await play(under, storyUpTo('OPENED'));
    await under.station.saveSettings(opal, { ...salon, profile: { ...salon.profile, ageLine: 18 } });
    await play(under, storyUpTo('ANSWERED').slice(1), id);
    const log = under.station.readState().open.get(id)?.log ?? [];
    expect(log.map(({ settingsId }) => settingsId)).toStrictEqual([1, 2]);
  });

  it('that are wrong are refused by the name of the field, and nothing is written', async () => {
    const { station } = await startSalon(makeTablet());
    const saved = await station.saveSettings(opal, { ...salon, altitudeM: 90_000 });
    expect(saved).toMatchObject({ ok: false, error: { kind: 'badSettings', path: 'altitudeM' } });
    expect(station.readState().settings).toStrictEqual({ id: 1, settings: salon, by: opal });
  });
});

describe('the same client again', () => {
  const stopped = [
    ...storyUpTo('OPENED'),
    {
      afterMs: 1000,
      by: opal,
      raw: { type: 'ANSWERED', step: 'client', answers: { reactions: ['hives'] } },
    },
  ] as const;

  it('inherits a stop that nobody corrected, however her ticket is typed', async () => {
    const under = await startSalon(makeTablet());
    const id = await play(under, stopped);
    await under.station.submit(id, opal, { type: 'WE_SAID_NO', answers: { reason: 'notSafeToday' } });
    const again = await under.station.open(opal, { ticket: 'q f', chair: '4' });
    const { record, state } = under.station.readState().open.get(again.ok ? again.value : '') ?? {};
    expect(record?.inheritedStop).toBe(true);
    expect(state?.matches({ open: { way: 'stopped' } })).toBe(true);
  });

  it('does not inherit from another ticket', async () => {
    const under = await startSalon(makeTablet());
    await play(under, stopped);
    const other = await under.station.open(opal, { ticket: 'Q.G.', chair: '4' });
    const { record } = under.station.readState().open.get(other.ok ? other.value : '') ?? {};
    expect(record?.inheritedStop).toBe(false);
  });
});

describe('the clock of the tablet', () => {
  it('set back two hours takes nothing until a person says so, and then keeps every clock as long as it was', async () => {
    const under = await startSalon(makeTablet());
    const id = await play(under, storyUpTo('STRAND_STARTED'));
    const before = under.station.readState().open.get(id)?.record.clocks[0];
    under.clock.atMs -= 2 * 3_600_000;
    const broke = { type: 'STRAND_BROKE', answers: { zone: 'ends' } } as const;
    expect(await under.station.submit(id, opal, broke)).toMatchObject({ error: { kind: 'clockWentBack' } });
    await under.station.correctClocks(opal, 0);
    const after = under.station.readState().open.get(id)?.record.clocks[0];
    expect(after?.dueAtMs).toBe((before?.dueAtMs ?? 0) - 2 * 3_600_000);
    expect(await under.station.submit(id, opal, broke)).toMatchObject({ ok: true });
  });
});

describe('a record that cannot be closed', () => {
  it('stays with its place, and is closed by another try', async () => {
    const tablet = makeTablet();
    let isFull = false;
    const under = await startSalon(tablet, ({ journal }) => ({
      journal: {
        ...journal,
        append: (...lines) =>
          isFull && lines[0].startsWith('closed-')
            ? Promise.resolve(refuse({ copy: 'journal', kind: 'quotaExceeded', detail: 'full' } as const))
            : journal.append(...lines),
      },
    }));
    const id = await play(under, endsIronedWet.steps.slice(0, -1));
    isFull = true;
    await play(under, endsIronedWet.steps.slice(-1), id);
    const held = under.station.readState();
    expect(held.open.get(id)?.record.ended?.how).toBe('done');
    expect(held.closed).toStrictEqual([]);
    expect(held.notices).toMatchObject([{ kind: 'notSaved', failure: { kind: 'quotaExceeded' } }]);
    expect(await under.station.finishClosing(id)).toMatchObject({ ok: false, error: { kind: 'notSaved' } });
    isFull = false;
    expect(await under.station.finishClosing(id)).toMatchObject({ ok: true });
    expect(under.station.readState()).toMatchObject({ closed: [{ id }] });
    expect(under.station.readState().open.size).toBe(0);
    expect(await under.station.finishClosing(id)).toMatchObject({ ok: true });
  });
});

describe('a window that lost its place', () => {
  it('writes what stood in line, says that nothing is written any more, and takes nothing', async () => {
    const under = await startSalon(makeTablet());
    const id = await play(under, storyUpTo('OPENED'));
    const tap = { type: 'ANSWERED', step: 'client', answers: { service: 'gloss' } } as const;
    const inLine = under.station.submit(id, opal, tap);
    await under.station.stopWriting('noStore');
    expect(await inLine).toMatchObject({ ok: true });
    expect(under.station.readState().mode).toBe('noStore');
    expect(await under.station.submit(id, opal, tap)).toMatchObject({ error: { kind: 'notWriting' } });
  });
});

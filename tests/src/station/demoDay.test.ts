import { describe, expect, it } from 'vitest';
import { tellDemoDay } from '../../../seeds/demoDay';
import { issuePermit } from '../../../shared/judgement/permit';
import { playDay } from '../../../src/station/demo/playDay';
import { makeStation } from '../../../src/station/makeStation';
import { makeTablet, switchOn } from '../storage/tablet';

const hour = 3_600_000;

async function play(nowMs: number) {
  let atMs = 0;
  let ids = 0;
  const tablet = makeTablet();
  const make = () =>
    makeStation({
      store: switchOn(tablet).store,
      now: () => atMs,
      makeId: () => {
        ids += 1;
        return `client${String(ids).padStart(4, '0')}`;
      },
      publish: () => undefined,
      onAcknowledged: () => undefined,
      onDropped: () => undefined,
    });
  const station = make();
  const day = tellDemoDay(nowMs);
  const played = await playDay(station, day, (next) => {
    atMs = next;
  });
  if (!played.ok) throw new Error(`${new Date(atMs).toISOString()}: ${JSON.stringify(played.error)}`);
  await station.stopWriting();
  const again = make();
  atMs = nowMs;
  await again.startWriting();
  return { day, state: again.readState() };
}

describe('the invented day', () => {
  const nowMs = Date.UTC(2026, 2, 3, 17, 30);

  it('is let through by judge and chart, tap by tap, and holds through a restart', async () => {
    const { day, state } = await play(nowMs);
    const where = new Map(
      [...state.open.values()].map(({ record, state: at }) => [
        record.ticket,
        record.parked !== null ? 'parked' : JSON.stringify(at.value),
      ]),
    );
    expect([...where.keys()].sort()).toEqual(
      ['A.H.', 'B.L.', 'C.E.', 'D.K.', 'E.V.', 'J.P.', 'M.S.', 'R.M.', 'T.A.'].sort(),
    );
    expect(where.get('D.K.')).toContain('processing');
    expect(where.get('J.P.')).toContain('hotTools');
    expect(where.get('R.M.')).toContain('decision');
    expect(where.get('B.L.')).toContain('stopped');
    expect(where.get('T.A.')).toContain('colourOn');
    expect(where.get('C.E.')).toContain('feelHair');
    expect(where.get('E.V.')).toContain('"mix"');
    expect([where.get('M.S.'), where.get('A.H.')]).toEqual(['parked', 'parked']);
    expect(state.closed.map(({ how }) => how).sort()).toEqual([
      'clientSaidNo',
      'done',
      'reaction',
      'weSaidNo',
    ]);
    expect(state.notices).toEqual([]);
    expect(state.settings.settings).toMatchObject({ staff: day.settings.staff });
  });

  it('has a strand and a head whose time is not up, and a bowl that may be weighed', async () => {
    const { state } = await play(nowMs);
    const byTicket = (ticket: string) =>
      [...state.open.values()].find(({ record }) => record.ticket === ticket)?.record;
    for (const ticket of ['D.K.', 'T.A.']) {
      const running = byTicket(ticket)?.clocks.filter(({ endedAtMs }) => endedAtMs === null) ?? [];
      expect(running).toHaveLength(1);
      expect(running[0]?.dueAtMs).toBeGreaterThan(nowMs + 3 * 60_000);
    }
    expect(byTicket('C.E.')?.dampSinceMs).not.toBeNull();
    const mixing = byTicket('E.V.');
    expect(mixing && issuePermit(mixing, 'lengths', state.settings.settings, nowMs).ok).toBe(true);
  });

  it('has skin tests that wait, are due and have lapsed', async () => {
    const { state } = await play(nowMs);
    const own = state.skinTests.filter(({ ticket }) => ['P.O.', 'S.Y.', 'K.N.'].includes(ticket));
    expect(own.map(({ putOnAtMs }) => Math.round((nowMs - putOnAtMs) / hour)).sort((a, b) => a - b)).toEqual([
      20,
      51,
      29 * 24,
    ]);
  });

  it.each([Date.UTC(2026, 0, 1, 3, 40), Date.UTC(2028, 1, 29, 12), Date.UTC(2026, 9, 25, 1, 30)])(
    'can be told at any time: %i, and nothing in it lies ahead',
    async (atMs) => {
      const { day, state } = await play(atMs);
      const last = Math.max(...day.taps.map((tap) => tap.atMs), ...day.skinTests.map((test) => test.atMs));
      expect(last).toBeLessThanOrEqual(atMs);
      expect(state.open.size).toBe(9);
    },
  );
});

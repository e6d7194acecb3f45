import { describe, expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import { makeTablet } from '../storage/tablet';
import { play, startSalon, startStation, storyUpTo } from './stationUnderTest';

const opal = 'Opal';
const sit = (chair: string, ticket = 'M.K.') => ({ ticket, chair });

describe('a chair', () => {
  it.each([
    ['0', { kind: 'fields' }],
    ['9', { kind: 'noSuchChair' }],
    ['30', { kind: 'noSuchChair' }],
  ])('%s of eight is refused, and nothing is written', async (chair, error) => {
    const { station } = await startSalon(makeTablet());
    expect(await station.open(opal, sit(chair))).toMatchObject({ ok: false, error });
    expect([...station.readLogs().keys()]).toStrictEqual(['settings']);
  });

  it('that the settings name is taken, the last one too', async () => {
    const { station } = await startSalon(makeTablet());
    expect(await station.open(opal, sit('8'))).toMatchObject({ ok: true });
    await station.saveSettings(opal, { ...salon, chairs: 9 });
    expect(await station.open(opal, sit('9', 'R.B.'))).toMatchObject({ ok: true });
  });

  it('where somebody sits is refused with whose it is, also after a restart', async () => {
    const tablet = makeTablet();
    await play(await startSalon(tablet), storyUpTo('OPENED'));
    const { station } = await startStation(tablet);
    expect(await station.open(opal, sit('3'))).toMatchObject({
      error: { kind: 'chairTaken', ticket: 'Q.F.' },
    });
    expect(station.readState().open.size).toBe(1);
  });

  it('is given once, however fast two of them are started', async () => {
    const { station } = await startSalon(makeTablet());
    const both = await Promise.all([station.open(opal, sit('2')), station.open(opal, sit('2', 'R.B.'))]);
    expect(both.map(({ ok }) => ok)).toEqual([true, false]);
    expect(both[1]).toMatchObject({ error: { kind: 'chairTaken', ticket: 'M.K.' } });
  });

  it('is free again once she is parked, and once she is closed', async () => {
    const under = await startSalon(makeTablet());
    const id = await play(under, storyUpTo('OPENED'));
    const untilAtMs = under.clock.atMs + 86_400_000;
    await under.station.submit(id, opal, { type: 'PARKED', answers: { untilAtMs } });
    const second = await under.station.open(opal, sit('3'));
    if (!second.ok) throw new Error(second.error.kind);
    await under.station.submit(second.value, opal, { type: 'CALLED_OFF', answers: { reason: 'noTime' } });
    expect(await under.station.open(opal, sit('3', 'R.B.'))).toMatchObject({ ok: true });
  });
});

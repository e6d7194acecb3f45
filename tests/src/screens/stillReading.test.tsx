import { cleanup } from '@solidjs/testing-library';
import { afterEach, describe, expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import { msPerDay } from '../../../shared/units/time';
import { keepMonths, makeHold } from '../station/months';
import { startAtMs } from '../station/stationUnderTest';
import { makeTablet } from '../storage/tablet';
import { showStation } from './stationOnTablet';

afterEach(cleanup);

/** A station of four months, of which none is read yet. */
async function showSlowly() {
  const tablet = makeTablet();
  await keepMonths(tablet);
  const { change, letRead } = makeHold();
  const shown = await showStation({
    tablet,
    change,
    settings: salon,
    atMs: startAtMs + msPerDay,
    isSlow: true,
  });
  const readAll = async () => {
    letRead();
    await expect.poll(() => shown.look('[data-past=read]')).not.toBeNull();
    await shown.settle();
  };
  return { ...shown, readAll };
}

const startSomebody = async (ticket: string) => {
  const shown = await showSlowly();
  await shown.tap('[data-act=start-here][data-chair="3"]');
  await shown.tap('[data-act=who-Opal]');
  await shown.type('ticket', ticket);
  await shown.tap('[data-act=open]');
  return shown;
};

describe('while the months before are still read', () => {
  it('a start says so, waits and goes on by itself', async () => {
    const shown = await startSomebody('Z.Z.');
    expect(shown.find('.step-actions').textContent).toContain(
      'Still looking through earlier clients, 0 of 4 months.She starts by herself as soon as that is done.',
    );
    expect(shown.station.readState().open.size).toBe(0);
    await shown.readAll();
    expect(shown.find('.kicker').textContent).toBe('Chair 3 · Z.Z.');
  });

  it('a start goes no further than the question whether she is the same client', async () => {
    const shown = await startSomebody('S.T.');
    expect(shown.look('[data-last-time]')).toBeNull();
    await shown.readAll();
    expect(shown.station.readState().open.size).toBe(0);
    expect(shown.look('[data-last-time]')).not.toBeNull();
    await shown.tap('[data-act=open]');
    expect([...shown.station.readState().open.values()].map(({ record }) => record.inheritedStop)).toEqual([
      true,
    ]);
  });

  it('a start that was changed meanwhile waits for another tap', async () => {
    const shown = await startSomebody('Z.Z.');
    await shown.type('ticket', 'Z.Y.');
    await shown.readAll();
    expect(shown.station.readState().open.size).toBe(0);
    await shown.tap('[data-act=open]');
    expect(shown.find('.kicker').textContent).toBe('Chair 3 · Z.Y.');
  });

  it('the day and what is kept open by themselves', async () => {
    const shown = await showSlowly();
    await shown.tap('[data-act=day]');
    expect(shown.find('main').dataset.step).toBe('stillReading');
    expect(shown.find('.still-reading').textContent).toBe(
      'Still looking through earlier clients, 0 of 4 months.',
    );
    await shown.readAll();
    expect(shown.find('main').dataset.step).toBe('day');
  });

  it('no backup can be made', async () => {
    const shown = await showSlowly();
    await shown.tap('[data-act=settings]');
    if (shown.look('[data-act=who-Opal]') !== null) await shown.tap('[data-act=who-Opal]');
    await shown.tap('[data-act=section-backup]');
    expect(shown.look('[data-act=save-station]')).toBeNull();
    expect(shown.look('.still-reading')).not.toBeNull();
    await shown.readAll();
    expect(shown.look('[data-act=save-station]')).not.toBeNull();
  });
});

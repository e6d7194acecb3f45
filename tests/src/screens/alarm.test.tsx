import { cleanup } from '@solidjs/testing-library';
import { afterEach, describe, expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import { makeDevice, untilStrand } from './alarmDevice';
import { showStation } from './stationOnTablet';

afterEach(cleanup);

const minute = 60_000;

const atChair5 = (step: (typeof untilStrand)[number] | undefined): (typeof untilStrand)[number] => {
  if (step?.raw.type !== 'OPENED') throw new Error('the story does not begin with her chair');
  return { ...step, afterMs: 0, raw: { ...step.raw, answers: { ticket: 'J.P.', chair: '5' } } };
};

/** Q.F. at chair 3 has a strand in the mix; nobody is named. */
async function showStrand() {
  const made = makeDevice();
  const shown = await showStation({ settings: salon, device: made.device });
  const id = await shown.play(untilStrand);
  const readRecord = () => shown.station.readState().open.get(id)?.record;
  const startedAtMs = readRecord()?.newestAtMs ?? 0;
  return { ...shown, ...made, id, startedAtMs, readRecord };
}

describe('the alarm', () => {
  it('is quiet while nothing is due, and calls from the look on', async () => {
    const shown = await showStrand();
    await shown.turnClock(shown.startedAtMs + 2 * minute - 1000);
    expect([shown.isCalling(), shown.look('[data-act=silence]')]).toEqual([false, null]);
    await shown.turnClock(shown.startedAtMs + 2 * minute);
    expect([shown.isCalling(), shown.look('[data-act=silence]')?.textContent]).toEqual([true, 'Silence']);
  });

  it('is silenced with one tap, whoever is there, and what is due stays due', async () => {
    const shown = await showStrand();
    await shown.turnClock(shown.startedAtMs + 3 * minute);
    await shown.tap('[data-act=silence]');
    expect(shown.isCalling()).toBe(false);
    expect(shown.look('[data-act=silence]')).toBeNull();
    expect(shown.find('[data-act=strip]').textContent).toContain('look now+1:00');
    const { log } = shown.station.readState().open.get(shown.id) ?? { log: [] };
    expect(log.at(-1)).toMatchObject({ type: 'ALARM_ACKNOWLEDGED', by: 'nobody chosen' });
    expect(shown.readRecord()?.clocks[0]?.acknowledgedAtMs).toBe(shown.startedAtMs + 3 * minute);
  });

  it('calls anew for what comes after that', async () => {
    const shown = await showStrand();
    await shown.turnClock(shown.startedAtMs + 3 * minute);
    await shown.tap('[data-act=silence]');
    await shown.turnClock(shown.startedAtMs + 5 * minute);
    expect(shown.isCalling()).toBe(true);
  });

  it('is heard by whoever opens her, and calls on her own screen', async () => {
    const shown = await showStrand();
    await shown.turnClock(shown.startedAtMs + 3 * minute);
    await shown.tap('[data-chair="3"]');
    expect(shown.find('main').dataset.step).toBe('processing');
    expect(shown.isCalling()).toBe(false);
    await shown.turnClock(shown.startedAtMs + 5 * minute);
    expect(shown.isCalling()).toBe(true);
    await shown.tap('footer [data-act=silence]');
    expect(shown.isCalling()).toBe(false);
  });

  it('calls for what is due after the clock was set back, whatever was silenced before', async () => {
    const shown = await showStrand();
    await shown.turnClock(shown.startedAtMs + 3 * minute);
    await shown.tap('[data-act=silence]');
    await shown.turnClock(shown.startedAtMs - 57 * minute);
    await shown.tap('[data-act=clock-is-right]');
    await shown.tap('[data-act=who-Opal]');
    expect(shown.readRecord()?.clocks[0]?.acknowledgedAtMs).toBe(shown.startedAtMs - 57 * minute);
    expect(shown.isCalling()).toBe(false);
    await shown.turnClock(shown.startedAtMs - 55 * minute);
    expect(shown.isCalling()).toBe(true);
  });

  it('is silenced in a dialog too', async () => {
    const shown = await showStrand();
    await shown.turnClock(shown.startedAtMs + 3 * minute);
    await shown.tap('[data-act=parked]');
    await shown.tap('dialog[open] [data-act=silence]');
    expect(shown.isCalling()).toBe(false);
  });

  it('never calls in a window that only watches', async () => {
    const shown = await showStrand();
    shown.station.watch(shown.station.readLogs());
    await shown.turnClock(shown.startedAtMs + 30 * minute);
    expect(shown.isCalling()).toBe(false);
    expect(shown.look('[data-act=silence]')).toBeNull();
  });

  it('calls where nothing can be written, and is silenced there by the tablet itself', async () => {
    const shown = await showStrand();
    await shown.station.stopWriting('noStore');
    await shown.turnClock(shown.startedAtMs + 3 * minute);
    expect(shown.isCalling()).toBe(true);
    await shown.tap('[data-act=silence]');
    expect(shown.isCalling()).toBe(false);
    expect(shown.readRecord()?.clocks[0]?.acknowledgedAtMs).toBeNull();
  });

  it('silenced over its end is as long silent from then on, written down or not', async () => {
    for (const mode of ['writing', 'noStore'] as const) {
      const shown = await showStrand();
      const dueAtMs = shown.readRecord()?.clocks[0]?.dueAtMs ?? 0;
      if (mode === 'noStore') await shown.station.stopWriting('noStore');
      const silencedAtMs = dueAtMs + 2.9 * minute;
      await shown.turnClock(silencedAtMs);
      await shown.tap('[data-act=silence]');
      const isCallingAfter = async (min: number) => {
        await shown.turnClock(silencedAtMs + min * minute);
        return shown.isCalling();
      };
      expect([await isCallingAfter(0.2), await isCallingAfter(2.99), await isCallingAfter(3)], mode).toEqual([
        false,
        false,
        true,
      ]);
      cleanup();
    }
  });

  it('is told of each client who calls, and of the same one when she calls anew', async () => {
    const shown = await showStrand();
    const [opened, ...rest] = untilStrand;
    await shown.play(
      rest.length === 0 ? [] : [atChair5(opened), ...rest.map((step) => ({ ...step, afterMs: 0 }))],
    );
    const second = [...shown.station.readState().open.values()].find(
      ({ record }) => record.chair === 5,
    )?.record;
    const keys = () => shown.all().map(({ key }) => key);
    await shown.turnClock((second?.newestAtMs ?? 0) + 2 * minute);
    const two = keys();
    expect(new Set(two).size).toBe(2);
    await shown.turnClock((second?.newestAtMs ?? 0) + 4 * minute);
    expect(keys()).toEqual(two);
    await shown.tap('[data-act=silence]');
    expect(keys()).toEqual([]);
    await shown.turnClock((second?.newestAtMs ?? 0) + 8 * minute);
    expect(keys().filter((key) => two.includes(key))).toEqual([]);
    expect(new Set(keys()).size).toBe(2);
  });
});

describe('the three calls', () => {
  const shape = (shown: Awaited<ReturnType<typeof showStrand>>) => [
    shown.calling()?.kind,
    shown.look('[data-act=strip] [data-shape]')?.dataset.shape,
    shown.look('.strip-whose strong')?.textContent,
  ];

  it('differ in sound, in shape and in word: a look, the end, and an overrun', async () => {
    const shown = await showStrand();
    await shown.turnClock(shown.startedAtMs + 2 * minute - 1000);
    expect(shape(shown)).toEqual([undefined, undefined, undefined]);
    await shown.turnClock(shown.startedAtMs + 2 * minute);
    expect(shape(shown)).toEqual(['look', 'look', 'Look due']);
    const dueAtMs = shown.readRecord()?.clocks[0]?.dueAtMs ?? 0;
    await shown.turnClock(dueAtMs);
    expect(shape(shown)).toEqual(['due', 'due', 'Due now']);
    await shown.turnClock(dueAtMs + 3 * minute);
    expect(shape(shown)).toEqual(['overrun', 'overrun', 'Overrun']);
  });

  it('keep shape and word when they are silenced', async () => {
    const shown = await showStrand();
    await shown.turnClock(shown.startedAtMs + 2 * minute);
    await shown.tap('[data-act=silence]');
    expect([shown.calling(), ...shape(shown).slice(1)]).toEqual([null, 'look', 'Look due']);
  });

  it('are spoken only where that is turned on, with the chair and neither ticket nor name', async () => {
    const quiet = await showStrand();
    await quiet.turnClock(quiet.startedAtMs + 2 * minute);
    expect([quiet.calling()?.line, quiet.language()]).toEqual([null, null]);
    const shown = await showStrand();
    await shown.station.saveSettings('Opal', { ...salon, spoken: true });
    await shown.turnClock(shown.startedAtMs + 2 * minute);
    expect([shown.calling()?.line, shown.language()]).toEqual(['Chair 3: look at the strand', 'en']);
    await shown.turnClock(shown.readRecord()?.clocks[0]?.dueAtMs ?? 0);
    expect(shown.calling()?.line).toBe('Chair 3: take the strand off');
  });

  it('are spoken in a language that is asked for once, not anew with each entry of anybody', async () => {
    const shown = await showStrand();
    await shown.station.saveSettings('Opal', { ...salon, spoken: true });
    const asked = [...shown.languages];
    await shown.turnClock(shown.startedAtMs + 2 * minute);
    await shown.tap('[data-act=silence]');
    await shown.tap('[data-chair="3"]');
    expect([asked, shown.languages]).toEqual([
      [null, 'en'],
      [null, 'en'],
    ]);
  });
});

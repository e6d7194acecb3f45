import { cleanup } from '@solidjs/testing-library';
import { createSignal } from 'solid-js';
import { afterEach, describe, expect, it } from 'vitest';
import { endsIronedWet } from '../../../seeds/endsIronedWet';
import { salon } from '../../../seeds/salon';
import type { TabletInUse } from '../../../src/tablet/createTablet';
import { showStation } from './stationOnTablet';

afterEach(cleanup);

const minute = 60_000;
const untilStrand = endsIronedWet.steps.slice(
  0,
  endsIronedWet.steps.findIndex(({ raw }) => raw.type === 'STRAND_STARTED') + 1,
);

function makeDevice() {
  const [sound, setSound] = createSignal<ReturnType<TabletInUse['sound']>>('ready');
  const [screen, setScreen] = createSignal<ReturnType<TabletInUse['screen']>>('awake');
  const [page, setPage] = createSignal<ReturnType<TabletInUse['page']>>('kept');
  const [voice, setVoice] = createSignal<ReturnType<TabletInUse['voice']>>('off');
  const [soundCheck, setSoundCheck] = createSignal<ReturnType<TabletInUse['soundCheck']>>({
    answer: 'heard',
    atMs: endsIronedWet.startAtMs,
  });
  const calls: Parameters<TabletInUse['call']>[0][] = [];
  const languages: (string | null)[] = [];
  const tried: (string | null)[] = [];
  const device: TabletInUse = {
    sound,
    screen,
    page,
    voice,
    soundCheck,
    noteSoundCheck: (answer, atMs) => setSoundCheck({ answer, atMs }),
    tryOut: (line) => tried.push(line),
    call: (calling) => calls.push(calling),
    speakIn: (language) => languages.push(language),
  };
  return {
    device,
    setSound,
    setScreen,
    setPage,
    setVoice,
    setSoundCheck,
    tried,
    language: () => languages.at(-1),
    calling: () => calls.at(-1),
    isCalling: () => calls.at(-1) !== null,
  };
}

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
});

describe('what the tablet lacks', () => {
  it('is said at the bar in one line: the sound first, then the screen, then the network; and nothing once all is well', async () => {
    const made = makeDevice();
    made.setSound('asleep');
    made.setScreen('refused');
    made.setPage('refused');
    const shown = await showStation({ settings: salon, device: made.device });
    const says = () => shown.look('.tablet-note')?.textContent ?? null;
    expect(says()).toBe('No sound yet: touch the screen once.');
    made.setSound('unavailable');
    expect(says()).toContain('this browser gives none');
    made.setSound('ready');
    expect(says()).toContain('The screen may go dark: plug the tablet in');
    made.setScreen('awake');
    expect(says()).toBe('Without the network this page would not open again.');
    made.setPage('kept');
    expect(says()).toBeNull();
    expect(shown.find('h1').className).toBe('');
  });
});

describe('the sound at the start of the day', () => {
  async function showMorning() {
    const made = makeDevice();
    made.setSoundCheck(null);
    const shown = await showStation({ settings: salon, device: made.device });
    const line = () => shown.look('[data-act=sound-check]')?.textContent ?? null;
    return { ...shown, ...made, line };
  }

  it('is offered in one line, tried, and gone for the day once it was heard', async () => {
    const shown = await showMorning();
    expect(shown.line()).toBe('Try the sound');
    await shown.tap('[data-act=sound-check]');
    expect(shown.find('[data-act=sound-heard]')).toHaveProperty('disabled', true);
    await shown.tap('[data-act=try-sound]');
    expect(shown.tried).toEqual([null]);
    await shown.tap('[data-act=sound-heard]');
    expect([shown.line(), shown.look('dialog[open]')]).toEqual([null, null]);
    await shown.turnClock(endsIronedWet.startAtMs + 13 * 60 * minute);
    expect(shown.line()).toBe('Try the sound');
  });

  it('that was not heard says what to do, and stays told until it is', async () => {
    const shown = await showMorning();
    await shown.tap('[data-act=sound-check]');
    await shown.tap('[data-act=try-sound]');
    await shown.tap('[data-act=sound-not-heard]');
    expect(shown.find('dialog[open]').textContent).toContain('volume key');
    await shown.tap('[data-act=close-dialog]');
    expect(shown.line()).toBe('Not heard: turn it up, try again');
    await shown.tap('[data-act=sound-check]');
    await shown.tap('[data-act=try-sound]');
    await shown.tap('[data-act=sound-heard]');
    expect(shown.line()).toBeNull();
  });

  it('is put off with one tap, and not offered while there is no sound yet', async () => {
    const shown = await showMorning();
    shown.setSound('asleep');
    expect(shown.line()).toBeNull();
    shown.setSound('ready');
    await shown.tap('[data-act=sound-check]');
    await shown.tap('[data-act=sound-later]');
    expect(shown.line()).toBeNull();
  });

  it('waits while the alarm calls, and does not hide what the screen lacks', async () => {
    const made = makeDevice();
    made.setSoundCheck(null);
    made.setScreen('refused');
    const shown = await showStation({ settings: salon, device: made.device });
    expect(shown.find('.bar-notes').textContent).toContain('The screen may go dark');
    expect(shown.find('.bar-notes').textContent).toContain('Try the sound');
    const id = await shown.play(untilStrand);
    const startedAtMs = shown.station.readState().open.get(id)?.record.newestAtMs ?? 0;
    await shown.turnClock(startedAtMs + 2 * minute);
    expect(shown.look('[data-act=sound-check]')).toBeNull();
    await shown.tap('[data-act=silence]');
    expect(shown.look('[data-act=sound-check]')).not.toBeNull();
  });
});

describe('the spoken line', () => {
  it.each([
    ['noVoice', 'no voice of its own'],
    ['refused', 'the browser refused'],
    ['unavailable', 'cannot speak'],
  ] as const)('that is %s is told under “Sound and screen”', async (state, says) => {
    const made = makeDevice();
    made.setVoice(state);
    const shown = await showStation({ settings: salon, device: made.device });
    await shown.tap('[data-act=settings]');
    await shown.tap('[data-act=who-Opal]');
    await shown.tap('[data-act=section-tablet]');
    expect(shown.find('[data-voice]').textContent).toContain(says);
    expect(shown.find('[data-voice]').textContent).toContain('The pulses go on');
    await shown.tap('[data-act=try-sound]');
    expect(made.tried).toEqual(['This is how a chair is called.']);
  });
});

import { cleanup } from '@solidjs/testing-library';
import { afterEach, describe, expect, it } from 'vitest';
import { endsIronedWet } from '../../../seeds/endsIronedWet';
import { salon } from '../../../seeds/salon';
import { makeDevice, untilStrand } from './alarmDevice';
import { showStation } from './stationOnTablet';

afterEach(cleanup);

const minute = 60_000;

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
    for (const voice of ['refused', 'noVoice', 'unavailable'] as const) {
      made.setVoice(voice);
      expect(says()).toBe('No line is spoken on this tablet: the pulses call alone.');
    }
    made.setVoice('ready');
    expect(says()).toBe('Without the network this page would not open again.');
    made.setPage('kept');
    expect(says()).toBeNull();
    expect(shown.find('h1').className).toBe('');
  });

  it('is said on any screen by a line that was there before it', async () => {
    const made = makeDevice();
    const shown = await showStation({ settings: salon, device: made.device });
    const heard = shown.find('[data-heard=tablet]');
    expect([heard.getAttribute('role'), heard.textContent]).toEqual(['status', '']);
    await shown.tap('[data-act=day]');
    made.setScreen('refused');
    expect(shown.find('[data-heard=tablet]')).toBe(heard);
    expect(heard.textContent).toContain('The screen may go dark');
    made.setScreen('awake');
    expect(heard.textContent).toBe('');
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

  it('is not said to be heard where nothing was played, which is told', async () => {
    const shown = await showMorning();
    await shown.tap('[data-act=sound-check]');
    const told = shown.find('dialog[open] [role=status]');
    expect(told.textContent).toBe('');
    shown.setSounds(false);
    await shown.tap('[data-act=try-sound]');
    expect(shown.find('[data-act=sound-heard]')).toHaveProperty('disabled', true);
    expect(shown.find('[data-act=sound-not-heard]')).toHaveProperty('disabled', true);
    expect(shown.find('dialog[open] [role=status]')).toBe(told);
    expect(told.textContent).toBe('No sound came: the browser gave none. Try once more.');
    shown.setSounds(true);
    await shown.tap('[data-act=try-sound]');
    expect([told.textContent, shown.find('[data-act=sound-heard]')]).toEqual([
      '',
      expect.objectContaining({ disabled: false }),
    ]);
    await shown.tap('[data-act=sound-not-heard]');
    expect(told.textContent).toContain('volume key');
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

  it('and the pulses are tried there, and said not to have come where they did not', async () => {
    const made = makeDevice();
    const shown = await showStation({ settings: salon, device: made.device });
    await shown.tap('[data-act=settings]');
    await shown.tap('[data-act=who-Opal]');
    await shown.tap('[data-act=section-tablet]');
    const says = () => shown.find('[data-panel=tablet] [role=status]').textContent;
    expect(says()).toContain('Nothing heard?');
    made.setSounds(false);
    await shown.tap('[data-act=try-sound]');
    expect(says()).toContain('No sound came');
    made.setSounds(true);
    await shown.tap('[data-act=try-sound]');
    expect(says()).toContain('Nothing heard?');
  });
});

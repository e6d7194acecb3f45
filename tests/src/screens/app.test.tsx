import { cleanup } from '@solidjs/testing-library';
import { afterEach, describe, expect, it } from 'vitest';
import { endsIronedWet } from '../../../seeds/endsIronedWet';
import { salon } from '../../../seeds/salon';
import { defaultSettings } from '../../../shared/records/settings';
import { clientAnswers, type Shown, showStation, startClient } from './stationOnTablet';

afterEach(cleanup);

const hour = 3_600_000;

const isDisabled = (shown: Shown, act: string) =>
  (shown.find(`[data-act=${act}]`) as HTMLButtonElement).disabled;

const openTest = '[data-act=skin-test]';

/** From the line of the first step, or from that in what is more for her. */
const putOnNow = async (shown: Shown, within = ''): Promise<void> => {
  await shown.tap(`${within}${openTest}`);
  await shown.answer(['method', 'openApplication'], ['site', 'innerElbow']);
  await shown.tap('[data-act=skin-test-keep]');
};

describe('the station', () => {
  it('begins at the bar, whatever the address says', async () => {
    window.history.replaceState(null, '', '/consultation/client0001/mix');
    const shown = await showStation({ settings: salon });
    expect(shown.look('main.bar')).not.toBeNull();
    expect(shown.container.querySelectorAll('[data-act=start-here]')).toHaveLength(8);
  });

  it('asks once who is there before anything is entered', async () => {
    const shown = await showStation({ settings: salon });
    expect(shown.find('[data-act=who]').textContent).toBe('Tap your name');
    await shown.tap('[data-act=start]');
    expect(shown.look('[data-question=ticket]')).toBeNull();
    await shown.tap('[data-act=who-Juno]');
    expect(shown.look('[data-question=ticket]')).not.toBeNull();
    await shown.tap('[data-act=cancel]');
    expect(shown.find('[data-act=who]').textContent).toBe('Juno');
  });

  it('goes nowhere when nobody is named', async () => {
    const shown = await showStation({ settings: salon });
    await shown.tap('[data-act=start]');
    await shown.tap('dialog[open] [data-act=close-dialog]');
    expect(shown.look('main.bar')).not.toBeNull();
    expect(shown.find('[data-act=who]').textContent).toBe('Tap your name');
  });

  it('asks for a first name where none is kept, and keeps it', async () => {
    const shown = await showStation();
    await shown.tap('[data-act=start]');
    await shown.tap('[data-act=keep-name]');
    expect(shown.find('[data-question=name]').dataset.refused).toBe('empty');
    await shown.type('name', 'Wren');
    await shown.tap('[data-act=keep-name]');
    expect(shown.station.readState().settings.settings.staff).toEqual(['Wren']);
    expect(shown.look('[data-question=ticket]')).not.toBeNull();
  });

  it('takes a name that is not among those kept, and keeps it with them', async () => {
    const shown = await showStation({ settings: salon });
    await shown.tap('[data-act=who]');
    expect(shown.look('[data-question=name]')).toBeNull();
    await shown.tap('[data-act=name-not-here]');
    await shown.tap('[data-act=keep-name]');
    expect(shown.find('[data-question=name]').dataset.refused).toBe('empty');
    await shown.type('name', 'Maren');
    await shown.tap('[data-act=keep-name]');
    expect(shown.station.readState().settings.settings.staff).toEqual([...salon.staff, 'Maren']);
    expect(shown.find('[data-act=who]').textContent).toBe('Maren');
  });

  it('starts a client at the free place that was tapped', async () => {
    const shown = await startClient('J.P.');
    expect(shown.find('.kicker').textContent).toBe('Chair 3 · J.P.');
    await shown.tap('[data-act=bar]');
    expect(shown.find('[data-chair="3"] .place-ticket').textContent).toBe('3 · J.P.');
  });

  it.each(['', '   ', 'thirteen letters', 'a\u0007b'])(
    'does not start a client for the ticket %j',
    async (ticket) => {
      const shown = await startClient(ticket);
      expect(shown.station.readState().open.size).toBe(0);
      expect(shown.find('[data-question=ticket]').dataset.refused).toBeDefined();
      expect((shown.find('[data-question=ticket] input') as HTMLInputElement).value).toBe(ticket);
    },
  );

  it('says at the bar what was closed', async () => {
    const shown = await startClient();
    await shown.tap('[data-act=more-for-client]');
    await shown.tap('[data-act=way-end]');
    await shown.answer(['reason', 'noTime']);
    await shown.hold('[data-act=CALLED_OFF]');
    expect(shown.find('[data-ended]').textContent).toBe('Q.F.: called off. The record is kept.');
    expect(shown.station.readState().closed).toHaveLength(1);
  });

  it('does not close without a reason', async () => {
    const shown = await startClient();
    await shown.tap('[data-act=more-for-client]');
    await shown.tap('[data-act=way-end]');
    await shown.hold('[data-act=WE_SAID_NO]');
    expect(shown.station.readState().closed).toHaveLength(0);
    expect(shown.find('[data-question=reason]').dataset.refused).toBe('notAnswered');
  });

  it('parks her, lists her, and takes her up again', async () => {
    const shown = await startClient();
    await shown.tap('[data-act=more-for-client]');
    await shown.tap('[data-act=way-park]');
    await shown.answer(['untilAtMs', '2d']);
    await shown.tap('[data-act=park]');
    expect(shown.find('main').dataset.step).toBe('parked');
    await shown.tap('[data-act=bar]');
    expect(shown.find('[data-act=parked]').textContent).toBe('Parked 1');
    await shown.tap('[data-act=parked]');
    await shown.tap('[data-act=open-parked]');
    await shown.tap('[data-act=resume]');
    expect(shown.find('main').dataset.step).toBe('client');
  });

  it('shows the window that only watches without the ways to enter anything', async () => {
    const writer = await startClient();
    const logs = writer.station.readLogs();
    writer.unmount();
    const shown = await showStation({ settings: salon });
    shown.station.watch(logs);
    await shown.settle();
    expect(shown.find('[data-mode]').dataset.mode).toBe('watching');
    expect(shown.look('[data-act=start]')).toBeNull();
    await shown.tap('[data-chair="3"]');
    expect(shown.find('footer [data-line=only-watches]').textContent).toContain('This window cannot write.');
    expect((shown.find('fieldset.sheet-main') as HTMLFieldSetElement).disabled).toBe(true);
    expect(isDisabled(shown, 'next')).toBe(true);
    for (const way of ['bar', 'more-for-client']) expect(isDisabled(shown, way)).toBe(false);
    await shown.tap('[data-act=more-for-client]');
    expect(shown.find('dialog [data-line=only-watches]').textContent).toContain('cannot write');
    expect(isDisabled(shown, 'close-dialog')).toBe(false);
    for (const hold of shown.container.querySelectorAll<HTMLButtonElement>('.hold-button')) {
      expect(hold.disabled).toBe(true);
    }
    await shown.tap('[data-act=close-dialog]');
  });

  it.each([
    ['start', 'open', 'cancel'],
    ['settings', 'save-settings', 'bar'],
  ])('leaves only the way out of %s to a window that lost its place', async (way, write, out) => {
    const shown = await startClient();
    await shown.tap('[data-act=bar]');
    await shown.tap(`[data-act=${way}]`);
    expect(isDisabled(shown, write)).toBe(false);
    shown.station.watch(shown.station.readLogs());
    await shown.settle();
    expect([isDisabled(shown, write), isDisabled(shown, out)]).toEqual([true, false]);
    expect(shown.look('footer [data-line=only-watches]')).not.toBeNull();
    await shown.tap(`[data-act=${out}]`);
    expect(shown.look('main.bar')).not.toBeNull();
  });

  it('says a refusal that comes although nothing there could be tapped', async () => {
    const writer = await startClient();
    const logs = writer.station.readLogs();
    writer.unmount();
    const shown = await showStation({ settings: salon });
    shown.station.watch(logs);
    await shown.settle();
    await shown.tap('[data-chair="3"]');
    (shown.find('fieldset.sheet-main') as HTMLFieldSetElement).disabled = false;
    await shown.answer(['service', 'gloss']);
    expect(shown.find('[data-refusal]').dataset.refusal).toBe('notWriting');
  });

  it('names what it has to tell until somebody has read it', async () => {
    const shown = await showStation({ settings: salon });
    shown.station.note({
      kind: 'refusedLog',
      name: 'open-k3f9',
      ticket: 'R.M.',
      fault: { seq: 11, code: 'bowlWithoutOutcome' },
    });
    await shown.settle();
    expect(shown.find('.notice-bar').textContent).toContain('the consultation of R.M.');
    shown.station.note({ kind: 'refusedEntry', name: 'settings', seq: 3 });
    await shown.settle();
    expect(shown.find('.notice-bar').textContent).toContain(
      '2 notices Cannot be read: entry 4 of the settings',
    );
    await shown.tap('[data-act=read-notices]');
    await shown.tap('[data-act=dismiss]');
    await shown.tap('[data-act=dismiss]');
    expect(shown.look('.notice-bar')).toBeNull();
  });

  it('says that it asked for the place only while it waits for that answer', async () => {
    const writer = await startClient();
    const logs = writer.station.readLogs();
    writer.unmount();
    const shown = await showStation({ settings: salon });
    shown.station.watch(logs);
    await shown.settle();
    await shown.tap('[data-act=take-over]');
    expect(shown.find('[data-mode=watching]').textContent).toContain('Asked.');
    await shown.station.startWriting();
    await shown.settle();
    shown.station.watch(logs);
    await shown.settle();
    expect(shown.find('[data-mode=watching]').textContent).not.toContain('Asked.');
  });

  it('asks which clock is right when the tablet was set back', async () => {
    const shown = await startClient();
    await shown.turnClock(endsIronedWet.startAtMs - hour);
    expect(shown.look('[data-step=clockDoubt]')).not.toBeNull();
    await shown.tap('[data-act=clock-is-right]');
    expect(shown.find('main').dataset.step).toBe('client');
  });
});

describe('the skin test', () => {
  const findState = async (shown: Shown) => {
    if (shown.look('[data-skin-test]') === null) await shown.tap('[data-ledger=summary]');
    return shown.find('[data-skin-test]').dataset.skinTest;
  };
  const noted = ({ station }: Shown) => [...station.readState().open.values()][0]?.record.skinTest?.seen;

  it('is put on, waits, and is read when its time has come', async () => {
    const shown = await startClient();
    await shown.tap('[data-ledger=summary]');
    expect(await findState(shown)).toBe('missing');
    await putOnNow(shown);
    expect(await findState(shown)).toBe('waiting');
    await shown.tap(openTest);
    expect(shown.find('[data-panel=skin-test]').textContent).toContain('Left open, 45 min, inner elbow.');
    expect(shown.find('[data-panel=skin-test]').textContent).toContain('by Opal, under “Q.F.”');
    expect(shown.look('[data-act=skin-test-nothing]')).toBeNull();
    await shown.turnClock(endsIronedWet.startAtMs + 48 * hour);
    await shown.tap('[data-act=skin-test-nothing]');
    expect(await findState(shown)).toBe('clear');
    await shown.turnClock(endsIronedWet.startAtMs + 29 * 24 * hour);
    // Too old by then: the page asks for a new one.
    await shown.tap(openTest);
    expect(shown.look('[data-act=skin-test-keep]')).not.toBeNull();
  });

  it('that was put on earlier is noted with its time, not before it may be read', async () => {
    const shown = await startClient();
    await shown.tap(openTest);
    await shown.tap('[data-act=skin-test-earlier]');
    await shown.answer(['method', 'makersMethod'], ['site', 'behindEar']);
    await shown.answer(['putOnAtMs', '1d'], ['seen', 'nothing']);
    expect(shown.find('[data-ledger=putOnAtMs]').textContent).toContain('Monday, March 2, 05:30');
    await shown.tap('[data-act=skin-test-keep]');
    expect(shown.find('[data-refusal]').dataset.refusal).toBe('skinTestTooEarly');
    expect(noted(shown)).toBeUndefined();
    await shown.answer(['putOnAtMs', '2d']);
    await shown.tap('[data-act=skin-test-keep]');
    expect(await findState(shown)).toBe('clear');
  });

  it.each(['skin-test-put-on', 'skin-test-earlier'])(
    'has no answer chosen before it is said, at %s',
    async (act) => {
      const shown = await startClient();
      await shown.tap(openTest);
      if (act !== 'skin-test-put-on') await shown.tap(`[data-act=${act}]`);
      const panel = shown.find('.step-content');
      expect(panel.querySelectorAll('[aria-pressed=true]')).toHaveLength(0);
      expect(panel.querySelector('.time-said')).toBeNull();
      await shown.tap('[data-act=skin-test-keep]');
      const lines = [...panel.querySelectorAll<HTMLElement>('[data-ledger][data-refused]')];
      const asked = act === 'skin-test-put-on' ? [] : ['putOnAtMs', 'seen'];
      expect(lines.map(({ dataset }) => dataset.ledger)).toEqual([...asked, 'method', 'site']);
      expect(noted(shown)).toBeUndefined();
    },
  );

  it('that is noted is one line, and is taken back by name before it is asked anew', async () => {
    const shown = await startClient();
    await putOnNow(shown);
    await shown.tap(openTest);
    expect(shown.look('[data-question]')).toBeNull();
    await shown.tap('[data-act=skin-test-correct]');
    await shown.answer(['code', 'wrongTap']);
    await shown.type('words', 'It was the elbow');
    await shown.hold('[data-act=correct]');
    await shown.tap('[data-act=skin-test-cancel]');
    expect(await findState(shown)).toBe('missing');
    await shown.tap(openTest);
    expect(shown.look('[data-act=skin-test-correct]')).toBeNull();
    expect(shown.look('[data-act=skin-test-earlier]')).not.toBeNull();
  });

  it('that the mix will wait for is said on the first step, with the moment it is good from', async () => {
    const shown = await startClient();
    expect(shown.find('.later-on').textContent).toContain(
      'No skin test: no mix. Put on now, it can be read from Thursday, March 5, 05:30.',
    );
    await putOnNow(shown);
    await shown.turnClock(endsIronedWet.startAtMs + hour);
    expect(shown.find('.later-on').textContent).toContain(
      'no mix before it is read, from Thursday, March 5, 05:30.',
    );
    await shown.turnClock(endsIronedWet.startAtMs + 48 * hour);
    expect(shown.find('.later-on').textContent).toBe('The skin test is ready to be read.');
    await shown.tap(openTest);
    await shown.tap('[data-act=skin-test-nothing]');
    expect(shown.look('.later-on')).toBeNull();
  });

  it('stops her at once when it reacted', async () => {
    const shown = await startClient();
    await putOnNow(shown);
    await shown.tap(openTest);
    await shown.hold('[data-act=skin-test-reaction]');
    expect(shown.find('main').dataset.step).toBe('stopped');
    expect(shown.find('[data-rule]').dataset.rule).toBe('stop.skinTestPositive');
  });

  it('is not asked for where the local rules do not', async () => {
    const profile = { ...defaultSettings.profile, skinTestFor: [] };
    const shown = await showStation({ settings: { ...salon, profile } });
    await shown.tap('[data-act=start-here][data-chair="1"]');
    await shown.tap('[data-act=who-Opal]');
    await shown.type('ticket', 'D.K.');
    await shown.tap('[data-act=open]');
    await shown.answer(['service', 'gloss']);
    await shown.tap('[data-ledger=summary]');
    expect(await findState(shown)).toBe('notNeeded');
  });
});

describe('a stop', () => {
  const isStopped = (shown: Awaited<ReturnType<typeof startClient>>) =>
    shown.find('main').dataset.step === 'stopped';
  const option = '[data-question=reactions] [data-option=hives]';

  it('is not set by a tap, and set at once by a hold, with its reason', async () => {
    const shown = await startClient();
    await shown.answer(...clientAnswers);
    await shown.tap(option);
    expect(isStopped(shown)).toBe(false);
    await shown.hold(option);
    expect(isStopped(shown)).toBe(true);
    expect(shown.find('[data-rule]').dataset.rule).toBe('stop.persulfateReaction');
    expect(shown.find('[data-rule]').textContent).toContain('a named correction');
  });

  it('stands through a restart and in a new consultation for the same ticket', async () => {
    const first = await startClient();
    await first.hold(option);
    await first.tap('[data-act=end]');
    await first.answer(['reason', 'notSafeToday']);
    await first.hold('[data-act=WE_SAID_NO]');
    first.unmount();
    const second = await startClient('q f', first.tablet);
    expect(isStopped(second)).toBe(true);
    expect(second.find('[data-rule]').dataset.rule).toBe('stop.inherited');
  });

  it('asks which answer was wrong where two of them stopped her, and gives each its own reason', async () => {
    const shown = await startClient();
    await shown.hold(option);
    await shown.tap('[data-act=more-for-client]');
    await putOnNow(shown, 'dialog ');
    await shown.tap('[data-act=more-for-client]');
    await shown.tap(`dialog ${openTest}`);
    await shown.hold('[data-act=skin-test-reaction]');
    expect(shown.container.querySelectorAll('[data-rule]')).toHaveLength(2);
    await shown.tap('[data-act=correction]');
    await shown.answer(['code', 'misheard']);
    await shown.type('words', 'Her sister had hives');
    await shown.hold('[data-act=correct]');
    expect(shown.find('[data-question=answer]').dataset.refused).toBe('notAnswered');
    await shown.answer(['answer', 'client']);
    await shown.hold('[data-act=correct]');
    expect(await shown.readTyped('words')).toBe('');
    await shown.goTo('code');
    expect(shown.look('[data-question=code] [aria-pressed=true]')).toBeNull();
    await shown.tap('[data-act=cancel]');
    expect(shown.container.querySelectorAll('[data-rule]')).toHaveLength(1);
  });

  it('is lifted by a named, coded and worded correction alone', async () => {
    const shown = await startClient();
    await shown.hold(option);
    await shown.tap('[data-act=correction]');
    await shown.hold('[data-act=correct]');
    expect(isStopped(shown)).toBe(true);
    expect(shown.find('[data-question=code]').dataset.refused).toBe('notAnswered');
    expect(shown.find('[data-ledger=words]').dataset.refused).toBe('refused');
    await shown.answer(['code', 'wrongTap']);
    await shown.type('words', 'Meant the row above');
    await shown.hold('[data-act=correct]');
    expect(shown.find('main').dataset.step).toBe('client');
    await shown.goTo('reactions');
    expect(shown.find('[data-question=reactions] [aria-pressed]').getAttribute('aria-pressed')).toBe('false');
    const { record } = [...shown.station.readState().open.values()][0] ?? {};
    expect(record?.corrections).toMatchObject([{ answer: 'client', code: 'wrongTap', by: 'Opal' }]);
  });
});

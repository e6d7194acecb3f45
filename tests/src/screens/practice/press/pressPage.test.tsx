import { cleanup, fireEvent } from '@solidjs/testing-library';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { salon } from '../../../../../seeds/salon';
import type { Settings } from '../../../../../shared/records/settings';
import { makeTablet } from '../../../storage/tablet';
import { showStation } from '../../stationOnTablet';

afterEach(cleanup);

async function openPage(settings: Settings = salon) {
  const shown = await showStation({ tablet: makeTablet(), settings });
  await shown.tap('[data-act=day]');
  await shown.tap('[data-act=press]');
  const idle = () =>
    vi.waitFor(() => expect(shown.find('.press-seen').getAttribute('aria-busy')).toBe('false'));
  await vi.waitFor(() => shown.find('.press-seen'));
  await idle();
  const choose = async (selector: string) => {
    await shown.tap(selector);
    await idle();
  };
  const pick = (question: string, option: string) =>
    choose(`[data-question=${question}] [data-option="${option}"]`);
  const verdict = () => shown.find('[data-verdict]').dataset.verdict;
  const picture = () => shown.find('.press-picture').getAttribute('aria-label') ?? '';
  return { shown, choose, pick, verdict, picture, idle };
}
const celsius: Settings = { ...salon, units: { ...salon.units, temperature: 'C' } };

describe('what a press does', () => {
  it('begins with a thick section whose middle stays cool, and is hot through once it is fine', async () => {
    const { pick, verdict, shown } = await openPage();
    expect(verdict()).toBe('coolMiddle');
    await pick('section', '0.2');
    expect(verdict()).toBe('through');
    expect(shown.find('[role=status].press-told').textContent).toContain('Hot through after');
  });

  it('presses again up to four times, and begins anew with another section', async () => {
    const { choose, pick, picture, shown } = await openPage();
    const again = '[data-act=press-again]';
    for (const times of [2, 3, 4]) {
      await choose(again);
      expect(picture()).toContain(`pressed ${times} ×`);
    }
    expect(shown.find(again).hasAttribute('disabled')).toBe(true);
    await pick('wetness', 'wet');
    expect(picture()).toContain('pressed 1 ×');
    await choose(again);
    await choose('[data-act=press-anew]');
    expect(picture()).toContain('pressed 1 ×');
  });

  it('is set by buttons and by arrow keys, ten degrees each, never beyond what irons have', async () => {
    const { shown, choose, idle } = await openPage(celsius);
    const dial = shown.find('[role=slider]');
    const value = () => dial.getAttribute('aria-valuetext');
    expect(value()).toBe('190\u00a0°C');
    await choose('[data-act=hotter]');
    expect(value()).toBe('200\u00a0°C');
    fireEvent.keyDown(dial, { key: 'ArrowLeft' });
    fireEvent.keyDown(dial, { key: 'ArrowLeft' });
    expect(value()).toBe('180\u00a0°C');
    fireEvent.keyDown(dial, { key: 'End' });
    expect([value(), shown.find('[data-act=hotter]').hasAttribute('disabled')]).toEqual([
      '230\u00a0°C',
      true,
    ]);
    fireEvent.keyDown(dial, { key: 'Home' });
    await idle();
    expect([value(), shown.find('[data-act=cooler]').hasAttribute('disabled')]).toEqual([
      '120\u00a0°C',
      true,
    ]);
  });

  it('speaks in the station’s degrees, and boils at its height', async () => {
    const high = await openPage({ ...celsius, altitudeM: 2000 });
    expect(high.shown.find('[data-line=boils]').textContent).toBe('water boils 93\u00a0°C');
    cleanup();
    const low = await openPage({ ...salon, altitudeM: 0, units: { ...salon.units, temperature: 'F' } });
    expect(low.shown.find('[data-line=boils]').textContent).toBe('water boils 212\u00a0°F');
    expect(low.shown.find('[data-line=plates]').textContent).toBe('plates 380\u00a0°F');
  });

  it('names the mark of every figure, and what is left out', async () => {
    const { shown } = await openPage();
    await shown.tap('[data-act=why-press]');
    const sources = [...document.querySelectorAll('[data-explained] [data-line=source]')];
    expect(sources).toHaveLength(11);
    for (const source of sources) {
      expect(source.textContent).toMatch(/^(Published|Common practice|Second hand|Assumed by us|Exact)/);
    }
    expect(document.querySelector('.press-why')?.textContent).toContain('Left out: steam');
  });

  it('goes back, and writes nothing', async () => {
    const { shown, choose } = await openPage();
    const before = shown.station.readState();
    await choose('[data-act=press-again]');
    await shown.tap('[data-act=leave-press]');
    expect(shown.look('[data-step=press]')).toBeNull();
    expect(shown.station.readState()).toBe(before);
  });
});

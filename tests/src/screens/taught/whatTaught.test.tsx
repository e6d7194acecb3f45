import { cleanup } from '@solidjs/testing-library';
import { afterEach, describe, expect, it } from 'vitest';
import { salon } from '../../../../seeds/salon';
import { makeTablet } from '../../storage/tablet';
import { showStation } from '../stationOnTablet';
import { layLearning, taughtBy } from './learningStub';

afterEach(cleanup);

async function openPage(taught: Parameters<typeof layLearning>[0]) {
  const laid = layLearning(taught);
  const shown = await showStation({ tablet: makeTablet(), settings: salon, learning: laid.learning });
  await shown.tap('[data-act=day]');
  await shown.tap('[data-act=taught]');
  return { ...laid, shown };
}
const isLearning = (shown: Awaited<ReturnType<typeof showStation>>) =>
  shown.station.readState().settings.settings.learns;

describe('what our strands taught', () => {
  it('says how many, how well they are foreseen and what weighs otherwise', async () => {
    const { shown } = await openPage(taughtBy(60, 0.5));
    expect(shown.find('[data-strands]').textContent).toBe('60 strands taught');
    expect(shown.find('[data-gain=some]').textContent).toMatch(
      /^Foreseen \d+\s% better .*, \d+\s% better\.$/,
    );
    expect(shown.find('[data-moved=more]').textContent).toContain('hair with nothing against it');
    expect(shown.find('.said-seen').getAttribute('aria-label')).toContain('0 of 40, fewer.');
    expect(shown.find('[data-panel=taught]').textContent).toContain('never how many strands are asked for');
  });

  it('goes back to what was assumed with one tap by name, and learns again with another', async () => {
    const { shown, asked } = await openPage(taughtBy(60));
    await shown.tap('[data-act=back-to-assumed]');
    await shown.tap('[data-act=who-Opal]');
    expect(isLearning(shown)).toBe(false);
    expect(shown.find('[data-panel=said-seen] h2').textContent).toBe('Assumed, and what came');
    await shown.tap('[data-act=learn-again]');
    expect([isLearning(shown), asked.again]).toEqual([true, 1]);
    expect(shown.find('[data-panel=said-seen] h2').textContent).toBe('Said, and what came');
  });

  it('says what teaches where nothing did, and that it is reckoned, failed, or the demo', async () => {
    const { shown, setTaught, asked } = await openPage(taughtBy(0));
    expect(shown.find('[data-taught]').textContent).toContain('No strand has taught yet.');
    expect(shown.find('[data-act=back-to-assumed]').hasAttribute('disabled')).toBe(true);
    for (const kind of ['reckoning', 'demo', 'failed'] as const) {
      setTaught({ kind });
      expect(shown.find('[data-taught]').dataset.taught).toBe(kind);
    }
    await shown.tap('[data-act=learn-again]');
    expect([asked.again, isLearning(shown)]).toEqual([1, true]);
  });

  it('calls fewer than twenty too few', async () => {
    const { shown } = await openPage(taughtBy(19));
    expect(shown.find('[data-too-few]').textContent).toContain('Too few to tell.');
    expect(shown.look('[data-gain]')).toBeNull();
  });
});

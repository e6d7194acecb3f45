import { describe, expect, it } from 'vitest';
import { salon } from '../../../../seeds/salon';
import type { Others } from '../../../../src/station/replicating';
import { showStation } from '../stationOnTablet';

const atMs = Date.UTC(2026, 2, 5, 12);
const refused = Array.from({ length: 6 }, (_, index) => ({
  id: `consultation:client000${index}:${'0'.repeat(64)}`,
  why: 'damaged' as const,
}));

async function showOthers(others?: Others) {
  const shared: string[] = [];
  const shown = await showStation({
    settings: salon,
    atMs,
    ...(others === undefined ? {} : { others }),
    onShared: () => shared.push('now'),
  });
  await shown.tap('[data-act=settings]');
  await shown.tap('[data-act=who-Opal]');
  const tile = shown.look('[data-act=section-others]')?.textContent ?? null;
  if (tile !== null) await shown.tap('[data-act=section-others]');
  const text = () => shown.container.textContent?.replaceAll('\u00a0', ' ') ?? '';
  return { ...shown, shared, tile, text };
}

describe('other stations', () => {
  it('stand under the settings, with the line that says how it is', async () => {
    const page = await showOthers({ kind: 'inStep', atMs: atMs - 120_000, refused: [], later: [] });
    expect(page.tile).toContain('In step, 2 minutes ago');
    expect(page.find('[data-panel=others] h2').textContent).toContain('In step');
    expect(page.look('[data-panel=others-refused]')).toBeNull();
    await page.tap('[data-act=share-now]');
    expect(page.shared).toEqual(['now']);
    expect(page.look('[data-act=save-settings]')).toBeNull();
  });

  it('say what keeps them apart', async () => {
    const page = await showOthers({
      kind: 'apart',
      why: 'gone',
      inStepAtMs: null,
      waiting: null,
      refused: [],
      later: [],
    });
    expect(page.text()).toContain('Not reached yet');
    expect(page.text()).toContain('goes out by itself once they are back');
    expect(page.look('[data-act=share-now]')).not.toBeNull();
  });

  it('say that whoever set it up has to look where this station is turned away', async () => {
    const apart = { kind: 'apart', inStepAtMs: null, waiting: null, refused: [], later: [] } as const;
    const page = await showOthers({ ...apart, why: 'turnedAway' });
    expect(page.tile).toContain('Not reached yet');
    expect(page.text()).toContain('turned this station away. Whoever set it up has to look.');
    expect(page.look('[data-act=share-now]')).not.toBeNull();
  });

  it('name what was left out, the first of it, and count the rest', async () => {
    const page = await showOthers({ kind: 'inStep', atMs, refused, later: [] });
    const panel = page.find('[data-panel=others-refused]');
    expect(panel.querySelectorAll('li')).toHaveLength(3);
    expect(panel.textContent).toContain('consultation:client0000:');
    expect(panel.textContent).toContain('its content is not what its name says');
    expect(panel.textContent?.replaceAll('\u00a0', ' ')).toContain('and 3 more');
  });

  it('name what is not taken up yet, and why, though either side is in step', async () => {
    const later = [
      { id: `consultation:client0001:${'0'.repeat(64)}`, why: 'fromLater' },
      { id: `erased:${'0'.repeat(64)}`, why: 'openHere' },
    ] as const;
    const page = await showOthers({ kind: 'inStep', atMs, refused: [], later });
    expect(page.find('[data-panel=others-refused] h2').textContent).toBe('Not taken up yet: 2');
    expect(page.text()).toContain('one of the clocks is wrong');
    expect(page.text()).toContain('it is done once she is closed');
    expect(page.text()).toContain('Show this page to whoever set it up');
    const waiting = later.filter(({ why }) => why === 'openHere');
    const beside = await showOthers({ kind: 'inStep', atMs, refused, later: waiting });
    expect(beside.find('[data-panel=others-refused] h2').textContent).toBe(
      'Left out: 6 · Not taken up yet: 1',
    );
    const alone = await showOthers({ kind: 'inStep', atMs, refused: [], later: waiting });
    expect(alone.text()).not.toContain('Show this page to whoever set it up');
  });

  it('say how they come where there are none, and nothing can be shared', async () => {
    const page = await showOthers({ kind: 'off' });
    expect(page.tile).toContain('None: records stay on this tablet');
    expect(page.text()).toContain('README');
    expect(page.look('[data-act=share-now]')).toBeNull();
  });

  it('have no tile where another window knows', async () => {
    expect((await showOthers()).tile).toBeNull();
  });
});

import { cleanup } from '@solidjs/testing-library';
import { afterEach, describe, expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import type { StoryStep } from '../../../seeds/story';
import { askAll } from '../../browser/shortWay';
import { showStation } from './stationOnTablet';

afterEach(cleanup);

const minute = 60_000;
const hour = 60 * minute;
const juno = (afterMs: number, raw: StoryStep['raw']): StoryStep => ({ afterMs, by: 'Juno', raw });
const toGlass = (seen: 'nothing' | 'reacted') => [
  ...askAll('A.K.', '4', 'metallicColour').map((step) =>
    step.raw.type === 'SKIN_TEST_NOTED'
      ? { ...step, raw: { ...step.raw, answers: { ...step.raw.answers, putOnAtMs: 0 } } }
      : step,
  ),
  juno(1_000, { type: 'INCOMPATIBILITY_STARTED' }),
  juno(30 * minute, { type: 'INCOMPATIBILITY_READ', answers: { seen } }),
];

async function showGlass(seen: 'nothing' | 'reacted' = 'nothing') {
  const shown = await showStation({ settings: salon });
  const id = await shown.play(toGlass(seen));
  const readAtMs = shown.station.readState().open.get(id)?.record.newestAtMs ?? 0;
  const parked = () => shown.find('[data-act=parked]').textContent;
  const line = async () => {
    await shown.tap('[data-act=parked]');
    const said = shown.look('[data-cutting]')?.textContent ?? null;
    await shown.tap('[data-act=close-dialog]');
    return said;
  };
  return { ...shown, id, readAtMs, parked, line };
}

describe('a cutting whose glass showed nothing', () => {
  it('is listed with the time of its second look, and called for at the bar once that is there', async () => {
    const shown = await showGlass();
    expect(await shown.line()).toMatch(/^Chair 4 · A\.K\.look at it \w+day, /);
    expect(shown.parked()).toBe('Parked 0');
    await shown.turnClock(shown.readAtMs + 24 * hour - 1);
    expect(shown.parked()).toBe('Parked 0');
    await shown.turnClock(shown.readAtMs + 24 * hour);
    expect(shown.parked()).toBe('Parked 0 · cutting due');
    expect(await shown.line()).toContain('look at it now, since');
    await shown.tap('[data-act=parked]');
    await shown.tap('[data-act=open-cutting]');
    await shown.tap('[data-act=who-Juno]');
    expect(shown.find('main').dataset.consultation).toBe(shown.id);
  });

  it('is listed after her record is closed, and says whom to tell', async () => {
    const shown = await showGlass();
    const ended = await shown.station.submit(shown.id, 'Juno', {
      type: 'CALLED_OFF',
      answers: { reason: 'noTime' },
    });
    expect(ended.ok ? 'closed' : ended.error).toBe('closed');
    expect(shown.station.readState().open.size).toBe(0);
    await shown.turnClock(shown.readAtMs + 25 * hour);
    expect(shown.parked()).toBe('Parked 0 · cutting due');
    expect(await shown.line()).toContain('Her record is closed: if it reacted, tell Juno and her.');
  });

  it('is told of no longer two days after that', async () => {
    const shown = await showGlass();
    await shown.turnClock(shown.readAtMs + 72 * hour + 1);
    expect([shown.parked(), await shown.line()]).toEqual(['Parked 0', null]);
  });

  it('is not kept where the glass reacted', async () => {
    const shown = await showGlass('reacted');
    expect(await shown.line()).toBeNull();
  });
});

import { cleanup } from '@solidjs/testing-library';
import { afterEach, expect, it } from 'vitest';
import { endsIronedWet } from '../../../seeds/endsIronedWet';
import { salon } from '../../../seeds/salon';
import type { StoryStep } from '../../../seeds/story';
import { showStation } from './stationOnTablet';

afterEach(cleanup);

const begin = (ticket: string, chair: number): readonly StoryStep[] =>
  endsIronedWet.steps
    .slice(0, 1)
    .map((step) => ({ ...step, raw: { type: 'OPENED', answers: { ticket, chair: String(chair) } } }));

it('shows two of those beyond the lanes and how many more, the most urgent first; a tap opens her or the list', async () => {
  const shown = await showStation({ settings: { ...salon, chairs: 30 } });
  for (const chair of [9, 17, 30]) await shown.play(begin(`W.${chair}`, chair));
  const row = () =>
    [...shown.container.querySelectorAll('.waiting-row [data-act]')].map((each) => each.textContent);
  expect(row()).toEqual(['9 · W.9ask: what she wants', '17 · W.17ask: what she wants', '1 more']);
  await shown.play(
    endsIronedWet.steps
      .slice(0, endsIronedWet.steps.findIndex(({ raw }) => raw.type === 'STRAND_STARTED') + 1)
      .map((step) =>
        step.raw.type === 'OPENED'
          ? { ...step, raw: { type: 'OPENED', answers: { ticket: 'Q.F.', chair: '24' } } }
          : step,
      ),
  );
  expect(row()[0]).toMatch(/^24 · Q\.F\.STRAND 1 ends · look in 2:00$/);
  expect(row().at(-1)).toBe('2 more');
  await shown.tap('[data-act=all-waiting]');
  expect(shown.container.querySelectorAll('dialog[open] [data-act=open-parked]')).toHaveLength(4);
  expect(shown.find('dialog[open] [data-consultation] span').textContent).toBe(
    'STRAND 1 ends · look in 2:00',
  );
  await shown.tap('[data-act=close-dialog]');
  await shown.tap('[data-act=open-waiting]');
  expect(shown.find('main').dataset.step).toBe('processing');
});

import { cleanup } from '@solidjs/testing-library';
import { afterEach, describe, expect, it } from 'vitest';
import type { Consultation } from '../../../machines/consultation/consultation';
import { salon } from '../../../seeds/salon';
import { viewCover } from '../../../src/screens/cover/viewCover';
import { untilStrand } from './alarmDevice';
import { playUntil, settings } from './playStory';
import { showPractice } from './practice/inPractice';
import { showStation } from './stationOnTablet';

afterEach(cleanup);

const minute = 60_000;
const covering = { ...salon, coverAfterMin: 2 } as const;
const { consultation: running, atMs } = playUntil('STRAND_STARTED', 'lengths');
const at = (id: string, chair: number): Consultation => ({
  ...running,
  id,
  record: { ...running.record, id, chair },
});

describe('what stays under the cover', () => {
  it('is each chair in its place, with its clock and how many more; beyond the places only who has one', () => {
    const view = viewCover([at('a', 3), at('b', 12)], settings.chairs, atMs + minute);
    expect(view.places.map(({ chair, id }) => [chair, id])).toEqual([
      ...[1, 2].map((chair) => [chair, null]),
      [3, 'a'],
      ...[4, 5, 6, 7, 8].map((chair) => [chair, null]),
    ]);
    expect(view.places[2]?.due?.what).toBe('clock');
    expect(view.beyond.map(({ chair, id }) => [chair, id])).toEqual([[12, 'b']]);
    expect(view.first?.consultation.id).toBe('a');
  });
});

describe('a tablet that nobody touches', () => {
  const phase = (shown: Pick<Awaited<ReturnType<typeof showStation>>, 'find'>) =>
    shown.find('.idle-over').dataset.idle;

  it('warns for 20 s, is covered, and shows no ticket there', async () => {
    const shown = await showStation({ settings: covering });
    await shown.play(untilStrand);
    // The story took its time, and nobody touched the glass.
    expect(phase(shown)).toBe('covered');
    await shown.tap('[data-act=uncover]');
    expect(phase(shown)).toBe('awake');
    await shown.jumpClock(100_000);
    expect(phase(shown)).toBe('warned');
    expect(shown.find('.idle-left').textContent).toBe('20 s left.'.replace(' s', '\u00a0s'));
    await shown.jumpClock(20_000);
    expect(phase(shown)).toBe('covered');
    expect(shown.find('.cover').textContent).not.toContain('Q.F.');
    expect(shown.find('.cover').textContent).toContain('Chair 3');
    expect(document.documentElement.hasAttribute('data-covered')).toBe(true);
    await shown.tap('[data-act=uncover]');
    expect([phase(shown), document.documentElement.hasAttribute('data-covered')]).toEqual(['awake', false]);
  });

  it('is never covered in practice: nobody of a lesson is real', async () => {
    const shown = await showPractice();
    await shown.jumpClock(60 * minute);
    expect(phase(shown)).toBe('awake');
  });
});

import { cleanup } from '@solidjs/testing-library';
import { afterEach, describe, expect, it } from 'vitest';
import type { Consultation } from '../../../machines/consultation/consultation';
import { endsIronedWet } from '../../../seeds/endsIronedWet';
import { salon } from '../../../seeds/salon';
import type { StoryStep } from '../../../seeds/story';
import type { RawEvent } from '../../../shared/records/classify';
import { listDue } from '../../../src/screens/clocks/listDue';
import { type Played, playUntil, tap } from './playStory';
import { showStation } from './stationOnTablet';

afterEach(cleanup);

const minute = 60_000;

const call = ({ consultation }: Played, id: string): Consultation => ({ ...consultation, id });
const say = (open: readonly Consultation[], nowMs: number, here?: string) =>
  listDue(open, here, nowMs).map(({ consultation, clock, what, atMs }) => [
    consultation.id,
    clock.zone,
    what,
    Math.round((atMs - nowMs) / minute),
  ]);

describe('what is due for another client', () => {
  const strand = playUntil('STRAND_STARTED', 'ends');
  const head = playUntil('BOWL_APPLIED');

  it('is a look from its minute on, and nothing before', () => {
    expect(say([call(strand, 'a')], strand.atMs + 2 * minute - 1)).toEqual([]);
    expect(say([call(strand, 'a')], strand.atMs + 4 * minute)).toEqual([['a', 'ends', 'look', -2]]);
  });

  it('is a strand that is to come off, since its time was up', () => {
    expect(say([call(strand, 'a')], strand.atMs + 27 * minute)).toEqual([['a', 'ends', 'end', -2]]);
  });

  it('is a head two minutes before its rinse, and from then on', () => {
    expect(say([call(head, 'a')], head.atMs + 23 * minute)).toEqual([['a', 'lengths', 'basin', 2]]);
    expect(say([call(head, 'a')], head.atMs + 26 * minute)).toEqual([['a', 'lengths', 'end', -1]]);
  });

  it('is never that of the client in view', () => {
    const nowMs = head.atMs + 26 * minute;
    expect(say([call(head, 'a')], nowMs, 'a')).toEqual([]);
    expect(say([call(head, 'a')], nowMs, 'b')).toHaveLength(1);
  });

  it('puts a reaction with colour still on before a head that is to be rinsed, and that before a strand', () => {
    const reacts = tap(head, minute, { type: 'REACTION_SUSPECTED' });
    const began = head.atMs + 25 * minute - strand.atMs;
    const late: Consultation = {
      ...call(strand, 'late'),
      record: {
        ...strand.consultation.record,
        clocks: strand.consultation.record.clocks.map((clock) => ({
          ...clock,
          startedAtMs: clock.startedAtMs + began - 30 * minute,
          dueAtMs: clock.dueAtMs + began - 30 * minute,
        })),
      },
    };
    expect(
      say([late, call(head, 'over'), call(reacts, 'reacts')], head.atMs + 25 * minute).map(([id]) => id),
    ).toEqual(['reacts', 'over', 'late']);
  });

  it('is nothing any more once somebody looked', () => {
    const look: RawEvent = {
      type: 'LOOKED',
      answers: { of: 'strand', zone: 'ends', feel: 'sound', level: '5' },
    };
    const looked = tap(strand, 4 * minute, look);
    expect(say([call(looked, 'a')], looked.atMs)).toEqual([]);
  });
});

describe('the line above the actions', () => {
  const upTo = (type: string): readonly StoryStep[] =>
    endsIronedWet.steps.slice(0, endsIronedWet.steps.findIndex(({ raw }) => raw.type === type) + 1);
  const atChair = (steps: readonly StoryStep[], chair: string, ticket: string): readonly StoryStep[] =>
    steps.map((step) =>
      step.raw.type === 'OPENED' ? { ...step, raw: { ...step.raw, answers: { ticket, chair } } } : step,
    );
  const line = '[data-act=due-elsewhere]';

  /** Q.F. at chair 3 has a strand in the mix, J.P. at chair 5 is being asked. */
  async function showTwo() {
    const shown = await showStation({ settings: salon });
    const id = await shown.play(upTo('STRAND_STARTED'));
    const startedAtMs = shown.station.readState().open.get(id)?.record.newestAtMs ?? 0;
    await shown.play(atChair(endsIronedWet.steps.slice(0, 1), '5', 'J.P.'));
    await shown.tap('[data-act=who]');
    await shown.tap('[data-act=who-Opal]');
    return { ...shown, startedAtMs };
  }

  it('appears on her screen, on the day, in the settings and at the start of another, and leads there', async () => {
    const shown = await showTwo();
    await shown.tap('[data-chair="5"]');
    expect(shown.look(line)).toBeNull();
    await shown.turnClock(shown.startedAtMs + 4 * minute);
    expect(shown.find(`footer ${line}`).textContent).toMatch(
      /^Chair 3 · Q\.F\. · STRAND 1 ends · look now, since /,
    );
    for (const way of ['day', 'settings', 'start']) {
      await shown.tap('[data-act=bar]');
      await shown.tap(`[data-act=${way}]`);
      expect(shown.look(`footer ${line}`)).not.toBeNull();
      if (way === 'start') await shown.tap('[data-act=cancel]');
    }
    await shown.tap('[data-chair="5"]');
    await shown.tap(line);
    expect(shown.find('main').dataset.step).toBe('processing');
    expect(shown.look(line)).toBeNull();
  });

  it('is neither made anew nor said again by a tick', async () => {
    const shown = await showTwo();
    await shown.tap('[data-chair="5"]');
    await shown.turnClock(shown.startedAtMs + 4 * minute);
    const button = shown.find(line);
    const heard = shown.find('[data-heard=due]');
    const said = heard.textContent;
    expect(said).toContain('look now, since');
    let changes = 0;
    const watcher = new MutationObserver(() => {
      changes += 1;
    });
    watcher.observe(heard, { childList: true, characterData: true, subtree: true });
    for (let second = 1; second < 5; second += 1) {
      await shown.turnClock(shown.startedAtMs + 4 * minute + second * 1000);
    }
    expect(shown.find(line)).toBe(button);
    expect([heard.textContent, changes]).toEqual([said, 0]);
    watcher.disconnect();
  });
});

import type { StoryStep } from '../../../seeds/story';
import { bothDecided, event, longName, minuteMs, outcome, until } from './clients';
import { alone, among } from './houses';
import type { Scene, ScenesOf } from './scene';
import type { SceneHand } from './sceneHand';

const dialog = 'dialog[open]';
const started = until('STRAND_STARTED', 'lengths');
const off = (zone: string, afterMs = 1_000, why = 'levelReached') =>
  event('STRAND_TAKEN_OFF', { zone, why }, afterMs);
const poor = { fibre: 'rough', stretch: 'staysLong', evenness: 'banded', wentPast30: 'yes' } as const;
const look = (level: string, afterMin: number, feel = 'rough') =>
  event('LOOKED', { of: 'strand', zone: 'lengths', level, feel }, afterMin * minuteMs);

/** Both strands looked at every minute, both poor. */
const manyLooks: readonly StoryStep[] = [
  ...started,
  ...Array.from({ length: 20 }, (_, at) => look(String(4 + at / 4 - ((at / 4) % 0.5)), 1)),
  off('ends', minuteMs, 'looksWeak'),
  off('lengths', 1_000, 'looksWeak'),
  outcome('ends', { ...poor, level: '5.5' }),
  outcome('lengths', { ...poor, level: '8.5' }),
];

/** Every word as long as it can be, twelve looks of which two were missed, more time, four people, and decided. */
const longest: readonly StoryStep[] = [
  ...started.map((step): StoryStep => {
    if (step.raw.type !== 'STRAND_STARTED') return step;
    const answers = { ...step.raw.answers, place: 'whereIroned', batch: 'MWMWMWMW-2026-11-MWM', hairs: '50' };
    return { ...step, by: longName, raw: { ...step.raw, answers } };
  }),
  off('ends', 2 * minuteMs),
  ...['4.5', '5', '5', '5.5'].map((level) => look(level, 2.7)),
  event('CLOCK_EXTENDED', { clock: 'strand-lengths-2', minutes: '10', reason: 'greyResists' }),
  look('5.5', 7.2),
  ...['6', '6', '6.5', '6.5', '6.5'].map((level) => look(level, 2.7, 'stretchy')),
  { ...off('lengths', 2.2 * minuteMs, 'levelReached'), by: 'Maximilian Wommelmow' },
  outcome('ends', { fibre: 'rough', level: '6.5' }),
  { ...outcome('lengths', { fibre: 'sound', evenness: 'patchy', level: '6.5' }), by: 'Wren-Marie Mummenwam' },
  event('DECIDED', { decision: 'smallerLift' }),
];

const broke: readonly StoryStep[] = [
  ...started,
  look('5', 2),
  event('STRAND_BROKE', { zone: 'lengths' }, 4.2 * minuteMs),
  off('ends', 10 * minuteMs),
];

const toCard = async (hand: SceneHand) => {
  await hand.open(3);
  await hand.act('more-for-client');
  await hand.act('way-card');
};
const scene = (logs: Scene['logs'], stamp: string | null, number: number): Scene => ({
  logs,
  shows: `${dialog} .strand-card[data-strand="${number}"] ${stamp === null ? 'header' : `[data-stamp="${stamp}"]`}`,
  go: async (hand) => {
    await toCard(hand);
    const other = hand.page.locator(`[data-act="card-of-${number}"]`);
    if ((await other.count()) > 0) await hand.press(other);
  },
});

/** The card a strand is taped to, by what became of the strand. */
export const scenesOfCard: ScenesOf = {
  empty: 'a card is offered once a strand is out of its mix',
  usual: scene(alone(bothDecided), null, 2),
  full: scene(among(manyLooks), null, 2),
  error: 'it shows what is kept and takes nothing',
  also: {
    way: {
      logs: among(manyLooks),
      shows: `${dialog} [data-act="way-card"]`,
      go: async (hand) => {
        await hand.open(3);
        await hand.act('more-for-client');
      },
    },
    held: {
      ...scene(alone([...started, off('ends', minuteMs), outcome('ends')]), null, 1),
      shows: `${dialog} .card-note[data-held="true"]`,
    },
    longest: scene(among(longest), null, 2),
    broke: scene(alone(broke), 'broke', 2),
    brokeTold: scene(
      alone([...broke, outcome('ends'), outcome('lengths', { fibre: 'broken', stretch: 'snaps' })]),
      'broke',
      2,
    ),
    discarded: scene(
      alone([
        ...started,
        event('STRAND_DISCARDED', { zone: 'lengths', why: 'wrongPlace' }, 3 * minuteMs),
        off('ends', 20 * minuteMs),
        outcome('ends'),
      ]),
      'discarded',
      2,
    ),
    noOutcome: scene(
      alone([...started, look('5.5', 3), off('ends', minuteMs), off('lengths')]),
      'noOutcome',
      2,
    ),
  },
};

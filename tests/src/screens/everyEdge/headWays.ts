import { choose, press, pressTwice } from '../bench';
import { planSaid } from '../planSaid';
import { tap } from '../playStory';
import { end, fillToner, pressAll, sayGlassReacted, sign, tell, tellsOf } from './hand';
import {
  and,
  bothOff,
  bothOn,
  bothRun,
  bothSound,
  decided,
  decidedWarm,
  finish,
  glassClear,
  lengthsOn,
  lengthsWeighed,
  minute,
  onHeadAfterGlass,
  opened,
  preparing,
  remembers,
  reopened,
  rinse,
} from './starts';
import type { Way } from './way';

const tomorrowMs = 24 * 60 * minute;
const parked = () => {
  const played = preparing();
  return and(played, { type: 'PARKED', answers: { untilAtMs: played.atMs + tomorrowMs } });
};

/** Where each of the screens stands on which everything may end. */
const screensToEnd = {
  client: opened,
  hotTools: () => reopened('hotTools'),
  feelHair: () => reopened('feelHair'),
  heatSpray: () => reopened('heatSpray'),
  preparing,
  glass: glassClear,
  processing: bothRun,
  outcome: bothOff,
  decision: bothSound,
  mix: decided,
  weighed: lengthsWeighed,
  rinsed: () => rinse(lengthsOn()),
  finish: () => finish(rinse(lengthsOn())),
  parked,
} as const;

const endings: readonly Way[] = Object.entries(screensToEnd).flatMap(([here, start]) =>
  (['CALLED_OFF', 'WE_SAID_NO', 'CLIENT_SAID_NO'] as const).map((kind) => ({
    name: `${kind} at ${here}`,
    start,
    tap: () => end(kind),
  })),
);

const reactions: readonly Way[] = Object.entries(screensToEnd).map(([here, start]) => ({
  name: `a reaction at ${here}`,
  start,
  tap: async () => {
    await pressAll('more-for-client', 'reaction-from-menu');
    await pressTwice('record-reaction');
    await press('care');
    await choose('care', 'rinsed');
    await pressTwice('give-care');
  },
}));

/** Bowls, the head, the finish, a reaction, and every ending from every screen. */
export const headWays: readonly Way[] = [
  ...endings,
  ...reactions,
  {
    name: 'stopped: we say no on its own page',
    start: () => and(preparing(), remembers),
    tap: async () => {
      await press('end');
      await choose('reason', 'notSafeToday');
      await pressTwice('WE_SAID_NO');
    },
  },
  {
    name: 'a bowl weighed, thrown away, weighed and put on',
    start: decided,
    tap: async () => {
      await press('weigh');
      await press('cancel');
      await pressTwice('throw');
      await press('mix-lengths');
      await press('weigh');
      await press('apply');
    },
  },
  {
    name: 'more on the scalp is signed for',
    start: decidedWarm,
    tap: async () => {
      await press('sign-scalp');
      await choose('by', 'Wren');
      await sign('seniorAgreed');
      await press('override');
    },
  },
  {
    name: 'over the head: another bowl, thrown, again, on, a look, rinsed, finished, her plan',
    start: lengthsOn,
    tap: async ({ pass }) => {
      await pressAll('mix-ends', 'weigh');
      await pressTwice('throw');
      await pressAll('mix-ends', 'weigh', 'apply');
      await pass(5 * minute);
      await pressAll('look', 'hair-sound');
      await pressTwice('rinsed');
      await pressTwice('rinsed');
      await press('finish');
      await tell(...planSaid);
      await press('give-plan');
    },
  },
  {
    name: 'rinsed: felt, a toner weighed, thrown, weighed and put on, all on, rinsed',
    start: () => rinse(lengthsOn()),
    tap: async () => {
      await press('toner-lengths');
      await choose('stretch', 'springsBack');
      await press('keep-stretch');
      await fillToner();
      await pressTwice('throw');
      await press('toner-lengths');
      await fillToner();
      await pressAll('apply', 'all-on');
      await pressTwice('rinsed');
    },
  },
  {
    name: 'the ends on, the lengths rinsed: felt, a toner weighed and put on',
    start: () => rinse(bothOn()),
    tap: async () => {
      await press('toner-lengths');
      await choose('stretch', 'springsBack');
      await press('keep-stretch');
      await fillToner();
      await press('apply');
    },
  },
  {
    name: 'more time over the head',
    start: () =>
      tap(lengthsOn(), 14 * minute, {
        type: 'LOOKED',
        answers: { of: 'head', zone: 'lengths', stinging: 'no' },
      }),
    tap: async () => {
      await press('more-time');
      await tell(['minutes', '3'], ['reason', 'liftIsSlow']);
      await press('extend');
    },
  },
  {
    name: 'it stings: rinsed, recorded, more of it, care',
    start: bothOn,
    tap: async () => {
      await pressAll('look', 'stinging-yes', 'rinsed-lengths', 'rinsed-ends');
      await pressTwice('record-reaction');
      await press('more-signs');
      await choose('signs', 'blisters');
      await pressTwice('record-reaction');
      await press('care');
      await choose('care', 'rinsedAndDoctor');
      await pressTwice('give-care');
    },
  },
  {
    name: 'a reaction that was none',
    start: lengthsOn,
    tap: async () => {
      await pressAll('reaction', 'no-reaction');
      await pressTwice('none-onlyCool');
    },
  },
  {
    name: 'a reaction that was none, and no water ran after all',
    start: lengthsOn,
    tap: async () => {
      await pressAll('reaction', 'rinsed-lengths', 'no-reaction');
      await choose('stillOn', 'yes');
      await pressTwice('none-wrongTap');
    },
  },
  {
    name: 'stopped over the head, a reaction that was none, and no water ran after all',
    start: lengthsOn,
    tap: async () => {
      await tellsOf('hives');
      await pressAll('reaction', 'rinsed-lengths', 'no-reaction');
      await choose('stillOn', 'yes');
      await pressTwice('none-wrongTap');
    },
  },
  {
    name: 'over the head she tells of hives: stopped after the last rinse, then her plan',
    start: lengthsOn,
    tap: async () => {
      await tellsOf('hives');
      await pressTwice('rinsed');
      await press('finish');
    },
  },
  { name: 'over the head the cutting breaks', start: onHeadAfterGlass, tap: sayGlassReacted },
  {
    name: 'at the finish the cutting breaks',
    start: () => finish(rinse(onHeadAfterGlass())),
    tap: sayGlassReacted,
  },
  {
    name: 'at the finish she tells of hives, and the skin test shows something',
    start: () => finish(rinse(lengthsOn())),
    tap: async () => {
      await tellsOf('hives');
      await pressAll('more-for-client', 'skin-test');
      await pressTwice('skin-test-reaction');
    },
  },
];

import { type BackStep, backSteps, isEarlierStep } from '../../../../shared/records/steps';
import { choose, press, pressTwice, type } from '../bench';
import { goBack, holdOption, pressAll, sayGlassReacted, sign, tell, tellsOf } from './hand';
import { bothSound, decided, glassClear, opened, preparing, reopened } from './starts';
import type { Way } from './way';

const standsAt = {
  hotTools: () => reopened('hotTools'),
  feelHair: () => reopened('feelHair'),
  heatSpray: () => reopened('heatSpray'),
  strandTest: preparing,
  decision: bothSound,
  mix: decided,
} as const;
const places = Object.entries(standsAt) as [BackStep | 'mix', Way['start']][];

const back: readonly Way[] = places.flatMap(([here, start]) =>
  backSteps
    .filter((step) => isEarlierStep(step, here))
    .map((step) => ({ name: `back from ${here} to ${step}`, start, tap: () => goBack(step) })),
);

const toldLate: readonly Way[] = places.map(([here, start]) => ({
  name: `she tells of hives at ${here}`,
  start,
  tap: () => tellsOf('hives'),
}));

/** Asking, going back, telling late, the skin test and being away. */
export const askWays: readonly Way[] = [
  ...back,
  ...toldLate,
  {
    name: 'all questions, one after the other',
    start: opened,
    tap: async () => {
      await tell(
        ['service', 'lighten'],
        ['reach', 'fullHead'],
        ['targetLevel', '7'],
        ['naturalLevel', '5'],
        ['endsLevel', '5'],
        ['length', 'braLine'],
        ['reactions', 'none'],
        ['scalp', 'sound'],
        ['ageBand', 'over'],
      );
      await press('next');
      await tell(['habits', 'none'], ['smoke', 'no'], ['history', 'none']);
      await press('next');
      await tell(
        ['nape', 'dry'],
        ['mid', 'dry'],
        ['ends', 'dry'],
        ['porosity', 'normal'],
        ['curl', 'sameAlong'],
        ['breakage', 'no'],
        ['wetStretch', 'springsBack'],
      );
      await press('next');
      await press('next');
    },
  },
  { name: 'hives at the first step', start: opened, tap: () => holdOption('reactions', 'hives') },
  {
    name: 'parked, the cutting broke meanwhile',
    start: glassClear,
    tap: async () => {
      await pressAll('more-for-client', 'way-park');
      await choose('untilAtMs', '1d');
      await press('park');
      await sayGlassReacted();
    },
  },
  {
    name: 'parked and back',
    start: preparing,
    tap: async () => {
      await pressAll('more-for-client', 'way-park');
      await choose('untilAtMs', '1d');
      await press('park');
      await press('resume');
    },
  },
  {
    name: 'the skin test reacts',
    start: preparing,
    tap: async () => {
      await pressAll('more-for-client', 'skin-test');
      await pressTwice('skin-test-reaction');
    },
  },
  {
    name: 'a skin test noted wrongly, and a new one put on',
    start: preparing,
    tap: async () => {
      await pressAll('more-for-client', 'skin-test', 'skin-test-correct');
      await sign('wrongTap');
      await press('text-done');
      await pressTwice('correct');
      await tell(['method', 'makersMethod'], ['site', 'behindEar']);
      await type('line', 'Sandbar cream');
      await press('skin-test-keep');
    },
  },
];

import type { WarmthTold } from '../../../shared/heat/warmthTrial';
import { figures } from './figures';

const tells: Readonly<Record<WarmthTold['code'], (by: string) => string>> = {
  later: (by) => `With the spray warmth came ${by} later.`,
  sooner: (by) => `With the spray warmth came ${by} sooner.`,
  laterThanCap: () => `With the spray, no warmth came in ${figures.warmthCap}. Bare, it did.`,
  soonerThanCap: () => `Bare, no warmth came in ${figures.warmthCap}. With the spray it did.`,
  alike: () => `Too close to tell: under ${figures.warmthTelling} apart.`,
  neitherFelt: () => `No warmth came in ${figures.warmthCap} on either: nothing told. Do not go hotter.`,
};

const better = 'A heat strip under a cut swatch, sprayed and dry: it shows what comes through to hair.';

/** Dryer on two forearms: what it needs, and what it tells. */
export const warmthTrial = {
  title: (spray: string) => `Warmth trial · ${spray}`,
  before: 'Before you start',
  /** `distance`: at least so far. */
  rules: (distance: string): readonly string[] => [
    'On your own arms only. Not on numb, sore or broken skin, and not if a spray ever made it react.',
    'Spray one forearm and let it dry completely. Leave the other bare.',
    `Dryer only, never an iron. Lowest heat, at least ${distance} away.`,
    `Somebody else taps. Stop at the first warmth. It ends at ${figures.warmthCap}, felt or not.`,
  ],
  marks: `${figures.warmthCap}: common practice, no source. The distance is our own choice: further is fine.`,
  tellsTitle: 'What it tells',
  ofSkin: 'It tells of skin, not of hair under a plate.',
  betterTitle: 'The better way',
  betterWay: `The better way: ${better}`,
  better,
  arms: { bare: 'Bare forearm', sprayed: 'Sprayed forearm' },
  start: { bare: 'Start: bare forearm', sprayed: 'Start: sprayed forearm' },
  running: 'Stop at the first warmth',
  warm: 'Warm: stop',
  capped: `Stop: ${figures.warmthCap} is the cap`,
  dryerAway: 'Dryer away. It was not felt: that is an answer too.',
  goOn: 'Dryer is away',
  next: 'Now the sprayed forearm: dry to the touch, same spot, same distance.',
  again: 'Begin again',
  notFelt: `none in ${figures.warmthCap}`,
  tells,
  keep: 'Keep it with the spray',
  /** How the last one went, on the page of the spray. */
  last: (day: string, bare: string, sprayed: string) => `Trial ${day}: bare ${bare}, sprayed ${sprayed}.`,
  unsaved: (last: string) => `${last} Not saved yet.`,
  noneYet: 'No warmth trial yet.',
  open: 'Warmth trial',
};

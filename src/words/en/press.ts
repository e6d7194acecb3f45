import type { HairThresholdId } from '../../../shared/heat/thresholds';

/** From where on the outside is too hot: by what happens there. */
type TooHot = Extract<HairThresholdId, 'poresRiseFast' | 'cortexSoftens'>;

/** A picture to try: how hot a section gets between two plates. */
export const press = {
  way: 'What a press does',
  title: 'What a press does',
  kicker: 'To try things out, on nobody’s hair',
  asks: {
    section: 'Section',
    setting: 'Plates set to',
    wetness: 'Hair',
    onPlace: 'On one place',
  },
  /** How thick a section is, thinnest first. */
  sections: ['fine', 'medium', 'thick', 'bunch'],
  wetness: { dry: 'dry', damp: 'damp', wet: 'wet' },
  less: 'Cooler',
  more: 'Hotter',
  again: 'Press again',
  noMore: 'Enough to see it',
  anew: 'A new section',
  reckoning: 'Being reckoned.',
  outside: 'Outside',
  middle: 'Middle',
  lines: {
    plates: (at: string) => `plates ${at}`,
    tooHot: (at: string) => `too hot from ${at}`,
    works: (at: string) => `little up to ${at}`,
    boils: (at: string) => `water boils ${at}`,
  },
  bars: {
    pressed: (times: string, each: string) => `pressed ${times} × ${each}`,
    boiling: (time: string) => `boiling ${time}`,
    tooHot: (time: string) => `too hot ${time}`,
  },
  /** What it came to, in one sentence. */
  verdicts: {
    coolMiddle: 'The middle is too cool to work. Pressed again, the outside takes it first.',
    cookedOutside: (time: string, at: string) =>
      `The middle is too cool to work, and the outside was over ${at} for ${time}.`,
    tooHot: (time: string, at: string) => `Hot through, but the outside was over ${at} for ${time}.`,
    through: (after: string) => `Hot through after ${after}, and the outside never too hot.`,
  },
  water: {
    dry: (time: string) => `Even dry hair holds some water: it boiled for ${time}.`,
    soaked: (time: string, share: string, hair: string, times: string) =>
      `Water boiled for ${time} and took ${share} of the heat. In that time ${hair} hair pays with ${times} the structure. Dry it first.`,
  },
  times: (likely: string, range: string) => `about ${likely} times (${range}, assumed)`,
  /** The picture as one text. */
  said: (section: string, hair: string, plates: string, pressed: string) =>
    `${section} section, ${hair}, plates at ${plates}, ${pressed}.`,
  ends: (outside: string, middle: string) => `At the end: outside ${outside}, middle ${middle}.`,
  waterLeft: (time: string, left: string) => `Water boiled for ${time}, ${left} of it is left.`,
  estimate: 'Reckoned, not measured: real hair differs. The strand decides.',
  whyTitle: 'Where this picture comes from',
  why: {
    conduction: 'Heat goes in from both plates and meets in the middle, along one line.',
    boilingPoint: (at: string) =>
      `Water boils here at ${at}, by the station’s height. It keeps what is wet at that.`,
    works: (at: string) => `Even ten times at ${at} of the hair itself did little.`,
    tooHot: {
      poresRiseFast: (at: string) => `Too hot, damp or wet: from ${at} on tiny holes in the hair grow fast.`,
      cortexSoftens: (at: string) => `Too hot, dry: from ${at} on the inside of a hair softens.`,
    } satisfies Readonly<Record<TooHot, (at: string) => string>>,
    heats: 'What hair and water take to get warm, and water to boil away.',
    water: (dry: string, damp: string, wet: string) =>
      `Water in the hair, of its dry weight: dry ${dry}, damp ${damp}, wet ${wet}.`,
    bundle: (share: string) =>
      `Hair fills ${share} of the room between the plates, and they touch it everywhere alike.`,
    pause: (time: string) => `Between two presses ${time} go by.`,
    sections: (fine: string, bunch: string) =>
      `A section lies from ${fine} (fine) to ${bunch} (a bunch) thick.`,
    structure: (damp: string, wet: string) =>
      `Structure: the same time takes of damp hair ${damp}, of wet hair ${wet} what it takes of dry.`,
  },
  leftOut:
    'Left out: steam that carries heat inwards, hair that is squeezed thinner, the last water that hair holds hardest, plates that cool. A tool may run hotter or cooler than it is set.',
};

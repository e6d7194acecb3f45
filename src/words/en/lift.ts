import type { LiftForecast } from '../../../shared/chemistry/liftForecast';
import type { Undertone } from '../../../shared/chemistry/undertone';

type Silence = Extract<LiftForecast, { kind: 'none' }>['why'];

/** Why nothing is said of what comes; what was seen is kept as it was seen. */
const none: Readonly<Record<Silence, (level: string, fewest: string) => string>> = {
  tooFew: (level, fewest) => `Too few looks to say when to expect level ${level}: it takes ${fewest} levels.`,
  reached: (level) => `Level ${level} was seen.`,
  notAbove: (level) => `It was level ${level} or lighter at the start: no lift to wait for.`,
  falling: () => 'The level fell between looks, so no time is said. Look again.',
  noLift: () => 'No lift seen beyond half a level, so no time is said.',
  noCurve: () => 'These levels follow no curve, so no time is said.',
  sameTimes: () => 'Two looks in the same second, so no time is said.',
  beforeStart: () => 'A look lies before the start, so no time is said.',
  notALevel: () => 'A level outside 1 to 10 was kept, so no time is said.',
};

/** What lightener shows at each depth: from memory, cosmetology textbooks. */
const undertones: Readonly<Record<Undertone, string>> = {
  darkRedBrown: 'dark red-brown',
  redBrown: 'red-brown',
  red: 'red',
  redOrange: 'red-orange',
  orange: 'orange',
  goldOrange: 'gold-orange',
  gold: 'gold',
  yellowGold: 'yellow-gold',
  yellow: 'yellow',
  paleYellow: 'pale yellow',
};

/** How a strand lifts, and when it gets there. */
export const lift = {
  expected: (level: string, time: string, earliest: string, latest: string) =>
    earliest === latest
      ? `Level ${level} expected about ${time}.`
      : `Level ${level} expected about ${time}, between ${earliest} and ${latest}.`,
  /** Likely in time; it may as well not get there. */
  perhaps: (level: string, time: string, earliest: string, end: string) => {
    const from = earliest === time ? '' : `, ${earliest} at the earliest`;
    return `Level ${level} expected about ${time}${from}. It may not come before take-off at ${end}.`;
  },
  wasExpected: (level: string, time: string) => `Level ${level} was expected about ${time}: look now.`,
  /** Likely not in time; an early look may show it. */
  hardly: (level: string, end: string, earliest: string) =>
    earliest === end
      ? `Level ${level} comes at take-off at ${end} at the earliest, and likely not by then.`
      : `Level ${level} may or may not come in time: ${earliest} at the earliest, and likely not before take-off at ${end}.`,
  notInTime: (level: string, end: string) =>
    `Will not reach level ${level} before the limit, take-off at ${end}.`,
  none,
  dries: 'Lightener that dries out stops lifting.',
  /** Heard, where the dotted line and its band are seen. */
  ahead: (level: string, low: string, high: string, minutes: string) =>
    `ahead: about level ${level} after ${minutes}, from ${low} to ${high}`,
  undertones,
  undertone: (names: readonly string[]) => `Undertone expected: ${names.join(' to ')}`,
  otherUndertone: 'Another undertone',
  nameUndertone: 'Name the undertone',
};

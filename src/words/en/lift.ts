import type { LiftForecast } from '../../../shared/chemistry/liftForecast';
import type { Undertone } from '../../../shared/chemistry/undertone';

type Silence = Extract<LiftForecast, { kind: 'none' }>['why'];

/** Why nothing is said of what comes; what was seen is kept as it was seen. */
const none: Readonly<Record<Silence, (level: string, fewest: string) => string>> = {
  tooFew: (level, fewest) => `Too few looks to say when level ${level} comes: it takes ${fewest} levels.`,
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
  expected: (level: string, time: string, earliest: string, latest: string | null) => {
    const about = `Level ${level} expected about ${time}`;
    const from = earliest === time ? ' or later' : `, ${earliest} at the earliest`;
    if (latest === null) return `${about}${from}, perhaps not before it comes off.`;
    return earliest === latest ? `${about}.` : `${about}, between ${earliest} and ${latest}.`;
  },
  wasExpected: (level: string, time: string) => `Level ${level} was expected about ${time}: look now.`,
  hardly: (level: string, end: string, earliest: string) =>
    `Level ${level} hardly before it comes off at ${end}, ${earliest} at the earliest.`,
  notInTime: (level: string, end: string) => `Will not reach level ${level} before it comes off at ${end}.`,
  none,
  dries: 'Lightener that dries out stops lifting.',
  /** Heard, where the dotted line and its band are seen. */
  ahead: (level: string, low: string, high: string, minutes: string) =>
    `ahead: about level ${level} after ${minutes}, from ${low} to ${high}`,
  undertones,
  undertone: (names: readonly string[]) => `Undertone to expect here: ${names.join(' to ')}`,
};

import type { LiftForecast } from '../../../shared/chemistry/liftForecast';
import type { Undertone } from '../../../shared/chemistry/undertone';

type Silence = Extract<LiftForecast, { kind: 'none' }>['why'];

/** Why nothing is said of what comes; what was seen is kept as it was seen. */
const none: Readonly<Record<Silence, (level: string, fewest: string) => string>> = {
  tooFew: (level, fewest) =>
    `Too few looks to say when to expect level ${level}: it takes ${fewest} readings.`,
  reached: (level) => `Level ${level} was seen: take it off, or go on looking.`,
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

/** Sentences of one strand that still lifts: `earliest` is null once that look is past. */
export interface Ahead {
  readonly expected: (
    level: string,
    time: string,
    earliest: string | null,
    latest: string | null,
    end: string,
  ) => string;
  readonly perhapsNot: (level: string, earliest: string | null, end: string) => string;
}

const lookNow = 'It may be there already: look now.';
const perhapsLate = (end: string): string => `It may not come before take-off at ${end}.`;

const atTakeOff = (level: string, end: string): string =>
  `Level ${level} at take-off at ${end} at the earliest, perhaps not by then.`;

const usual: Ahead = {
  expected: (level, time, earliest, latest, end) => {
    const about = `Level ${level} expected about ${time}`;
    if (latest === null) {
      const from = earliest === null || earliest === time ? '' : `, ${earliest} at the earliest`;
      return `${about}${from}. ${perhapsLate(end)}${earliest === null ? ` ${lookNow}` : ''}`;
    }
    if (earliest === null) return `${about}, ${latest} at the latest. ${lookNow}`;
    return earliest === latest ? `${about}.` : `${about}, between ${earliest} and ${latest}.`;
  },
  perhapsNot: (level, earliest, end) => {
    const late = `Level ${level} perhaps not before it comes off at ${end}`;
    if (earliest === null) return `${late}. ${lookNow}`;
    return earliest === end ? atTakeOff(level, end) : `${late}; ${earliest} at the earliest.`;
  },
};

/** Lightener may dry out any time, and then it comes never: the earliest and the next look first. */
const leadEarliest = (level: string, earliest: string | null): string =>
  earliest === null
    ? `Level ${level} may be there already: look now.`
    : `Level ${level} at ${earliest} at the earliest: go on looking.`;

const lightener: Ahead = {
  expected: (level, time, earliest, latest, end) => {
    const lead = leadEarliest(level, earliest);
    if (latest !== null)
      return `${lead} If it stays wet, ${earliest === time ? '' : `expected about ${time}, `}${latest} at the latest.`;
    // Take-off's time stands right above: with it, and the line on drying, this would be a line too long.
    return earliest === time
      ? `${lead} ${perhapsLate(end)}`
      : `${lead} Expected about ${time} if it stays wet, perhaps not before take-off.`;
  },
  perhapsNot: (level, earliest, end) =>
    earliest === end
      ? `${atTakeOff(level, end)} Go on looking.`
      : earliest === null
        ? `${leadEarliest(level, null)} Perhaps not before it comes off at ${end}.`
        : `Level ${level} perhaps not before it comes off at ${end}; ${earliest} at the earliest. Go on looking.`,
};

/** How a strand lifts, and when it gets there. */
export const lift = {
  usual,
  lightener,
  wasExpected: (level: string, time: string) => `Level ${level} was expected about ${time}: look now.`,
  notInTime: (level: string, end: string) =>
    `Will not reach level ${level} before the limit, take-off at ${end}.`,
  none,
  dries: 'Lightener that dries out stops lifting.',
  /** Heard, where the dotted line and its band are seen. */
  ahead: (level: string, low: string, high: string, minutes: string) =>
    `ahead: about level ${level} after ${minutes}, from ${low} to ${high}`,
  undertones,
  undertone: (names: readonly string[]) => `Undertone expected: ${names.join(' to ')}`,
  otherUndertone: 'Another one',
  nameUndertone: 'Name the undertone',
};

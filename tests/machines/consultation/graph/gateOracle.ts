import type { ConsultationEvent, EventOf } from '../../../../shared/records/event';
import type { Zone } from '../../../../shared/records/zones';

/**
 * What a bowl needs, told from the events of a path alone: an automaton of its own that has seen neither facts nor
 * guards. Kept as words, so that a path and what it knows can be multiplied with the states of the chart.
 */
export interface Heard {
  /** Zones whose last outcome was sound or rough and still stands. */
  readonly good: readonly Zone[];
  /** The same whatever was answered since: what an answer put back lets stand again. */
  readonly held: readonly Zone[];
  /** Zones with a strand of today, or a carried one: nothing is carried beside it. */
  readonly touched: readonly Zone[];
  /** Zones whose strand broke in the mix. */
  readonly broke: readonly Zone[];
  readonly decided: string;
  /** Absolute answers that no named correction took back. */
  readonly absolute: readonly string[];
  /** Zones rinsed and then felt to spring back wet, with nothing put on since; zones rinsed, with nothing on since. */
  readonly springs: readonly Zone[];
  /** Zones that were felt to be weak since, with no wrong tap called. */
  readonly weak: readonly Zone[];
  readonly rinsed: readonly Zone[];
  /** Said to be rinsed while a reaction was looked into. */
  readonly rinsedInCare: readonly Zone[];
  /** Zones whose bowl on the bench is a toner. */
  readonly toners: readonly Zone[];
  /** Bowls that wait on the bench, and bowls on the head. */
  readonly weighed: readonly Zone[];
  readonly on: readonly Zone[];
  /** A bowl was on the head and is rinsed. */
  readonly isRinsed: boolean;
  readonly isOpened: boolean;
  readonly isAway: boolean;
  /** Hair broke on the head that day. */
  readonly isBroken: boolean;
  /** Something stings, or looks like a reaction, and nobody said it is none. */
  readonly isSuspected: boolean;
  /** Back on another day, and what holds for today not said yet. */
  readonly isAskedAnew: boolean;
}

export const nothingHeard: Heard = {
  isOpened: false,
  isAway: false,
  isSuspected: false,
  isBroken: false,
  isAskedAnew: false,
  isRinsed: false,
  good: [],
  held: [],
  touched: [],
  broke: [],
  springs: [],
  weak: [],
  rinsed: [],
  rinsedInCare: [],
  toners: [],
  weighed: [],
  on: [],
  decided: '',
  absolute: [],
};

const mixing = ['asPlanned', 'gentler', 'smallerLift', 'endsOut'];
const add = <T extends string>(list: readonly T[], one: T): readonly T[] =>
  [...new Set([...list, one])].sort();
const drop = <T extends string>(list: readonly T[], one: T): readonly T[] =>
  list.filter((each) => each !== one);

/** The strand of this zone proves nothing any more, whatever is answered. */
const spend = ({ good, held }: Heard, zone: Zone): Pick<Heard, 'good' | 'held'> => ({
  good: drop(good, zone),
  held: drop(held, zone),
});

/** A stop leaves nothing standing by. */
const stop = (heard: Heard, answer: string): Heard => ({
  ...heard,
  absolute: add(heard.absolute, answer),
  weighed: [],
  toners: [],
});

function hearAnswer(before: Heard, { tokens }: EventOf<'ANSWERED'>): Heard {
  const { step, said, bearsOnPlan, planned, restores } = tokens;
  const heard = said === 'absolute' ? stop(before, step) : before;
  const stays = bearsOnPlan ? [] : heard.good;
  const back = restores.filter((zone) => heard.held.includes(zone));
  return {
    ...heard,
    good: [...new Set([...stays, ...back])].filter((zone) => planned.includes(zone)).sort(),
    decided: bearsOnPlan ? '' : heard.decided,
    isAskedAnew: heard.isAskedAnew && (step !== 'client' || said === 'unsaid'),
  };
}

/** What is known after one more event. */
export function hear(before: Heard, event: ConsultationEvent): Heard {
  const isNewDay = event.tokens.isAnotherDay && !before.absolute.includes('client');
  const heard = {
    ...before,
    good: before.good.filter((zone) => !event.tokens.lapsed.includes(zone)),
    ...(isNewDay ? { isAskedAnew: true, decided: '', springs: [], weak: [], isBroken: false } : {}),
  };
  const undecided = { ...heard, decided: '' };
  switch (event.type) {
    case 'OPENED':
      return {
        ...heard,
        isOpened: true,
        absolute: event.tokens.inherits ? add(heard.absolute, 'inherited') : heard.absolute,
      };
    case 'ANSWERED':
      return hearAnswer(heard, event);
    case 'SKIN_TEST_NOTED':
      return event.tokens.isPositive ? stop(heard, 'skinTest') : heard;
    case 'INCOMPATIBILITY_READ':
      return event.tokens.reacted ? stop(heard, 'incompatibility') : heard;
    case 'CORRECTED':
      return event.tokens.voids
        ? { ...undecided, good: [], held: [], absolute: drop(heard.absolute, event.tokens.answer) }
        : heard;
    case 'OUTCOME_CARRIED': {
      const carried = [...event.tokens.sound, ...event.tokens.rough];
      return {
        ...undecided,
        good: carried.reduce(add<Zone>, heard.good),
        held: carried.reduce(add<Zone>, heard.held),
        touched: carried.reduce(add<Zone>, heard.touched),
      };
    }
    case 'STRAND_STARTED':
      return {
        ...undecided,
        touched: add(heard.touched, event.tokens.zone),
        ...spend(heard, event.tokens.zone),
        broke: drop(heard.broke, event.tokens.zone),
      };
    case 'STRAND_DISCARDED':
      return {
        ...heard,
        ...spend(heard, event.tokens.zone),
        touched: drop(heard.touched, event.tokens.zone),
      };
    case 'STRAND_BROKE':
      return { ...heard, broke: add(heard.broke, event.tokens.zone) };
    case 'OUTCOME_RECORDED': {
      const { zone, fibre } = event.tokens;
      const isGood = (fibre === 'sound' || fibre === 'rough') && !heard.broke.includes(zone);
      const mark = isGood ? add : drop;
      return { ...undecided, good: mark(heard.good, zone), held: mark(heard.held, zone) };
    }
    case 'OUTCOME_RETRACTED':
      return { ...undecided, ...spend(heard, event.tokens.zone) };
    case 'REOPENED':
    case 'PLAN_CHANGED':
      return undecided;
    case 'DECIDED':
      return { ...heard, decided: event.tokens.decision };
    case 'BOWL_WEIGHED':
      return { ...heard, weighed: add(heard.weighed, event.tokens.zone) };
    case 'STRETCH_NOTED': {
      const { zone, springsBack, corrects } = event.tokens;
      const weak = corrects ? drop(heard.weak, zone) : heard.weak;
      return springsBack
        ? { ...heard, weak, springs: add(heard.springs, zone) }
        : { ...heard, weak: add(weak, zone), springs: drop(heard.springs, zone) };
    }
    case 'TONER_WEIGHED':
      return {
        ...heard,
        weighed: add(heard.weighed, event.tokens.zone),
        toners: add(heard.toners, event.tokens.zone),
      };
    case 'BOWL_APPLIED':
      return {
        ...heard,
        springs: drop(heard.springs, event.tokens.zone),
        weak: drop(heard.weak, event.tokens.zone),
        rinsed: drop(heard.rinsed, event.tokens.zone),
        toners: drop(heard.toners, event.tokens.zone),
        weighed: drop(heard.weighed, event.tokens.zone),
        on: add(heard.on, event.tokens.zone),
      };
    case 'BOWL_THROWN':
      return {
        ...heard,
        weighed: drop(heard.weighed, event.tokens.zone),
        toners: drop(heard.toners, event.tokens.zone),
      };
    case 'BOWL_RINSED':
      return {
        ...heard,
        ...spend(heard, event.tokens.zone),
        on: drop(heard.on, event.tokens.zone),
        rinsed: add(heard.rinsed, event.tokens.zone),
        rinsedInCare: heard.isSuspected ? add(heard.rinsedInCare, event.tokens.zone) : heard.rinsedInCare,
        isRinsed: true,
      };
    default:
      return hearCare(heard, event);
  }
}

/** No water ran over these after all, where any was said to. */
function putBackOn(heard: Heard, stillOn: readonly Zone[]): Heard {
  const zones = stillOn.filter((zone) => heard.rinsed.includes(zone) && heard.rinsedInCare.includes(zone));
  return {
    ...heard,
    rinsedInCare: [],
    on: zones.reduce(add<Zone>, heard.on),
    rinsed: zones.reduce(drop<Zone>, heard.rinsed),
  };
}

/** Visits and reactions. */
function hearCare(heard: Heard, event: ConsultationEvent): Heard {
  switch (event.type) {
    case 'PARKED':
      return { ...heard, isAway: true };
    case 'RESUMED':
      return {
        ...heard,
        isAway: false,
        isAskedAnew: heard.isAskedAnew || event.tokens.asksAnew,
        springs: event.tokens.asksAnew ? [] : heard.springs,
        weak: event.tokens.asksAnew ? [] : heard.weak,
        isBroken: heard.isBroken && !event.tokens.asksAnew,
      };
    case 'LOOKED': {
      if (event.tokens.of === 'strand') return heard;
      const isBroken = heard.isBroken || event.tokens.breaks === true;
      return event.tokens.stings && !heard.isSuspected
        ? { ...heard, isBroken, isSuspected: true, rinsedInCare: [] }
        : { ...heard, isBroken };
    }
    case 'REACTION_SUSPECTED':
      return { ...heard, isSuspected: true, rinsedInCare: [] };
    case 'NO_REACTION':
      return putBackOn({ ...heard, isSuspected: false }, event.tokens.stillOn ?? []);
    default:
      return heard;
  }
}

/** What keeps every strand and every bowl back after what was heard; null when nothing does. */
function findHold(heard: Heard): string | null {
  if (!heard.isOpened) return 'of a client nobody opened';
  if (heard.absolute.length > 0) return 'past an absolute answer';
  if (heard.isSuspected) return 'while a reaction is looked into';
  if (heard.isAway) return 'for a client who is away';
  return heard.isAskedAnew ? 'before she was asked anew' : null;
}

function findBreachOfCarrying(heard: Heard, event: EventOf<'OUTCOME_CARRIED'>): string | null {
  const { tokens } = event;
  const hold = findHold(hear(heard, event));
  if (hold !== null) return `an outcome carried ${hold}`;
  if (!tokens.isAsLastTime) return 'an outcome carried though something is new';
  return heard.touched.length > 0 ? 'an outcome carried beside a strand of today' : null;
}

function findBreachOfTime(heard: Heard, { tokens }: EventOf<'CLOCK_EXTENDED'>): string | null {
  if (!tokens.isWithinLimit) return 'more time than the maker allows';
  if (heard.isSuspected) return 'more time while a reaction is looked into';
  if (!tokens.isOnHead) return tokens.hasWeakened ? 'more time for a strand that was stretchy' : null;
  if (heard.absolute.length > 0) return 'more time on the head past an absolute answer';
  return heard.decided === '' ? 'more time on the head after what undid the decision' : null;
}

function findBreachOfToner(
  before: Heard,
  event: EventOf<'TONER_WEIGHED'> | EventOf<'BOWL_APPLIED'>,
): string | null {
  const { zone, skinTest } = event.tokens;
  const now = hear(before, event);
  const hold = findHold(now);
  if (hold !== null) return `a toner ${hold}`;
  if (skinTest !== 'clear' && skinTest !== 'notNeeded') return `a toner with a skin test that is ${skinTest}`;
  if (now.isAskedAnew || !before.springs.includes(zone) || before.weak.includes(zone))
    return 'a toner on hair not felt to spring back';
  return before.rinsed.includes(zone) ? null : 'a toner where nothing was rinsed';
}

function findBreachOfBowl(
  before: Heard,
  event: EventOf<'BOWL_WEIGHED'> | EventOf<'BOWL_APPLIED'>,
): string | null {
  const { zone, skinTest } = event.tokens;
  const { good, decided, isBroken } = hear(before, event);
  const hold = findHold(hear(before, event));
  if (hold !== null) return `a bowl ${hold}`;
  if (skinTest !== 'clear' && skinTest !== 'notNeeded') return `a bowl with a skin test that is ${skinTest}`;
  if (isBroken) return 'a bowl on a head on which hair broke';
  if (!good.includes(zone)) return 'a bowl without a sound or rough outcome that stands';
  if (!mixing.includes(decided)) return 'a bowl without a decision that allows mixing';
  return decided === 'endsOut' && zone === 'ends' ? 'a bowl for ends that stay out' : null;
}

/** Why this event must not be accepted after what was heard; null when nothing speaks against it. */
export function findBreach(before: Heard, event: ConsultationEvent): string | null {
  switch (event.type) {
    case 'STRAND_STARTED': {
      const hold = findHold(hear(before, event));
      return hold === null ? null : `a strand ${hold}`;
    }
    case 'OUTCOME_CARRIED':
      return findBreachOfCarrying(before, event);
    case 'CLOCK_EXTENDED':
      return findBreachOfTime(before, event);
    case 'FINISHED':
      return before.isRinsed && [...before.weighed, ...before.on].length === 0
        ? null
        : 'a finish while a bowl stands, or without one';
    case 'TONER_WEIGHED':
      return findBreachOfToner(before, event);
    case 'BOWL_APPLIED':
      return before.toners.includes(event.tokens.zone)
        ? findBreachOfToner(before, event)
        : findBreachOfBowl(before, event);
    case 'BOWL_WEIGHED':
      return findBreachOfBowl(before, event);
    default:
      return null;
  }
}

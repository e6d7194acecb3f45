import type { ConsultationEvent } from '../../../../shared/records/event';
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
  /** Zones whose strand broke in the mix. */
  readonly broke: readonly Zone[];
  readonly decided: string;
  /** Absolute answers that no named correction took back. */
  readonly absolute: readonly string[];
  readonly isOpened: boolean;
}

export const nothingHeard: Heard = {
  isOpened: false,
  good: [],
  held: [],
  broke: [],
  decided: '',
  absolute: [],
};

const mixing = ['asPlanned', 'gentler', 'smallerLift', 'endsOut'];
const add = <T extends string>(list: readonly T[], one: T): readonly T[] =>
  [...new Set([...list, one])].sort();
const drop = <T extends string>(list: readonly T[], one: T): readonly T[] =>
  list.filter((each) => each !== one);

/** What is known after one more event. */
export function hear(before: Heard, event: ConsultationEvent): Heard {
  const heard = { ...before, good: before.good.filter((zone) => !event.tokens.lapsed.includes(zone)) };
  const undecided = { ...heard, decided: '' };
  switch (event.type) {
    case 'OPENED':
      return {
        ...heard,
        isOpened: true,
        absolute: event.tokens.inherits ? add(heard.absolute, 'inherited') : heard.absolute,
      };
    case 'ANSWERED': {
      const { step, said, bearsOnPlan, planned, restores } = event.tokens;
      const stays = bearsOnPlan ? [] : heard.good;
      const back = restores.filter((zone) => heard.held.includes(zone));
      return {
        ...heard,
        good: [...new Set([...stays, ...back])].filter((zone) => planned.includes(zone)).sort(),
        decided: bearsOnPlan ? '' : heard.decided,
        absolute: said === 'absolute' ? add(heard.absolute, step) : heard.absolute,
      };
    }
    case 'SKIN_TEST_NOTED':
      return event.tokens.isPositive ? { ...heard, absolute: add(heard.absolute, 'skinTest') } : heard;
    case 'INCOMPATIBILITY_READ':
      return event.tokens.reacted ? { ...heard, absolute: add(heard.absolute, 'incompatibility') } : heard;
    case 'CORRECTED':
      return event.tokens.voids
        ? { ...undecided, good: [], held: [], absolute: drop(heard.absolute, event.tokens.answer) }
        : heard;
    case 'STRAND_STARTED':
      return {
        ...undecided,
        good: drop(heard.good, event.tokens.zone),
        held: drop(heard.held, event.tokens.zone),
        broke: drop(heard.broke, event.tokens.zone),
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
      return {
        ...undecided,
        good: drop(heard.good, event.tokens.zone),
        held: drop(heard.held, event.tokens.zone),
      };
    case 'REOPENED':
    case 'PLAN_CHANGED':
      return undecided;
    case 'DECIDED':
      return { ...heard, decided: event.tokens.decision };
    case 'BOWL_RINSED':
      return {
        ...heard,
        good: drop(heard.good, event.tokens.zone),
        held: drop(heard.held, event.tokens.zone),
      };
    default:
      return heard;
  }
}

/** Why this event must not be accepted after what was heard; null when nothing speaks against it. */
export function findBreach(before: Heard, event: ConsultationEvent): string | null {
  if (event.type === 'STRAND_STARTED' && !before.isOpened) return 'a strand of a client nobody opened';
  if (event.type === 'STRAND_STARTED' && before.absolute.length > 0) {
    return 'a strand past an absolute answer';
  }
  if (event.type !== 'BOWL_WEIGHED' && event.type !== 'BOWL_APPLIED') return null;
  const { zone, skinTest } = event.tokens;
  const heard = hear(before, event);
  if (heard.absolute.length > 0) return 'a bowl past an absolute answer';
  if (skinTest !== 'clear' && skinTest !== 'notNeeded') return `a bowl with a skin test that is ${skinTest}`;
  if (!heard.good.includes(zone)) return 'a bowl without a sound or rough outcome that stands';
  if (!mixing.includes(heard.decided)) return 'a bowl without a decision that allows mixing';
  return heard.decided === 'endsOut' && zone === 'ends' ? 'a bowl for ends that stay out' : null;
}

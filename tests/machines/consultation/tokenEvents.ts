import type { ConsultationEvent, EventType, TimeTokens, TokensByType } from '../../../shared/records/event';
import { EVENT_VERSION, MODEL_VERSION } from '../../../shared/records/event';
import type { AskStep } from '../../../shared/records/steps';
import type { Zone } from '../../../shared/records/zones';

/** Two mixes by name: the chart compares names and knows nothing else of a mix. */
export const strong = 'sandbar|6';
export const weak = 'sandbar|3';

/** An event as the chart sees it: tokens only, so that the chart alone is proven. Nothing lapsed, unless said. */
export const makeEvent = <T extends EventType>(
  type: T,
  tokens: TokensByType[T],
  time: Partial<TimeTokens> = {},
): ConsultationEvent =>
  ({
    v: EVENT_VERSION,
    type,
    payload: {},
    tokens: { skinTest: 'clear', lapsed: [], isAnotherDay: false, ...tokens, ...time },
    atMs: 0,
    by: 'Opal',
    settingsId: 1,
    modelVersion: MODEL_VERSION,
  }) as unknown as ConsultationEvent;

/** An event that carries no token of its own. */
export const plain = (
  type: {
    [T in EventType]: Record<never, never> extends TokensByType[T] ? T : never;
  }[EventType],
  time: Partial<TimeTokens> = {},
): ConsultationEvent => makeEvent(type, {}, time);

/** It was none; what was said to be rinsed in these zones is still on. */
export const stillOn = (...zones: readonly Zone[]) => makeEvent('NO_REACTION', { stillOn: zones });

export const open = (inherits = false) => makeEvent('OPENED', { inherits });

export const answer = (
  step: AskStep,
  tokens: Partial<TokensByType['ANSWERED']> = {},
  time: Partial<TimeTokens> = {},
) =>
  makeEvent(
    'ANSWERED',
    {
      step,
      said: 'clean',
      rules: [],
      bearsOnPlan: false,
      restores: [],
      planned: ['lengths', 'ends'],
      incompatibility: 'notNeeded',
      ...tokens,
    },
    time,
  );

export const confirm = (step: AskStep, time: Partial<TimeTokens> = {}) =>
  makeEvent('STEP_CONFIRMED', { step }, time);
export const reopen = (step: TokensByType['REOPENED']['step'], time: Partial<TimeTokens> = {}) =>
  makeEvent('REOPENED', { step }, time);
export const correct = (
  subject: TokensByType['CORRECTED']['answer'],
  time: Partial<TimeTokens> = {},
): ConsultationEvent => makeEvent('CORRECTED', { answer: subject, voids: true }, time);
/** A skin test that was noted wrongly, and is not positive. */
export const correctNote = (): ConsultationEvent =>
  makeEvent('CORRECTED', { answer: 'skinTest', voids: false }, { skinTest: 'missing' });
export const noteSkinTest = (isPositive: boolean) =>
  makeEvent('SKIN_TEST_NOTED', { isPositive }, { skinTest: isPositive ? 'positive' : 'clear' });
export const override = (rule: TokensByType['OVERRIDDEN']['rule']) => makeEvent('OVERRIDDEN', { rule });
export const readIncompatibility = (reacted: boolean) => makeEvent('INCOMPATIBILITY_READ', { reacted });

export const startStrand = (
  zone: Zone,
  mix = strong,
  closedBy: readonly string[] = [],
  time: Partial<TimeTokens> = {},
) => makeEvent('STRAND_STARTED', { zone, mix, closedBy }, time);
export const look = (of: 'strand' | 'head', zone: Zone, stings = false, time: Partial<TimeTokens> = {}) =>
  makeEvent('LOOKED', { of, zone, stings }, time);
export const breakOnHead = (zone: Zone) =>
  makeEvent('LOOKED', { of: 'head', zone, stings: false, breaks: true });
export const discard = (zone: Zone) => makeEvent('STRAND_DISCARDED', { zone });
export const resume = (asksAnew = false, time: Partial<TimeTokens> = {}) =>
  makeEvent('RESUMED', { asksAnew }, time);
export const takeOff = (zone: Zone) => makeEvent('STRAND_TAKEN_OFF', { zone });
export const breakStrand = (zone: Zone, mix = strong) => makeEvent('STRAND_BROKE', { zone, mix });
export const record = (
  zone: Zone,
  fibre: TokensByType['OUTCOME_RECORDED']['fibre'] = 'sound',
  mix = strong,
) => makeEvent('OUTCOME_RECORDED', { zone, fibre, mix });
export const carry = (
  tokens: Partial<TokensByType['OUTCOME_CARRIED']> = {},
  time: Partial<TimeTokens> = {},
) => makeEvent('OUTCOME_CARRIED', { isAsLastTime: true, sound: [], rough: [], ...tokens }, time);
export const retract = (zone: Zone, mix = strong) => makeEvent('OUTCOME_RETRACTED', { zone, mix });
export const decide = (
  decision: TokensByType['DECIDED']['decision'] = 'asPlanned',
  isFreer = false,
  time: Partial<TimeTokens> = {},
) => makeEvent('DECIDED', { decision, suggested: isFreer ? 'weSayNo' : decision, isFreer }, time);

export const weigh = (zone: Zone, time: Partial<TimeTokens> = {}) =>
  makeEvent('BOWL_WEIGHED', { zone }, time);
export const throwBowl = (zone: Zone) => makeEvent('BOWL_THROWN', { zone });
export const apply = (zone: Zone, time: Partial<TimeTokens> = {}) =>
  makeEvent('BOWL_APPLIED', { zone }, time);
export const feel = (zone: Zone, springsBack = true, time: Partial<TimeTokens> = {}) =>
  makeEvent('STRETCH_NOTED', { zone, springsBack, corrects: false }, time);

/** Felt again, and the pull before was a wrong tap. */
export const feelAnew = (zone: Zone, springsBack = true) =>
  makeEvent('STRETCH_NOTED', { zone, springsBack, corrects: true });
export const weighToner = (zone: Zone, time: Partial<TimeTokens> = {}) =>
  makeEvent('TONER_WEIGHED', { zone }, time);
export const allOn = (zone: Zone) => makeEvent('BOWL_ALL_ON', { zone });
export const rinse = (zone: Zone) => makeEvent('BOWL_RINSED', { zone });
export const extend = (
  isWithinLimit: boolean,
  isOnHead = false,
  time: Partial<TimeTokens> = {},
  hasWeakened = false,
) => makeEvent('CLOCK_EXTENDED', { isWithinLimit, isOnHead, hasWeakened }, time);

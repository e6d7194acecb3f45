import { isMixingDecision } from '../../shared/judgement/decisions';
import type { Correctable } from '../../shared/records/steps';
import { zones } from '../../shared/records/zones';
import { isStillOn, passTime } from './advanceFacts';
import {
  bowlOf,
  hasBowl,
  hasStrand,
  isAbsoluteAnswer,
  isFree,
  isLast,
  isZoneOpen,
  listAbsolute,
  mayGoOnHead,
  mayTest,
  type Shown,
  strandOf,
  zoneOf,
} from './claims';

/** Each guard a claim; no arithmetic, no answers. Each is replaced by "true" in turn to prove that a test needs it. */
export const guards = {
  isCalm: ({ context }: Shown) => context.facts.care === 'calm',
  isAtBar: ({ context }: Shown) => context.facts.place === 'atBar',
  inherits: ({ event }: Shown) => event.type === 'OPENED' && event.tokens.inherits,
  isStep: ({ event }: Shown, { step }: { step: string }) =>
    'step' in event.tokens && event.tokens.step === step,
  isAbsoluteAnswer,
  isSaid: ({ context, event }: Shown) =>
    event.type === 'STEP_CONFIRMED' &&
    (context.facts.said[event.tokens.step] === 'clean' ||
      context.facts.said[event.tokens.step] === 'judgement'),
  isOpenRule: ({ context, event }: Shown) =>
    event.type === 'OVERRIDDEN' &&
    (context.facts.raised.includes(event.tokens.rule) || event.tokens.isRaised === true) &&
    !context.facts.overridden.includes(event.tokens.rule),
  isFreerRule: ({ event }: Shown) =>
    event.type === 'OVERRIDDEN' && event.tokens.rule === 'judgement.freerThanSuggested',
  isScalpRule: ({ event }: Shown) => event.type === 'OVERRIDDEN' && event.tokens.rule === 'judgement.onScalp',
  isIncompatibilityDue: ({ context }: Shown) => context.facts.incompatibility === 'due',
  isIncompatibilityRunning: ({ context }: Shown) => context.facts.incompatibility === 'running',
  hasGlass: ({ context }: Shown) => context.facts.hasGlass,
  mayTest: ({ context, event }: Shown) => mayTest(passTime(context.facts, event)),
  isMixStillOpen: ({ context, event }: Shown) =>
    event.type === 'STRAND_STARTED' &&
    ![event.tokens.mix, ...event.tokens.closedBy].some((mix) =>
      context.facts.closedMixes.includes(`${mix}@${event.tokens.zone}`),
    ),
  isZoneFree: (shown: Shown) => ['none', 'current', 'stale'].includes(strandOf(shown) ?? ''),
  isStrandRunning: (shown: Shown) => strandOf(shown) === 'running',
  isLastRunning: (shown: Shown) => isLast(shown, 'running'),
  awaitsOutcome: (shown: Shown) => strandOf(shown) === 'takenOff',
  isLastOutcome: (shown: Shown) => isLast(shown, 'takenOff'),
  isEveryStrandCurrent: ({ context, event }: Shown) => {
    const facts = passTime(context.facts, event);
    return hasStrand(facts, 'current') && !hasStrand(facts, 'stale', 'running', 'takenOff');
  },
  isRetractable: (shown: Shown) => {
    const zone = zoneOf(shown.event);
    if (zone === null) return false;
    const { hasBroken, isCarried } = shown.context.facts;
    return strandOf(shown) === 'current' && !hasBroken[zone] && !isCarried[zone];
  },
  isAsLastTime: ({ event }: Shown) => event.type === 'OUTCOME_CARRIED' && event.tokens.isAsLastTime,
  coversPlan: ({ context, event }: Shown) =>
    event.type === 'OUTCOME_CARRIED' &&
    hasStrand(context.facts, ...anyPlanned) &&
    zones.every(
      (zone) =>
        (context.facts.strands[zone] !== 'notPlanned') ===
        [...event.tokens.sound, ...event.tokens.rough].includes(zone),
    ),
  isUntested: ({ context: { facts } }: Shown) =>
    !hasStrand(facts, 'running', 'takenOff', 'current', 'stale') &&
    zones.every((zone) => facts.fibres[zone] === 'unknown'),
  mayDecide: ({ context, event }: Shown) =>
    event.type === 'DECIDED' &&
    (!isMixingDecision(event.tokens.decision) ||
      !event.tokens.isFreer ||
      context.facts.overridden.includes('judgement.freerThanSuggested')),
  isDecision: ({ event }: Shown, { decision }: { decision: string }) =>
    event.type === 'DECIDED' && event.tokens.decision === decision,
  opensAZone: ({ context, event }: Shown) =>
    event.type === 'DECIDED' &&
    zones.some((zone) => isZoneOpen(passTime(context.facts, event), zone, event.tokens.decision)),
  isMixing: ({ event }: Shown) => event.type === 'DECIDED' && isMixingDecision(event.tokens.decision),
  mayMix: ({ context, event }: Shown) => {
    const facts = passTime(context.facts, event);
    const zone = zoneOf(event);
    return (
      zone !== null && mayGoOnHead(facts) && !facts.hasBrokenOnHead && isZoneOpen(facts, zone, facts.decided)
    );
  },
  mayTone: ({ context, event }: Shown) => {
    const facts = passTime(context.facts, event);
    const zone = zoneOf(event);
    return zone !== null && mayGoOnHead(facts) && facts.feltWet[zone] === 'springsBack';
  },
  isBowlRinsed: (shown: Shown) => bowlOf(shown) === 'rinsed',
  isTonerWeighed: (shown: Shown) => bowlOf(shown) === 'tonerWeighed',
  isBowlFree: (shown: Shown) => ['none', 'rinsed', 'thrown'].includes(bowlOf(shown) ?? ''),
  isBowlWeighed: (shown: Shown) => bowlOf(shown) === 'weighed',
  isBowlOn: (shown: Shown) => bowlOf(shown) === 'on',
  isLastOn: ({ context, event }: Shown) =>
    zones.every((zone) => zone === zoneOf(event) || context.facts.bowls[zone] !== 'on'),
  isNothingOn: ({ context }: Shown) => !hasBowl(context.facts, 'on'),
  isNothingWeighed: ({ context }: Shown) => !hasBowl(context.facts, 'weighed', 'tonerWeighed', 'on'),
  isNothingRunning: ({ context }: Shown) => !hasStrand(context.facts, 'running', 'takenOff'),
  isStrandLook: ({ event }: Shown) => event.type === 'LOOKED' && event.tokens.of === 'strand',
  isHeadLook: ({ event }: Shown) => event.type === 'LOOKED' && event.tokens.of === 'head',
  isAbsoluteSubject: ({ context, event }: Shown) =>
    event.type === 'CORRECTED' &&
    event.tokens.voids &&
    listAbsolute(context.facts).includes(event.tokens.answer),
  isStopOpen: ({ context }: Shown) => listAbsolute(context.facts).length > 0,
  leavesStops: ({ context: { facts }, event }: Shown) =>
    (event.type === 'ANSWERED' && facts.said[event.tokens.step] !== 'absolute') ||
    (event.type === 'SKIN_TEST_NOTED' && facts.skinTest !== 'positive') ||
    isAbsoluteAnswer({ context: { facts }, event }),
  isOnlyAbsolute: ({ context }: Shown) => listAbsolute(context.facts).length === 1,
  isCorrecting: ({ event }: Shown, { step }: { step: string }) =>
    event.type === 'CORRECTED' && backTo[event.tokens.answer] === step,
  isNothingAwaited: ({ context }: Shown) => !hasStrand(context.facts, 'takenOff'),
  isDiscardable: (shown: Shown) => {
    const zone = zoneOf(shown.event);
    return zone !== null && !shown.context.facts.hasBroken[zone];
  },
  /** What was said to be rinsed is still on. */
  isStillOn: ({ context, event }: Shown) =>
    event.type === 'NO_REACTION' &&
    context.facts.care === 'suspected' &&
    zones.some((zone) => isStillOn(context.facts, event, zone)),
  isStinging: ({ event }: Shown) => event.type === 'LOOKED' && event.tokens.stings,
  mayStayOn: ({ context, event }: Shown) => {
    const facts = passTime(context.facts, event);
    if (event.type !== 'CLOCK_EXTENDED') return false;
    const { isOnHead, hasWeakened = false } = event.tokens;
    const isSkinSaid = facts.said.client === 'clean' || facts.said.client === 'judgement';
    return !hasWeakened && (!isOnHead || (isSkinSaid && facts.decided !== null && isFree(facts)));
  },
  isRinsed: ({ context }: Shown) => hasBowl(context.facts, 'rinsed'),
  isSkinTestNote: ({ context, event }: Shown) =>
    event.type === 'CORRECTED' &&
    event.tokens.answer === 'skinTest' &&
    !event.tokens.voids &&
    ['waiting', 'clear', 'lapsed', 'notNeeded'].includes(context.facts.skinTest),
  isWithinLimit: ({ event }: Shown) => event.type === 'CLOCK_EXTENDED' && event.tokens.isWithinLimit,
};

const anyPlanned = ['none', 'running', 'takenOff', 'current', 'stale'] as const;

/** To which step does the correction of an absolute answer go back? Always before the strand test. */
const backTo: Readonly<Record<Correctable, string>> = {
  client: 'client',
  hotTools: 'hotTools',
  feelHair: 'feelHair',
  heatSpray: 'heatSpray',
  skinTest: 'client',
  incompatibility: 'hotTools',
  inherited: 'client',
};

import { isMixingDecision } from '../../shared/judgement/decisions';
import type { ConsultationEvent } from '../../shared/records/event';
import { type Correctable, correctables } from '../../shared/records/steps';
import { type Zone, zones } from '../../shared/records/zones';
import { passTime } from './advanceFacts';
import type { BowlFact, Facts, StrandFact } from './facts';

/** What a guard is shown: the facts, with what lapsed by the moment of the event already lapsed, and the event. */
interface Shown {
  readonly context: { readonly facts: Facts };
  readonly event: ConsultationEvent;
}

const zoneOf = ({ tokens }: ConsultationEvent): Zone | null => ('zone' in tokens ? tokens.zone : null);

const strandOf = ({ context, event }: Shown): StrandFact | null => {
  const zone = zoneOf(event);
  return zone === null ? null : passTime(context.facts, event).strands[zone];
};

const bowlOf = ({ context, event }: Shown): BowlFact | null => {
  const zone = zoneOf(event);
  return zone === null ? null : context.facts.bowls[zone];
};

const hasStrand = (facts: Facts, ...kinds: readonly StrandFact[]): boolean =>
  zones.some((zone) => kinds.includes(facts.strands[zone]));
const hasBowl = (facts: Facts, ...kinds: readonly BowlFact[]): boolean =>
  zones.some((zone) => kinds.includes(facts.bowls[zone]));
const isLast = (shown: Shown, kind: StrandFact): boolean =>
  zones.every((zone) => zone === zoneOf(shown.event) || shown.context.facts.strands[zone] !== kind);

/** Which answers stop this consultation for good, until one of them is corrected? */
const listAbsolute = (facts: Facts): readonly Correctable[] =>
  correctables.filter((answer) => {
    if (answer === 'skinTest') return facts.skinTest === 'positive';
    if (answer === 'incompatibility') return facts.incompatibility === 'reacted';
    if (answer === 'inherited') return facts.isInherited;
    return facts.said[answer] === 'absolute';
  });

const isAbsoluteAnswer = ({ event }: Shown): boolean =>
  (event.type === 'ANSWERED' && event.tokens.said === 'absolute') ||
  (event.type === 'SKIN_TEST_NOTED' && event.tokens.isPositive) ||
  (event.type === 'INCOMPATIBILITY_READ' && event.tokens.reacted);

/** No stop is open: nothing absolute, nothing that still has to be judged. */
const isFree = (facts: Facts): boolean =>
  facts.raised.every((rule) => facts.overridden.includes(rule)) && listAbsolute(facts).length === 0;

/** Every step said, nothing open that a person has to judge, nothing absolute: a strand may be tested. */
const mayTest = (facts: Facts): boolean =>
  Object.values(facts.said).every((said) => said === 'clean' || said === 'judgement') &&
  (facts.incompatibility === 'notNeeded' || facts.incompatibility === 'clear') &&
  isFree(facts);

/** May this zone be mixed, as far as strand and decision go? */
const isZoneOpen = (facts: Facts, zone: Zone, decided: Facts['decided']): boolean =>
  facts.strands[zone] === 'current' &&
  (facts.fibres[zone] === 'sound' || facts.fibres[zone] === 'rough') &&
  decided !== null &&
  isMixingDecision(decided) &&
  !(decided === 'endsOut' && zone === 'ends');

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
    context.facts.raised.includes(event.tokens.rule) &&
    !context.facts.overridden.includes(event.tokens.rule),
  isFreerRule: ({ event }: Shown) =>
    event.type === 'OVERRIDDEN' && event.tokens.rule === 'judgement.freerThanSuggested',
  isIncompatibilityDue: ({ context }: Shown) => context.facts.incompatibility === 'due',
  isIncompatibilityRunning: ({ context }: Shown) => context.facts.incompatibility === 'running',
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
    return strandOf(shown) === 'current' && zone !== null && !shown.context.facts.hasBroken[zone];
  },
  mayDecide: ({ context, event }: Shown) =>
    event.type === 'DECIDED' &&
    (!event.tokens.isFreer || context.facts.overridden.includes('judgement.freerThanSuggested')),
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
      zone !== null &&
      mayTest(facts) &&
      (facts.skinTest === 'clear' || facts.skinTest === 'notNeeded') &&
      isZoneOpen(facts, zone, facts.decided)
    );
  },
  isBowlFree: (shown: Shown) => ['none', 'rinsed', 'thrown'].includes(bowlOf(shown) ?? ''),
  isBowlWeighed: (shown: Shown) => bowlOf(shown) === 'weighed',
  isBowlOn: (shown: Shown) => bowlOf(shown) === 'on',
  isLastOn: ({ context, event }: Shown) =>
    zones.every((zone) => zone === zoneOf(event) || context.facts.bowls[zone] !== 'on'),
  isNothingOn: ({ context }: Shown) => !hasBowl(context.facts, 'on'),
  isNothingWeighed: ({ context }: Shown) => !hasBowl(context.facts, 'weighed', 'on'),
  isNothingRunning: ({ context }: Shown) => !hasStrand(context.facts, 'running', 'takenOff'),
  isBowlUsed: ({ context }: Shown) => hasBowl(context.facts, 'rinsed', 'thrown'),
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
  isStinging: ({ event }: Shown) => event.type === 'LOOKED' && event.tokens.stings,
  mayStayOn: ({ context: { facts }, event }: Shown) =>
    event.type === 'CLOCK_EXTENDED' && (!event.tokens.isOnHead || (facts.decided !== null && isFree(facts))),
  isRinsed: ({ context }: Shown) => hasBowl(context.facts, 'rinsed'),
  isSkinTestNote: ({ context, event }: Shown) =>
    event.type === 'CORRECTED' &&
    event.tokens.answer === 'skinTest' &&
    !event.tokens.voids &&
    ['waiting', 'clear', 'lapsed', 'notNeeded'].includes(context.facts.skinTest),
  isWithinLimit: ({ event }: Shown) => event.type === 'CLOCK_EXTENDED' && event.tokens.isWithinLimit,
};

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

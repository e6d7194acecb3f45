import { isMixingDecision } from '../../shared/judgement/decisions';
import type { ConsultationEvent } from '../../shared/records/event';
import { type Correctable, correctables } from '../../shared/records/steps';
import { type Zone, zones } from '../../shared/records/zones';
import { passTime } from './advanceFacts';
import type { BowlFact, Facts, StrandFact } from './facts';

/** What a guard is shown: the facts, with what lapsed by the moment of the event already lapsed, and the event. */
export interface Shown {
  readonly context: { readonly facts: Facts };
  readonly event: ConsultationEvent;
}

export const zoneOf = ({ tokens }: ConsultationEvent): Zone | null => ('zone' in tokens ? tokens.zone : null);

export const strandOf = ({ context, event }: Shown): StrandFact | null => {
  const zone = zoneOf(event);
  return zone === null ? null : passTime(context.facts, event).strands[zone];
};

export const bowlOf = ({ context, event }: Shown): BowlFact | null => {
  const zone = zoneOf(event);
  return zone === null ? null : context.facts.bowls[zone];
};

export const hasStrand = (facts: Facts, ...kinds: readonly StrandFact[]): boolean =>
  zones.some((zone) => kinds.includes(facts.strands[zone]));
export const hasBowl = (facts: Facts, ...kinds: readonly BowlFact[]): boolean =>
  zones.some((zone) => kinds.includes(facts.bowls[zone]));
export const isLast = (shown: Shown, kind: StrandFact): boolean =>
  zones.every((zone) => zone === zoneOf(shown.event) || shown.context.facts.strands[zone] !== kind);

/** Which answers stop this consultation for good, until one of them is corrected? */
export const listAbsolute = (facts: Facts): readonly Correctable[] =>
  correctables.filter((answer) => {
    if (answer === 'skinTest') return facts.skinTest === 'positive';
    if (answer === 'incompatibility') return facts.incompatibility === 'reacted';
    if (answer === 'inherited') return facts.isInherited;
    return facts.said[answer] === 'absolute';
  });

export const isAbsoluteAnswer = ({ event }: Shown): boolean =>
  (event.type === 'ANSWERED' && event.tokens.said === 'absolute') ||
  (event.type === 'SKIN_TEST_NOTED' && event.tokens.isPositive) ||
  (event.type === 'INCOMPATIBILITY_READ' && event.tokens.reacted);

/** No stop is open: nothing absolute, nothing that still has to be judged. */
export const isFree = (facts: Facts): boolean =>
  facts.raised.every((rule) => facts.overridden.includes(rule)) && listAbsolute(facts).length === 0;

/** Every step said, nothing open that a person has to judge, nothing absolute: a strand may be tested. */
export const mayTest = (facts: Facts): boolean =>
  Object.values(facts.said).every((said) => said === 'clean' || said === 'judgement') &&
  (facts.incompatibility === 'notNeeded' || facts.incompatibility === 'clear') &&
  isFree(facts);

/** The same, and the skin test read or not asked for: something may go on her head. */
export const mayGoOnHead = (facts: Facts): boolean =>
  mayTest(facts) && (facts.skinTest === 'clear' || facts.skinTest === 'notNeeded');

/** May this zone be mixed, as far as strand and decision go? */
export const isZoneOpen = (facts: Facts, zone: Zone, decided: Facts['decided']): boolean =>
  facts.strands[zone] === 'current' &&
  (facts.fibres[zone] === 'sound' || facts.fibres[zone] === 'rough') &&
  decided !== null &&
  isMixingDecision(decided) &&
  !(decided === 'endsOut' && zone === 'ends');

import { rules } from '../../shared/judgement/rules';
import type { ConsultationEvent, EventOf } from '../../shared/records/event';
import type { AskStep, Correctable } from '../../shared/records/steps';
import { type ByZone, forEachZone, type Zone } from '../../shared/records/zones';
import { advanceStrands } from './advanceStrands';
import { mapZones, setStrand, undecide, withMember } from './factChanges';
import type { BowlFact, Facts, FeltFact, StrandFact } from './facts';

/** A tested strand no longer stands for the plan; one that still runs or waits is no use either. */
const makeStale = (strands: ByZone<StrandFact>): ByZone<StrandFact> =>
  mapZones(strands, (strand) => (strand === 'notPlanned' || strand === 'none' ? strand : 'stale'));

/** What is in a mix, or off and not told of yet, stays so: its outcome can still be told, even under a stop. */
const isUnderWay = (strand: StrandFact): boolean => strand === 'running' || strand === 'takenOff';

/** An answer put back as it was lets what was tested for it stand again, be it of a zone left out in between. */
const restore = (strands: ByZone<StrandFact>, restored: readonly Zone[]): ByZone<StrandFact> =>
  mapZones(strands, (strand, zone) =>
    (strand === 'stale' || strand === 'none') && restored.includes(zone) ? 'current' : strand,
  );

/** A toner that is thrown leaves its zone as it was before it: rinsed. */
const throwOne = (bowl: BowlFact): BowlFact => (bowl === 'tonerWeighed' ? 'rinsed' : 'thrown');

const throwWeighed = (bowls: ByZone<BowlFact>): ByZone<BowlFact> =>
  mapZones(bowls, (bowl) => (bowl === 'weighed' || bowl === 'tonerWeighed' ? throwOne(bowl) : bowl));

/** How her hair is on another day: nobody has felt it, and a new strand says what it stands. */
const untouched: Pick<Facts, 'feltWet' | 'hasBrokenOnHead'> = {
  feltWet: forEachZone('unfelt'),
  hasBrokenOnHead: false,
};

const feel = (facts: Facts, zone: Zone, felt: FeltFact): Pick<Facts, 'feltWet'> => ({
  feltWet: { ...facts.feltWet, [zone]: felt },
});

/** Weak once is weak: one good pull takes back no bad one, only a wrong tap that is called one. */
function feelNow({ feltWet }: Facts, { tokens }: EventOf<'STRETCH_NOTED'>): FeltFact {
  const wasWeak = feltWet[tokens.zone] === 'weak' && !tokens.corrects;
  return tokens.springsBack && !wasWeak ? 'springsBack' : 'weak';
}

/** Was it said to be rinsed while this reaction was looked into, and is still on? */
export const isStillOn = (facts: Facts, { tokens }: EventOf<'NO_REACTION'>, zone: Zone): boolean =>
  facts.bowls[zone] === 'rinsed' &&
  facts.rinsedInCare.includes(zone) &&
  tokens.stillOn?.includes(zone) === true;

/** It stings: she reacts. It breaks: weak, whatever is felt after the rinse, and nothing else goes on that day. */
const lookAtHead = (facts: Facts, { tokens }: EventOf<'LOOKED'>): Partial<Facts> => ({
  ...(tokens.stings && facts.care === 'calm' ? { care: 'suspected' as const, rinsedInCare: [] } : {}),
  ...(tokens.breaks === true ? { ...feel(facts, tokens.zone, 'weak'), hasBrokenOnHead: true } : {}),
});

const plan = (strand: StrandFact, isPlanned: boolean): StrandFact => {
  if (isUnderWay(strand)) return strand;
  if (!isPlanned) return 'notPlanned';
  return strand === 'notPlanned' ? 'none' : strand;
};

function answer(facts: Facts, { tokens }: EventOf<'ANSWERED'>): Partial<Facts> {
  const planned = mapZones(facts.strands, (strand, zone) => plan(strand, tokens.planned.includes(zone)));
  const stale = makeStale(planned);
  const changed = mapZones(planned, (strand, zone) => (isUnderWay(strand) ? strand : stale[zone]));
  const lifted = facts.overridden.filter((rule) => tokens.rules.includes(rule));
  // A cutting that reacted stops whatever history is told afterwards.
  const hasReacted = facts.incompatibility === 'reacted';
  return {
    said: { ...facts.said, [tokens.step]: tokens.said },
    raised: tokens.rules,
    overridden: lifted,
    incompatibility:
      hasReacted || tokens.incompatibility === 'asBefore' ? facts.incompatibility : tokens.incompatibility,
    strands: restore(tokens.bearsOnPlan ? changed : planned, tokens.restores),
    ...(tokens.bearsOnPlan ? { decided: null } : {}),
    ...(tokens.said === 'absolute' ? { bowls: throwWeighed(facts.bowls) } : {}),
  };
}

/** What was lifted, without what was judged of this step: it is judged anew. */
const dropOf = ({ overridden }: Facts, step: AskStep): Facts['overridden'] =>
  overridden.filter((rule) => rules[rule].step !== step);

/** What holds for today is asked anew at the client, and nothing judged of it stands. */
const askAnew = (facts: Facts): Pick<Facts, 'said' | 'overridden'> => ({
  said: { ...facts.said, client: 'unsaid' },
  overridden: dropOf(facts, 'client'),
});

const takeBack = (facts: Facts, wrong: Correctable): Partial<Facts> => {
  switch (wrong) {
    case 'inherited':
      return { isInherited: false };
    case 'incompatibility':
      return { incompatibility: 'due', hasGlass: false };
    case 'skinTest':
      return {};
    default:
      return {
        said: { ...facts.said, [wrong]: 'unsaid' },
        overridden: dropOf(facts, wrong),
      };
  }
};

/** What was tested and decided under a stop stands for nothing. */
const voidAll = (facts: Facts, back: Partial<Facts>): Partial<Facts> => ({
  ...back,
  ...undecide({ ...facts, ...back }),
  strands: makeStale(facts.strands),
});

const setBowl = (facts: Facts, zone: Zone, bowl: BowlFact): Pick<Facts, 'bowls'> => ({
  bowls: { ...facts.bowls, [zone]: bowl },
});

/** What was on the head is used up: a second round asks for a new strand. */
const spendStrand = (facts: Facts, zone: Zone): Pick<Facts, 'strands'> =>
  facts.strands[zone] === 'notPlanned' ? { strands: facts.strands } : setStrand(facts, zone, 'stale');

function changeFacts(facts: Facts, event: ConsultationEvent): Partial<Facts> {
  switch (event.type) {
    case 'OPENED':
      return { isInherited: event.tokens.inherits };
    case 'ANSWERED':
      return answer(facts, event);
    case 'REOPENED':
    case 'PLAN_CHANGED':
      return undecide(facts);
    case 'SKIN_TEST_NOTED':
      return event.tokens.isPositive ? { bowls: throwWeighed(facts.bowls) } : {};
    case 'OVERRIDDEN':
      return {
        // A stop that came with an update counts from here on as any other: once lifted it can be raised anew.
        raised: event.tokens.isRaised ? withMember(facts.raised, event.tokens.rule) : facts.raised,
        overridden: withMember(facts.overridden, event.tokens.rule),
      };
    case 'CORRECTED':
      return event.tokens.voids ? voidAll(facts, takeBack(facts, event.tokens.answer)) : {};
    case 'INCOMPATIBILITY_STARTED':
      return { incompatibility: 'running', hasGlass: true };
    case 'INCOMPATIBILITY_READ':
      return event.tokens.reacted
        ? { incompatibility: 'reacted', hasGlass: false, bowls: throwWeighed(facts.bowls) }
        : { incompatibility: 'clear' };
    case 'DECIDED':
      return { decided: event.tokens.decision };
    case 'PARKED':
      return { place: 'parked' };
    case 'RESUMED':
      return {
        place: 'atBar',
        ...(event.tokens.asksAnew && facts.said.client !== 'absolute'
          ? { ...askAnew(facts), ...untouched }
          : {}),
      };
    case 'LOOKED':
      return event.tokens.of === 'head' ? lookAtHead(facts, event) : {};
    case 'REACTION_SUSPECTED':
      return { care: 'suspected', rinsedInCare: [] };
    case 'NO_REACTION':
      return {
        care: 'calm',
        rinsedInCare: [],
        bowls: mapZones(facts.bowls, (bowl, zone) => (isStillOn(facts, event, zone) ? 'on' : bowl)),
      };
    case 'REACTION_RECORDED':
      return { care: 'seen', rinsedInCare: [] };
    case 'BOWL_WEIGHED':
      return setBowl(facts, event.tokens.zone, 'weighed');
    case 'BOWL_THROWN':
      return {
        ...setBowl(facts, event.tokens.zone, throwOne(facts.bowls[event.tokens.zone])),
        ...(event.tokens.asksSkin ? askAnew(facts) : {}),
      };
    case 'BOWL_APPLIED':
      return { ...setBowl(facts, event.tokens.zone, 'on'), ...feel(facts, event.tokens.zone, 'unfelt') };
    case 'STRETCH_NOTED':
      return feel(facts, event.tokens.zone, feelNow(facts, event));
    case 'TONER_WEIGHED':
      return setBowl(facts, event.tokens.zone, 'tonerWeighed');
    case 'BOWL_RINSED':
      return {
        ...setBowl(facts, event.tokens.zone, 'rinsed'),
        ...spendStrand(facts, event.tokens.zone),
        ...(facts.care === 'suspected'
          ? { rinsedInCare: withMember(facts.rinsedInCare, event.tokens.zone) }
          : {}),
      };
    default:
      return advanceStrands(facts, event);
  }
}

/** What holds for today was told on another day: asked anew, and nothing stands decided. */
const passDay = (facts: Facts): Facts =>
  facts.said.client === 'absolute'
    ? facts
    : {
        ...facts,
        said: { ...facts.said, client: 'unsaid' },
        ...untouched,
        ...undecide({ ...facts, overridden: dropOf(facts, 'client') }),
      };

/** The facts as the moment of an event makes them, before the event itself: what lapsed by then has lapsed. */
export const passTime = (facts: Facts, { tokens }: ConsultationEvent): Facts => ({
  ...(tokens.isAnotherDay ? passDay(facts) : facts),
  skinTest: tokens.skinTest,
  strands: mapZones(facts.strands, (strand, zone) =>
    strand === 'current' && tokens.lapsed.includes(zone) ? 'stale' : strand,
  ),
});

/** The facts after one accepted event. Pure; from tokens alone. */
export function advanceFacts(facts: Facts, event: ConsultationEvent): Facts {
  const now = passTime(facts, event);
  return { ...now, ...changeFacts(now, event) };
}

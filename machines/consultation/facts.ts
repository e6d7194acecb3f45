import type { Decision } from '../../shared/judgement/decisions';
import type { RuleId } from '../../shared/judgement/rules';
import type { Fibre, Said, SkinTestToken } from '../../shared/records/event';
import type { AskStep } from '../../shared/records/steps';
import { type ByZone, forEachZone, type Zone } from '../../shared/records/zones';

export type StrandFact = 'notPlanned' | 'none' | 'running' | 'takenOff' | 'current' | 'stale';
/** Felt wet on her head since the rinse: weak stays weak until it is said to have been a wrong tap. */
export type FeltFact = 'unfelt' | 'springsBack' | 'weak';

export type BowlFact = 'none' | 'weighed' | 'tonerWeighed' | 'on' | 'rinsed' | 'thrown';

/** All the guards ever look at: small words, finite, plain JSON. Answers stay in the record. */
export interface Facts {
  readonly said: Readonly<Record<AskStep, Said>>;
  /** Judgement stops the answers raise, and those a named person lifted for this service. */
  readonly raised: readonly RuleId[];
  readonly overridden: readonly RuleId[];
  readonly isInherited: boolean;
  readonly skinTest: SkinTestToken;
  readonly incompatibility: 'notNeeded' | 'due' | 'running' | 'clear' | 'reacted';
  /** A cutting stands in its glass, whatever history is told since: what it does is seen all the same. */
  readonly hasGlass: boolean;
  readonly strands: ByZone<StrandFact>;
  readonly fibres: ByZone<Fibre>;
  /** The strand of this zone broke in the mix: that is not a wrong tap and cannot be retracted. */
  readonly hasBroken: ByZone<boolean>;
  /** What stands for this zone was carried from last time: nothing of it was felt today that could be taken back. */
  readonly isCarried: ByZone<boolean>;
  /** `mix@zone` that gummed or broke: closed for good. */
  readonly closedMixes: readonly string[];
  readonly decided: Decision | null;
  readonly bowls: ByZone<BowlFact>;
  /** What a toner asks for, zone by zone. */
  readonly feltWet: ByZone<FeltFact>;
  /** Hair broke on her head today, whatever was on it: nothing else is mixed or put on. */
  readonly hasBrokenOnHead: boolean;
  readonly care: 'calm' | 'suspected' | 'seen';
  /** Said to be rinsed while the reaction was looked into. */
  readonly rinsedInCare: readonly Zone[];
  readonly place: 'atBar' | 'parked';
}

/** Nothing known yet. */
export const firstFacts: Facts = {
  said: { client: 'unsaid', hotTools: 'unsaid', feelHair: 'unsaid', heatSpray: 'unsaid' },
  raised: [],
  overridden: [],
  isInherited: false,
  skinTest: 'missing',
  incompatibility: 'notNeeded',
  hasGlass: false,
  strands: forEachZone('notPlanned'),
  fibres: forEachZone('unknown'),
  hasBroken: forEachZone(false),
  isCarried: forEachZone(false),
  closedMixes: [],
  decided: null,
  bowls: forEachZone('none'),
  feltWet: forEachZone<FeltFact>('unfelt'),
  hasBrokenOnHead: false,
  care: 'calm',
  rinsedInCare: [],
  place: 'atBar',
};

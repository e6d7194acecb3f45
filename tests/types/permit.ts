import type { Mixture, MixtureRefusal, Order } from '../../shared/judgement/mixture';
import { mixture } from '../../shared/judgement/mixture';
import type { MixPermit, TestPermit } from '../../shared/judgement/permit';
import type { Result } from '../../shared/result';

/** What nobody may write: each call has to fail to compile, and to mix nothing when it is run all the same. */
export type Attempt = (order: Order, real: MixPermit) => Result<Mixture, MixtureRefusal>;

const builtByHand = {
  kind: 'mix',
  zone: 'lengths',
  strand: 1,
  decision: 'asPlanned',
  tested: { line: 'Sandbar powder', developerPercent: 12, ratio: 1, heat: 'none', minutes: 25 },
  maxDeveloperPercent: 12,
  maxMinutes: 60,
} as const;
const fromOutside: unknown = builtByHand;

export const attempts: Readonly<Record<string, Attempt>> = {
  // @ts-expect-error a mixture needs a permit first of all
  'no permit at all': (order) => mixture(order, 1),
  // @ts-expect-error undefined is no permit
  undefined: (order) => mixture(undefined, order, 1),
  // @ts-expect-error null is no permit
  null: (order) => mixture(null, order, 1),
  // @ts-expect-error what came from outside is no permit
  unknown: (order) => mixture(fromOutside, order, 1),
  // @ts-expect-error an object that looks like a permit is none
  'an object built by hand': (order) => mixture(builtByHand, order, 1),
  // @ts-expect-error nor is one written down on the spot
  'a literal': (order) => mixture({ kind: 'test', maxG: 1000 }, order, 1),
  // @ts-expect-error the brand has no name outside its module, so that it cannot be written
  'a brand of its own': (order) => mixture({ ...builtByHand, [Symbol('permitBrand')]: 'mix' }, order, 1),
  // @ts-expect-error the refusal of a permit is no permit
  'an unopened result': (order) => mixture({ ok: true, value: builtByHand }, order, 1),
  // @ts-expect-error a permit partly filled in is none
  'a part of one': (order, real) => mixture(real as Partial<MixPermit>, order, 1),
};

/** A permit for a strand and one for a head never pass for each other. */
export function swapPermits(test: TestPermit, mix: MixPermit): void {
  // @ts-expect-error a test permit is none for a head
  const forHead: MixPermit = test;
  // @ts-expect-error a mix permit is none for a strand's few grams
  const forStrand: TestPermit = mix;
  // @ts-expect-error what a permit says cannot be changed
  mix.maxMinutes = 60;
  // @ts-expect-error nor what was tested
  mix.tested.ratio = 5;
  void [forHead, forStrand];
}

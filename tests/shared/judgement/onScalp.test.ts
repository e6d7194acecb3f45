import { describe, expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import { limitBy } from '../../../shared/judgement/limits';
import { mixture, type Order } from '../../../shared/judgement/mixture';
import {
  ASSUMED_LIES_WITHIN_CM,
  isLightener,
  isOnScalp,
  limitOnScalp,
  ON_SCALP_PERCENT,
} from '../../../shared/judgement/onScalp';
import { issuePermit } from '../../../shared/judgement/permit';
import type { RawEvent } from '../../../shared/records/classify';
import { mayCiteStrand } from '../../../shared/records/conflict';
import type { RawForm } from '../../../shared/records/readForm';
import { findStrand } from '../../../shared/records/record';
import type { Zone } from '../../../shared/records/zones';
import { andThen, change, lowRisk, ofType, tell, until } from '../records/telling';

/** A sound strand of each zone in this mix, and as planned. */
const decided = (tested: RawForm) =>
  tell(change(until('BOWL_WEIGHED', lowRisk), ofType('STRAND_STARTED'), tested));
const hot = decided({ developerPercent: '12', heat: 'dryHeat' });
const sign: RawEvent = {
  type: 'OVERRIDDEN',
  answers: { rule: 'judgement.onScalp', code: 'seniorAgreed', words: 'The maker allows it.' },
};

const permitOf = ({ record, atMs }: typeof hot, zone: Zone = 'lengths') => {
  const permit = issuePermit(record, zone, salon, atMs);
  if (!permit.ok) throw new Error(permit.error.code);
  return permit.value;
};
const most = (told: typeof hot, zone?: Zone) => {
  const { maxDeveloperPercent, maxHeat, isLowered } = permitOf(told, zone);
  return [maxDeveloperPercent, maxHeat, isLowered];
};
const order: Order = {
  zone: 'lengths',
  line: 'Sandbar powder',
  developerPercent: 6,
  ratio: 2,
  heat: 'none',
  minutes: 25,
  shades: [{ shade: 'powder', parts: 1 }],
  colourG: 40,
};
const weigh = (told: typeof hot, changed: Partial<Order>) => {
  const made = mixture(permitOf(told), { ...order, ...changed }, 1);
  return made.ok ? 'mixed' : made.error;
};

describe('lightener on the scalp', () => {
  it('is 20 vol at most and takes no dry heat, whatever the strand held (common practice, no source)', () => {
    expect(ON_SCALP_PERCENT).toBe(6);
    expect(most(hot)).toEqual([6, 'none', true]);
    expect(most(decided({ developerPercent: '6.1', heat: 'none' }))).toEqual([6, 'none', true]);
    expect(most(decided({ developerPercent: '6', heat: 'none' }))).toEqual([6, 'none', false]);
    expect(weigh(hot, {})).toBe('mixed');
    expect(weigh(hot, { developerPercent: 6.1 })).toEqual({ code: 'stronger', most: 6 });
    expect(weigh(hot, { heat: 'dryHeat' })).toEqual({ code: 'hotter' });
  });

  it('is refused at the door as it is at the scale', () => {
    const weighed: RawEvent = {
      type: 'BOWL_WEIGHED',
      answers: {
        ...{ zone: 'lengths', shades: [{ shade: 'powder', parts: '1' }], colourG: '40', minutes: '25' },
        ...{ line: 'Sandbar powder', batch: '', developerPercent: '12', ratio: '2', heat: 'none' },
      },
    };
    expect(() => andThen(hot, weighed)).toThrow('stronger');
    const { record } = andThen(andThen(hot, sign), weighed);
    expect(record.bowls.map(({ developerPercent }) => developerPercent)).toEqual([12]);
    expect(record.judged.map(({ rule }) => rule)).toEqual(['judgement.onScalp']);
  });

  it('is as tested once a named person answers for it, until something else is decided', () => {
    expect(most(andThen(hot, sign))).toEqual([12, 'dryHeat', false]);
    const back: RawEvent = { type: 'REOPENED', answers: { step: 'strandTest' } };
    expect(andThen(andThen(hot, sign), back).record.overrides).toEqual([]);
  });

  it('is never signed for because a strand held: it has no skin', () => {
    expect(mayCiteStrand(hot.record, 'judgement.onScalp')).toBe(false);
    expect(mayCiteStrand(hot.record, 'judgement.freerThanSuggested')).toBe(true);
  });

  it('is not what goes on the ends, nor what is in foil; without its foil it is', () => {
    expect([isOnScalp('none'), isOnScalp('dryHeat'), isOnScalp('foil')]).toEqual([true, true, false]);
    expect(most(hot, 'ends')).toEqual([12, 'dryHeat', false]);
    const foil = decided({ developerPercent: '12', heat: 'foil' });
    expect(most(foil)).toEqual([12, 'foil', false]);
    expect(weigh(foil, { developerPercent: 12, heat: 'foil' })).toBe('mixed');
    expect(weigh(foil, { developerPercent: 12 })).toEqual({ code: 'stronger', most: 6 });
  });

  it('is on the ends too where they begin less than 5 cm from it (ASSUMED_LIES_WITHIN_CM)', () => {
    const long = (lengthCm: number) => {
      const { record } = hot;
      const client = { ...record.answers.client, lengthCm };
      const strand = findStrand(record, 'ends');
      if (strand === undefined) throw new Error('no strand');
      const cut = { ...record, answers: { ...record.answers, client } } as typeof record;
      return limitOnScalp(cut, strand, salon, limitBy('asPlanned', strand)).maxDeveloperPercent;
    };
    // Ends are the last third: of 7.4 cm they begin at 4.9, of 7.5 at 5.
    expect([7.4, 7.5, 3].map(long)).toEqual([6, 12, 6]);
    expect(ASSUMED_LIES_WITHIN_CM).toBe(5);
  });

  it('was not known before model 5', () => {
    const strand = findStrand(hot.record, 'lengths');
    if (strand === undefined) throw new Error('no strand');
    const limits = limitBy('asPlanned', { ...strand });
    const at = (modelVersion: number) => limitOnScalp({ ...hot.record, modelVersion }, strand, salon, limits);
    expect(at(4)).toMatchObject({ maxDeveloperPercent: 12, maxHeat: 'dryHeat', scalpPercent: null });
    expect(at(5)).toMatchObject({ maxDeveloperPercent: 6, maxHeat: 'none', scalpPercent: 6 });
  });
});

it('a line is lightener as the shelf says, else where she wants to be lifted or it was over 20 vol', () => {
  const lighten = { client: { service: 'lighten' } } as const;
  expect(isLightener(salon, { client: { service: 'gloss' } } as never, 'sandbar POWDER')).toBe(true);
  expect(isLightener(salon, lighten as never, 'Sandbar cream')).toBe(false);
  expect(isLightener(salon, lighten as never, 'Another line')).toBe(true);
  const lift = { client: { service: 'liftAndDeposit' } } as never;
  expect(['Another line', 'Sandbar cream'].map((line) => isLightener(salon, lift, line))).toEqual([
    true,
    false,
  ]);
  const tone = { client: { service: 'tone' } } as never;
  const of = (line: string, percent: number) => isLightener(salon, tone, line, percent);
  expect([of('Another line', 6), of('Another line', 6.1), of('Sandbar cream', 12)]).toEqual([
    false,
    true,
    false,
  ]);
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import { LEGAL_CEILING_PERCENT, toVolumes } from '../../../shared/chemistry/peroxide';
import { type Mixture, mixture, type Order } from '../../../shared/judgement/mixture';
import {
  ASSUMED_TEST_MAX_G,
  issuePermit,
  issueTestPermit,
  type MixPermit,
  type TestPermit,
} from '../../../shared/judgement/permit';
import { change, lowRisk, ofType, tell, until } from '../records/telling';
import { holds } from '../seeded';

const tested = { developerPercent: '12', ratio: '1.5', heat: 'foil', minutes: '25' };
const told = tell(change(until('BOWL_WEIGHED', lowRisk), ofType('STRAND_STARTED'), tested));
const permitFor = (zone: 'lengths' | 'ends'): MixPermit => {
  const permit = issuePermit(told.record, zone, salon, told.atMs);
  if (!permit.ok) throw new Error(permit.error.code);
  return permit.value;
};
const testPermit = (): TestPermit => {
  const permit = issueTestPermit(told.record, salon);
  if (!permit.ok) throw new Error(permit.error.code);
  return permit.value;
};
const permit = permitFor('lengths');

const order: Order = {
  zone: 'lengths',
  line: 'Sandbar powder',
  developerPercent: 12,
  ratio: 1.5,
  heat: 'foil',
  minutes: 25,
  shades: [{ shade: 'powder', parts: 1 }],
  colourG: 40,
};
const said = (change: Partial<Order>, by: MixPermit | TestPermit = permit, stepG = 1) => {
  const made = mixture(by, { ...order, ...change }, stepG);
  return made.ok ? 'mixed' : made.error;
};

describe('a bowl within what was tested', () => {
  it('is said with its bottle first: 12 % bottle (40 vol), 7.2 % in the bowl at 1 : 1.5 (exact mass balance)', () => {
    const made = mixture(permit, order, 1) as { value: Mixture };
    expect(made.value).toEqual({
      shades: [{ shade: 'powder', amountG: 40 }],
      developerG: 60,
      developerOffG: 0,
      totalG: 100,
      remainderG: 0,
      bottlePercent: 12,
      bowlPercent: expect.closeTo(7.2, 12),
    });
    // 40 volumes = 12 %: published, Reg. (EC) 1223/2009 Annex III entry 12.
    expect(toVolumes(made.value.bottlePercent)).toBe(40);
  });

  it('is 6 % in the bowl from a 12 % bottle at 1 : 1 (exact mass balance)', () => {
    const made = mixture(testPermit(), { ...order, ratio: 1, colourG: 5 }, 1);
    expect(made).toMatchObject({ value: { bottlePercent: 12, bowlPercent: 6, totalG: 10 } });
  });

  it('splits the colour by its parts and keeps what the scale cannot show apart', () => {
    const shades = [
      { shade: 'Dune', parts: 2 },
      { shade: 'Kelp', parts: 1 },
    ];
    expect(mixture(permit, { ...order, shades, colourG: 40.4 }, 1)).toMatchObject({
      value: {
        shades: [
          { shade: 'Dune', amountG: 27 },
          { shade: 'Kelp', amountG: 13 },
        ],
        developerG: 60,
        totalG: 100,
        remainderG: 0.4,
      },
    });
  });
});

describe('the grams', () => {
  const stepsOf = (grams: number, stepG: number) => (grams * 1000) / (stepG * 1000);

  it('are whole steps of the scale, add up to the milligram, and keep the ratio within a twentieth (ASSUMED)', () =>
    holds(
      fc.property(
        fc.constantFrom(0.1, 0.5, 1),
        fc.integer({ min: 50, max: 3000 }),
        fc.array(fc.integer({ min: 1, max: 8 }), { minLength: 1, maxLength: 4 }),
        (stepG, colourDg, parts) => {
          const shades = parts.map((part, index) => ({ shade: String(index), parts: part / 4 }));
          const made = mixture(permit, { ...order, shades, colourG: colourDg / 10 }, stepG);
          if (!made.ok) expect(made.error).toEqual({ code: 'stepTooCoarse' });
          if (!made.ok) return;
          const { developerG, developerOffG, totalG, remainderG } = made.value;
          const amountsG = made.value.shades.map(({ amountG }) => amountG);
          for (const grams of [...amountsG, developerG, totalG]) {
            expect(stepsOf(grams, stepG)).toBeCloseTo(Math.round(stepsOf(grams, stepG)), 9);
            expect(String(grams).length, String(grams)).toBeLessThanOrEqual(6);
          }
          const colourG = amountsG.reduce((sum, grams) => sum + Math.round(grams * 1000), 0) / 1000;
          expect(Math.round(totalG * 1000)).toBe(Math.round((colourG + developerG) * 1000));
          expect(Math.round((colourG + remainderG) * 1000)).toBe(colourDg * 100);
          expect(Math.abs(developerG - colourG * 1.5)).toBeLessThanOrEqual(stepG / 2 + 1e-9);
          expect(Math.abs(developerG / colourG / 1.5 - 1)).toBeLessThanOrEqual(0.05);
          expect(developerOffG).toBeCloseTo(developerG - colourG * 1.5, 3);
        },
      ),
    ));
});

describe('anything beyond what was tested', () => {
  it('is refused one step beyond its edge, and not at it', () => {
    expect(said({})).toBe('mixed');
    expect(said({ developerPercent: 9 })).toBe('mixed');
    expect(said({ minutes: 1 })).toBe('mixed');
    expect(said({ minutes: 25.1 })).toEqual({ code: 'longer', most: 25 });
    expect(said({ heat: 'none', developerPercent: 6 })).toBe('mixed');
    expect(said({ heat: 'dryHeat' })).toEqual({ code: 'hotter' });
    expect(said({ ratio: 1.4 })).toEqual({ code: 'anotherRatio' });
    expect(said({ ratio: 1.6 })).toEqual({ code: 'anotherRatio' });
    expect(said({ line: ' SANDBAR powder ' })).toBe('mixed');
    expect(said({ line: 'Sandbar cream' })).toEqual({ code: 'anotherLine' });
    expect(said({ zone: 'ends' })).toEqual({ code: 'anotherZone' });
    expect(said({ zone: 'ends' }, permitFor('ends'))).toBe('mixed');
  });

  it('ends at 12.0 % for every permit (published: Reg. (EC) 1223/2009 Annex III entry 12)', () => {
    expect(LEGAL_CEILING_PERCENT).toBe(12);
    for (const by of [permit, testPermit()]) {
      expect(said({ developerPercent: 12, colourG: 6 }, by)).toBe('mixed');
      expect(said({ developerPercent: 12.1, colourG: 5 }, by)).toEqual({ code: 'overCeiling' });
      expect(said({ developerPercent: -0.1, colourG: 5 }, by)).toEqual({ code: 'overCeiling' });
    }
  });

  it('ends at what the decision allows: one step of 3 % down for gentler (common practice)', () => {
    const steps = change(until('BOWL_WEIGHED', lowRisk), ofType('STRAND_STARTED'), tested);
    const gentler = tell(change(steps, ofType('DECIDED'), { decision: 'gentler' }));
    const issued = issuePermit(gentler.record, 'lengths', salon, gentler.atMs);
    if (!issued.ok) throw new Error(issued.error.code);
    expect(said({ developerPercent: 9 }, issued.value)).toBe('mixed');
    expect(said({ developerPercent: 9.1 }, issued.value)).toEqual({ code: 'stronger', most: 9 });
  });

  it('is no mix when a figure is none at all', () => {
    for (const broken of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) {
      for (const field of ['developerPercent', 'ratio', 'colourG'] as const) {
        expect(said({ [field]: broken }), `${field} ${broken}`).not.toBe('mixed');
      }
      expect(said({ shades: [{ shade: 'x', parts: broken }] })).not.toBe('mixed');
      expect(mixture(permit, order, broken).ok).toBe(false);
    }
    expect(said({ minutes: Number.NaN })).toEqual({ code: 'longer', most: 25 });
    expect(said({ colourG: 0 })).toEqual({ code: 'notPositive' });
    expect(said({ shades: [] })).toEqual({ code: 'noParts' });
    expect(said({ colourG: 1001 })).toEqual({ code: 'tooMuch' });
    expect(said({}, permit, 50)).toEqual({ code: 'stepTooCoarse' });
    // 5 g at 1 : 1.5 would be weighed as 5 + 8, a twentieth and more beside what was tested; 7 g as 7 + 11 is not.
    expect(said({ colourG: 5 })).toEqual({ code: 'stepTooCoarse' });
    expect(said({ colourG: 7 })).toBe('mixed');
    expect(said({ colourG: 400 })).toBe('mixed');
    expect(said({ colourG: 401 })).toEqual({ code: 'tooMuch' });
  });
});

describe('a test permit', () => {
  it('mixes twenty grams for a strand (ASSUMED) and not a tenth more: never a head', () => {
    expect(ASSUMED_TEST_MAX_G).toBe(20);
    const by = testPermit();
    expect(said({ colourG: 8 }, by)).toBe('mixed');
    expect(mixture(by, { ...order, colourG: 8 }, 1)).toMatchObject({ value: { totalG: 20 } });
    expect(said({ colourG: 8.1 }, by, 0.1)).toEqual({ code: 'tooMuchForAStrand', most: 20 });
    expect(said({ colourG: 9 }, by)).toEqual({ code: 'tooMuchForAStrand', most: 20 });
    expect(said({}, by)).toEqual({ code: 'tooMuchForAStrand', most: 20 });
  });
});

describe('a forged permit', () => {
  const forgeries: readonly (readonly [string, unknown])[] = [
    ['a copy', { ...permit }],
    ['a clone', structuredClone(permit)],
    ['one that went through JSON', JSON.parse(JSON.stringify(permit))],
    ['one that inherits from a real one', Object.create(permit)],
    ['one built by hand', { ...permit, maxDeveloperPercent: 12, maxMinutes: 60 }],
    ['a proxy of a real one', new Proxy(permit, {})],
    ['a test permit raised to a kilogram', { ...testPermit(), maxG: 1000 }],
    ['nothing', undefined],
    ['null', null],
    ['a word', 'mix'],
    ['a function', () => permit],
  ];

  it.each(forgeries)('that is %s mixes nothing', (_what, forged) => {
    expect(mixture(permit, order, 1).ok).toBe(true);
    expect(mixture(forged as MixPermit, order, 1)).toEqual({ ok: false, error: { code: 'forged' } });
  });

  it('is not made by bending a real one: what a permit says cannot be changed', () => {
    const bent = permitFor('lengths');
    expect(() => Object.assign(bent, { maxMinutes: 60, zone: 'ends' })).toThrow(TypeError);
    expect(() => Object.assign(bent.tested, { ratio: 5, line: 'Sandbar cream' })).toThrow(TypeError);
    expect(said({ minutes: 60 }, bent)).toEqual({ code: 'longer', most: 25 });
    const strand = testPermit();
    expect(() => Object.assign(strand, { maxG: 1000, kind: 'mix' })).toThrow(TypeError);
    expect(said({}, strand)).toEqual({ code: 'tooMuchForAStrand', most: 20 });
  });
});

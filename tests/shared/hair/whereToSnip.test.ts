import { describe, expect, it } from 'vitest';
import { findEndsFrom } from '../../../shared/chemistry/bleach';
import { findAnotherPlace, listSnips, type SnipPlan } from '../../../shared/hair/whereToSnip';
import type { HairHistory } from '../../../shared/heat/hairHistory';
import { exactly, makeRange } from '../../../shared/units/range';
import { allKnown, twoYearsWet } from '../heat/histories';

const fullHead: SnipPlan = { zones: ['lengths', 'ends'], isLifting: true };
const untouched: HairHistory = { ...allKnown, habits: [] };
const bleach = { weeksAgo: exactly(40), place: 'all', sureness: 'told' } as const;

describe('where to snip', () => {
  it('is at the oldest hair of each zone where nothing was done to it, at two places', () => {
    expect(listSnips(untouched, fullHead)).toEqual([
      { zone: 'lengths', cm: findEndsFrom(30), place: 'crown', why: ['oldest'] },
      { zone: 'ends', cm: 30, place: 'hairline', why: ['oldest'] },
    ]);
  });

  it('is where she irons for the ends, and for lightening at the finest hair for the lengths', () => {
    const [lengths, ends] = listSnips(allKnown, fullHead);
    expect(lengths).toEqual({ zone: 'lengths', cm: 20, place: 'hairline', why: ['finest'] });
    expect(ends).toEqual({ zone: 'ends', cm: 30, place: 'whereIroned', why: ['ironedWet'] });
    const toned = listSnips(allKnown, { ...fullHead, isLifting: false });
    expect(toned.map(({ place }) => place)).toEqual(['whereIroned', 'whereIroned']);
  });

  it('is never the nape', () => {
    for (const history of [untouched, allKnown]) {
      expect(listSnips(history, fullHead).map(({ place }) => place)).not.toContain('nape');
    }
  });

  it('for roots only lies just beyond the new growth, where colour runs over', () => {
    const plan: SnipPlan = { zones: ['roots'], isLifting: true };
    expect(listSnips(untouched, plan)).toEqual([
      { zone: 'roots', cm: 4.5, place: 'hairline', why: ['overlap'] },
    ]);
    const [snip] = listSnips(allKnown, { ...plan, regrowthCm: 2 });
    expect(snip).toMatchObject({ cm: 2.5, why: ['ironedWet', 'overlap'] });
  });

  it('leaves the ends out where the colour does', () => {
    const snips = listSnips(allKnown, { zones: ['lengths'], isLifting: true });
    expect(snips.map(({ cm }) => cm)).toEqual([findEndsFrom(30)]);
  });

  it('is also in a band of old bleach, where that is not the weakest place', () => {
    const band = { ...bleach, place: 'band' } as const;
    const plan: SnipPlan = { zones: ['lengths', 'ends'], isLifting: true };
    expect(listSnips({ ...allKnown, bleaches: [band] }, plan)).toEqual([
      { zone: 'lengths', cm: 20, place: 'whereIroned', why: ['ironedWet'] },
      { zone: 'lengths', cm: 14, place: 'oldBleach', why: ['mostBleach'] },
      { zone: 'ends', cm: 30, place: 'whereIroned', why: ['ironedWet'] },
    ]);
    const [weakest] = listSnips({ ...untouched, bleaches: [band] }, { zones: ['lengths'], isLifting: true });
    expect(weakest).toEqual({ zone: 'lengths', cm: 14, place: 'oldBleach', why: ['bleached'] });
  });

  it('names what was told as told, and what nobody knows as may be', () => {
    const told = listSnips({ ...untouched, bleaches: [bleach] }, { ...fullHead, isLifting: false });
    expect(told.map(({ why }) => why)).toEqual([['bleached'], ['bleached']]);
    const unsure = { ...bleach, weeksAgo: makeRange(0, 10, 20), sureness: 'possible' } as const;
    const [maybe] = listSnips({ ...untouched, bleaches: [unsure] }, { ...fullHead, isLifting: false });
    expect(maybe).toMatchObject({ place: 'hairline', why: ['mayBeBleached'] });
    const wetness = 'unknown' as const;
    const [wet] = listSnips(
      { ...allKnown, habits: [{ ...twoYearsWet, wetness }] },
      { ...fullHead, isLifting: false },
    );
    expect(wet).toMatchObject({ place: 'whereIroned', why: ['mayBeIronedWet'] });
    const dry = { ...allKnown, habits: [{ ...twoYearsWet, wetness: 'dry' as const }] };
    expect(listSnips(dry, { zones: ['lengths'], isLifting: false })[0]?.why).toEqual(['ironed']);
  });

  it('follows the reach of the colour on very short hair', () => {
    const short = { ...allKnown, lengthCm: exactly(2) };
    for (const { cm } of listSnips(short, { zones: ['roots', 'lengths', 'ends'], isLifting: true })) {
      expect(cm).toBeLessThanOrEqual(2);
    }
  });
});

describe('one more strand', () => {
  const snips = listSnips(allKnown, { zones: ['lengths'], isLifting: true });

  it('is from the worst place the map names, as long as that was not tested', () => {
    expect(findAnotherPlace(snips, [])).toBe('whereIroned');
    expect(findAnotherPlace(snips, [{ zone: 'lengths', place: 'crown' }])).toBe('whereIroned');
  });

  it('is from another place once that was, and from none when all were', () => {
    const tested = (['whereIroned', 'hairline', 'crown', 'fringe'] as const).map((place) => ({
      zone: 'lengths' as const,
      place,
    }));
    expect(findAnotherPlace(snips, tested.slice(0, 1))).toBe('hairline');
    expect(findAnotherPlace(snips, tested)).toBeNull();
  });
});

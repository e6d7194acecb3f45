import { describe, expect, it } from 'vitest';
import { findEndsFrom } from '../../../shared/chemistry/bleach';
import { listSnips, type SnipPlan } from '../../../shared/hair/whereToSnip';
import type { HairHistory } from '../../../shared/heat/profile';
import { exactly } from '../../../shared/units/range';
import { allKnown, twoYearsWet } from '../heat/histories';

const fullHead: SnipPlan = { zones: ['lengths', 'ends'], isLifting: true };
const untouched: HairHistory = { ...allKnown, habits: [] };

describe('where to snip', () => {
  it('is at the oldest hair of each zone where nothing was done to it, from the finest hair', () => {
    expect(listSnips(untouched, fullHead)).toEqual([
      { zone: 'lengths', cm: findEndsFrom(30), place: 'hairline', why: ['oldest'] },
      { zone: 'ends', cm: 30, place: 'hairline', why: ['oldest'] },
    ]);
  });

  it('is where she irons, and for lightening from a second place too', () => {
    const [lengths, ends] = listSnips(allKnown, fullHead);
    expect(lengths).toEqual({ zone: 'lengths', cm: 20, place: 'whereIroned', why: ['ironedWet'] });
    expect(ends).toEqual({ zone: 'ends', cm: 30, place: 'hairline', why: ['ironedWet', 'finest'] });
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

  it('goes to an old band of bleach, wherever it lies', () => {
    const touchUp = { weeksAgo: exactly(40), reach: 'roots', sureness: 'told' } as const;
    const [snip] = listSnips({ ...untouched, bleaches: [touchUp] }, { zones: ['lengths'], isLifting: true });
    expect(snip).toEqual({ zone: 'lengths', cm: 14, place: 'oldBleach', why: ['band'] });
  });

  it('calls hair bleached all along bleached, not a band', () => {
    const all = { weeksAgo: exactly(0), reach: 'all', sureness: 'told' } as const;
    const [, ends] = listSnips({ ...untouched, bleaches: [all] }, { ...fullHead, isLifting: false });
    expect(ends).toMatchObject({ place: 'oldBleach', why: ['bleached'] });
  });

  it('names dry ironing as that', () => {
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

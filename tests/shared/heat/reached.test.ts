import { describe, expect, it } from 'vitest';
import { computeBoilingPoint } from '../../../shared/heat/boilingPoint';
import { listReached } from '../../../shared/heat/reached';
import { brand } from '../../../shared/units/brand';
import type { Celsius } from '../../../shared/units/temperature';
import { allKnown, twoYearsWet } from './histories';

const seaLevel = computeBoilingPoint(0);
const idsOf = (habits: (typeof twoYearsWet)[], boilsAt = seaLevel) =>
  listReached({ ...allKnown, habits }, boilsAt).map(({ id }) => id);

describe('what heat reached', () => {
  it('tells a setting that was told from one that nobody knows', () => {
    const unknown = { ...twoYearsWet, settingC: 'unknown' as const };
    const reached = listReached({ ...allKnown, habits: [twoYearsWet, unknown] }, seaLevel);
    const told = reached.filter(({ isTold }) => isTold).map(({ id }) => id);
    expect(told).toEqual(idsOf([twoYearsWet]));
    expect(reached.find(({ id }) => id === 'hairBurns')?.isTold).toBe(false);
  });

  it('is each threshold once, coolest first, from the hair outwards that was there', () => {
    const stopped = { ...twoYearsWet, settingC: 155, stoppedWeeksAgo: 40 };
    const reached = listReached({ ...allKnown, habits: [stopped, { ...stopped, settingC: 151 }] }, seaLevel);
    expect(reached.map(({ id }) => id)).toEqual(['staysHotAfterUse', 'waterBoils', 'poresBegin']);
    for (const { fromCm } of reached) expect(fromCm).toBe(10);
  });

  it('begins at the scalp while she still does, and where she doesn’t know whether', () => {
    for (const stoppedWeeksAgo of [0, 'unknown'] as const) {
      const [first] = listReached({ ...allKnown, habits: [{ ...twoYearsWet, stoppedWeeksAgo }] }, seaLevel);
      expect(first?.fromCm).toBe(0);
    }
  });

  it('is nothing under a dryer, whatever it is set to', () => {
    expect(idsOf([{ ...twoYearsWet, tool: 'dryer', settingC: 250 }])).toEqual([]);
  });

  it('boils water where it boils here', () => {
    const cool = { ...twoYearsWet, settingC: 95 };
    expect(idsOf([cool])).not.toContain('waterBoils');
    expect(idsOf([cool], computeBoilingPoint(2_000))).toContain('waterBoils');
    expect(idsOf([{ ...cool, wetness: 'dry' }], computeBoilingPoint(2_000))).not.toContain('waterBoils');
    expect(idsOf([cool], brand<Celsius>(95))).toContain('waterBoils');
    expect(idsOf([cool], brand<Celsius>(95.1))).not.toContain('waterBoils');
  });

  it('leaves out what melts on slow passes where each pass is short', () => {
    const hot = { ...twoYearsWet, settingC: 225 };
    expect(idsOf([{ ...hot, passes: 6 }])).not.toContain('meltsOnSlowPasses');
    expect(idsOf([{ ...hot, passes: 2 }])).toContain('meltsOnSlowPasses');
  });
});

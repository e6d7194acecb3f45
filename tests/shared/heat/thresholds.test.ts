import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { heatThresholds, listThresholdsMet } from '../../../shared/heat/thresholds';
import { brand } from '../../../shared/units/brand';
import type { Celsius } from '../../../shared/units/temperature';
import { holds, numberBetween } from '../seeded';

const celsius = (value: number) => brand<Celsius>(value);

describe('the thresholds', () => {
  it('stand coolest first, once each, every one with its mark', () => {
    const temperatures = heatThresholds.map(({ from }) => from);
    expect(temperatures).toEqual([...temperatures].sort((a, b) => a - b));
    expect(new Set(heatThresholds.map(({ id }) => id)).size).toBe(heatThresholds.length);
    for (const { mark } of heatThresholds)
      expect(mark).toMatch(/^(published: .+ \d{4}|common practice, no source)/);
  });

  it.each(heatThresholds.map(({ id, from, hair }) => ({ id, from, hair })))(
    '$id is met at its temperature and not a tenth of a degree below',
    ({ id, from, hair }) => {
      const wetness = hair === 'dry' ? 'dry' : 'wet';
      expect(listThresholdsMet(from, wetness)).toContain(id);
      expect(listThresholdsMet(celsius(from - 0.1), wetness)).not.toContain(id);
    },
  );

  it('need water where their source says so; damp hair has it, dry hair has not', () => {
    expect(listThresholdsMet(celsius(195), 'dry')).toEqual(['staysHotAfterUse']);
    const wet = ['staysHotAfterUse', 'waterBoils', 'poresBegin', 'helixMeltsInWater', 'poresRiseFast'];
    expect(listThresholdsMet(celsius(195), 'wet')).toEqual(wet);
    expect(listThresholdsMet(celsius(195), 'damp')).toEqual(wet);
    expect(listThresholdsMet(celsius(195), 'unknown')).toEqual(wet);
    expect(listThresholdsMet(celsius(240), 'dry')).toContain('helixMeltsDry');
    expect(listThresholdsMet(celsius(240), 'wet')).not.toContain('helixMeltsDry');
    expect(listThresholdsMet(celsius(240), 'unknown')).toHaveLength(heatThresholds.length);
  });

  it('leave out what melts on slow passes, and nothing else, where each pass is known to be short', () => {
    const slow = listThresholdsMet(celsius(225), 'wet');
    const short = listThresholdsMet(celsius(225), 'wet', 'short');
    expect(slow.filter((id) => !short.includes(id))).toEqual(['meltsOnSlowPasses']);
  });

  it('read a setting that is not known as a hot one, and nothing at all as nothing', () => {
    for (const wetness of ['wet', 'dry', 'unknown'] as const) {
      expect(listThresholdsMet('unknown', wetness)).toEqual(listThresholdsMet(celsius(250), wetness));
    }
    expect(listThresholdsMet(celsius(Number.NaN), 'wet')).toEqual(listThresholdsMet('unknown', 'wet'));
    expect(listThresholdsMet('unknown', 'dry')).toContain('cortexSoftens');
    expect(listThresholdsMet(celsius(20), 'wet')).toEqual([]);
  });

  it('once met stay met on a hotter setting', () => {
    const wetness = fc.constantFrom('wet', 'damp', 'dry', 'unknown');
    holds(
      fc.property(numberBetween(0, 300), numberBetween(0, 300), wetness, (setting, more, wet) => {
        const cooler = listThresholdsMet(celsius(setting), wet);
        expect(listThresholdsMet(celsius(setting + more), wet)).toEqual(expect.arrayContaining([...cooler]));
      }),
    );
  });
});

import { describe, expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import { findFromTips, foresee } from '../../../shared/judgement/limits';
import type { Answers } from '../../../shared/records/forms/asked';
import { findStrand } from '../../../shared/records/record';
import { bothHold, lowRisk, tell, until } from '../records/telling';

describe('what a decision would leave, before it is made', () => {
  const course = (steps: typeof lowRisk, ceilingPercent = 12) => {
    const { record, atMs } = tell(until('DECIDED', steps));
    const strand = findStrand(record, 'lengths');
    if (strand === undefined) throw new Error('no strand');
    return (decided: Parameters<typeof foresee>[2]) => {
      const settings = { ...salon, profile: { ...salon.profile, ceilingPercent } };
      return foresee(record, strand, decided, settings, atMs);
    };
  };

  it('looks every 5 min, and every 3 where the hair is suspect (common practice, no source)', () => {
    expect(course(lowRisk)('asPlanned').lookEveryMin).toBe('5');
    expect(course(bothHold)('gentler').lookEveryMin).toBe('3');
  });

  it('goes down with the decision, and never above the strongest bottle of the house', () => {
    const free = course(lowRisk);
    expect(free('asPlanned')).toMatchObject({ maxDeveloperPercent: 6, maxMinutes: 25, heat: 'none' });
    expect(free('gentler').maxDeveloperPercent).toBe(3);
    expect(free('weSayNo').maxMinutes).toBe(0);
    expect(course(lowRisk, 3)('asPlanned').maxDeveloperPercent).toBe(3);
  });
});

describe('how far from the tips the colour stays', () => {
  const cm = (reach: 'fullHead' | 'endsOut' | 'roots', decided: 'endsOut' | 'gentler', measured: number) =>
    findFromTips({ client: { reach, lengthCm: measured } } as Answers, decided);

  it('is the length of the ends where they are left out, never more than a third (ASSUMED)', () => {
    expect(cm('fullHead', 'endsOut', 60)).toBeCloseTo(10, 9);
    expect(cm('fullHead', 'endsOut', 24)).toBeCloseTo(8, 9);
    expect(cm('endsOut', 'gentler', 60)).toBeCloseTo(10, 9);
  });

  it('is not said where the ends are coloured, nor of roots alone', () => {
    expect(cm('fullHead', 'gentler', 60)).toBeNull();
    expect(cm('roots', 'endsOut', 60)).toBeNull();
  });
});

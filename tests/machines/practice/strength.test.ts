import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ASSUMED_WEAKENS_FROM } from '../../../machines/practice/strandSight';
import { computeWear, findStrength } from '../../../machines/practice/strength';
import { lessons } from '../../../seeds/practice/lessons';
import { holds } from '../../shared/seeded';
import { findLesson } from './findLesson';

describe('how much a strand stands', () => {
  it('goes within the usual half hour where the lesson says so, and holds where it says so, whatever is drawn', () => {
    const lesson = findLesson('wetIronedCurls');
    const usual = computeWear({ developerPercent: 6, heat: 'none', isLifting: true }, 30);
    holds(
      fc.property(fc.nat(), (seed) => {
        expect(findStrength({ lesson, seed }, 'ends')).toBeLessThan(usual);
        // By luck: four years of wet ironing are in it, and it comes off rough.
        const share = usual / findStrength({ lesson, seed }, 'lengths');
        expect(share).toBeGreaterThan(ASSUMED_WEAKENS_FROM.rough);
        expect(share).toBeLessThan(ASSUMED_WEAKENS_FROM.gummy);
      }),
    );
  });

  it('follows the chance that is reckoned of her: hair bleached more often goes sooner on the same draw', () => {
    const lesson = findLesson('neverChemical');
    const { zones: _zones, ...strand } = lesson.strand;
    const bleached = (bleaches: string) => ({
      ...lesson,
      strand,
      truth: { ...lesson.truth, hotTools: { ...lesson.truth.hotTools, bleaches } },
    });
    const [once, often] = [bleached('1'), bleached('4')];
    holds(
      fc.property(fc.nat(), (seed) => {
        expect(findStrength({ lesson: often, seed }, 'ends')).toBeLessThan(
          findStrength({ lesson: once, seed }, 'ends'),
        );
      }),
    );
  });

  it('is drawn anew in another sitting, and apart for each lesson', () => {
    const weak = { lengths: { chance: 0.97 } };
    const strengths = lessons.flatMap(({ lesson }) =>
      [1, 2, 3].map((seed) =>
        findStrength({ lesson: { ...lesson, strand: { ...lesson.strand, zones: weak } }, seed }, 'lengths'),
      ),
    );
    expect(new Set(strengths).size).toBe(strengths.length);
  });
});

describe('how much it is worn', () => {
  const mix = { developerPercent: 6, heat: 'none', isLifting: true } as const;

  it('is one for the usual mix and the usual half hour, and nothing before it is on', () => {
    expect(computeWear(mix, 30)).toBe(1);
    expect(computeWear(mix, 0)).toBe(0);
    expect(computeWear(mix, -5)).toBe(0);
  });

  it('is more for each of more minutes, more developer, more heat and a lift, and adds up', () => {
    const wear = computeWear(mix, 10);
    expect(computeWear(mix, 11)).toBeGreaterThan(wear);
    expect(computeWear({ ...mix, developerPercent: 9 }, 10)).toBeGreaterThan(wear);
    const foil = computeWear({ ...mix, heat: 'foil' }, 10);
    expect(foil).toBeGreaterThan(wear);
    expect(computeWear({ ...mix, heat: 'dryHeat' }, 10)).toBeGreaterThan(foil);
    expect(computeWear({ ...mix, isLifting: false }, 10)).toBeLessThan(wear);
    expect(computeWear(mix, 4) + computeWear(mix, 6)).toBeCloseTo(wear, 12);
  });

  it('breaks as often as the chance says, in the usual mix, over many sittings', () => {
    const lesson = findLesson('neverChemical');
    const half = { ...lesson, strand: { seed: 1, zones: { ends: { chance: 0.5 } } } };
    const sittings = 2000;
    const broken = Array.from({ length: sittings }, (_, seed) =>
      findStrength({ lesson: half, seed }, 'ends'),
    ).filter((strength) => strength <= computeWear(mix, 30)).length;
    // Three standard deviations of so many coins.
    expect(Math.abs(broken / sittings - 0.5)).toBeLessThan((3 * 0.5) / Math.sqrt(sittings));
  });
});

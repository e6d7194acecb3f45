import { describe, expect, it } from 'vitest';
import {
  ASSUMED_FEWEST_DOTS_PER_MM,
  ASSUMED_MOST_DOTS_PER_MM,
  CARD_HEIGHT_MM,
  CARD_WIDTH_MM,
  computeDotsPerMm,
  readDotsPerMm,
} from '../../../shared/units/card';

describe('a card on the glass', () => {
  it('has the size of the standard', () => {
    expect([CARD_WIDTH_MM, CARD_HEIGHT_MM]).toEqual([85.6, 53.98]);
  });

  it('tells how fine the glass is', () => {
    expect(computeDotsPerMm(856)).toBeCloseTo(10, 12);
    expect(computeDotsPerMm(428)).toBeCloseTo(5, 12);
  });

  it('is believed up to both ends of what glass is, and not beyond', () => {
    expect(readDotsPerMm(ASSUMED_FEWEST_DOTS_PER_MM)).toBe(2);
    expect(readDotsPerMm(ASSUMED_FEWEST_DOTS_PER_MM - 1e-9)).toBeNull();
    expect(readDotsPerMm(ASSUMED_MOST_DOTS_PER_MM)).toBe(30);
    expect(readDotsPerMm(ASSUMED_MOST_DOTS_PER_MM + 1e-9)).toBeNull();
    expect(computeDotsPerMm(CARD_WIDTH_MM * 1.99)).toBeNull();
  });

  it.each([[Number.NaN], [Number.POSITIVE_INFINITY], [-5], [0], ['5'], [null], [undefined], [{}]])(
    'is not believed when %s was kept',
    (kept) => {
      expect(readDotsPerMm(kept)).toBeNull();
    },
  );
});

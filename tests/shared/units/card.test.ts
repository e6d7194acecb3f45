import { describe, expect, it } from 'vitest';
import {
  ASSUMED_FEWEST_DOTS_PER_MM,
  ASSUMED_LARGEST_GLASS_MM,
  ASSUMED_MOST_DOTS_PER_MM,
  ASSUMED_SMALLEST_GLASS_MM,
  CARD_HEIGHT_MM,
  CARD_WIDTH_MM,
  computeGlassMm,
  findDotsRange,
  type GlassSides,
  readDotsPerMm,
} from '../../../shared/units/card';

const mmPerInch = 25.4;
/** A glass whose size nobody knows: then its dots alone are judged. */
const unknown: GlassSides = [0, 0];

describe('a card on the glass', () => {
  it('has the size of the standard', () => {
    expect([CARD_WIDTH_MM, CARD_HEIGHT_MM]).toEqual([85.6, 53.98]);
  });

  it.each([
    ['seven inches', [1024, 600], 7],
    ['eight inches', [1280, 800], 8],
    ['ten inches', [800, 1280], 10.1],
    ['ten fine inches', [1920, 1200], 10.1],
    ['eight of the finest inches', [2560, 1600], 8.4],
    ['thirteen inches', [2732, 2048], 12.9],
    ['a panel of 21 inches', [1920, 1080], 21.5],
    ['a panel of 32 inches', [1920, 1080], 32],
  ] as const)('is believed on a tablet of %s', (_name, sides, inches) => {
    const dotsPerMm = Math.hypot(...sides) / (inches * mmPerInch);
    expect(readDotsPerMm(dotsPerMm, sides)).toEqual({ ok: true, value: dotsPerMm });
    expect(computeGlassMm(dotsPerMm, sides)).toBeCloseTo(inches * mmPerInch, 9);
  });

  it('is believed up to both ends of what a dot is, and not beyond', () => {
    const read = (dotsPerMm: number) => readDotsPerMm(dotsPerMm, unknown);
    expect(findDotsRange(unknown)).toEqual({ fewest: 2.5, most: 20 });
    expect(read(ASSUMED_FEWEST_DOTS_PER_MM).ok).toBe(true);
    expect(read(ASSUMED_FEWEST_DOTS_PER_MM - 1e-9)).toEqual({ ok: false, error: 'tooNarrow' });
    expect(read(ASSUMED_MOST_DOTS_PER_MM).ok).toBe(true);
    expect(read(ASSUMED_MOST_DOTS_PER_MM + 1e-9)).toEqual({ ok: false, error: 'tooWide' });
  });

  it('is believed up to both ends of how large a glass is, and not beyond', () => {
    const fine: GlassSides = [4000, 3000];
    const { fewest, most } = findDotsRange([1200, 900]);
    expect(most).toBeCloseTo(1500 / ASSUMED_SMALLEST_GLASS_MM, 12);
    expect(fewest).toBe(ASSUMED_FEWEST_DOTS_PER_MM);
    expect(findDotsRange(fine)).toEqual({
      fewest: 5000 / ASSUMED_LARGEST_GLASS_MM,
      most: ASSUMED_MOST_DOTS_PER_MM,
    });
    expect(readDotsPerMm(most + 1e-9, [900, 1200])).toEqual({ ok: false, error: 'tooWide' });
    expect(readDotsPerMm(5000 / ASSUMED_LARGEST_GLASS_MM - 1e-9, fine)).toEqual({
      ok: false,
      error: 'tooNarrow',
    });
  });

  it.each([[Number.NaN], [Number.POSITIVE_INFINITY], ['5'], [null], [undefined], [{}]])(
    'is not believed when %s was kept',
    (kept) => {
      expect(readDotsPerMm(kept, unknown)).toEqual({ ok: false, error: 'notANumber' });
    },
  );

  it.each([[-5], [0]])('is not believed when it has %d dots', (kept) => {
    expect(readDotsPerMm(kept, unknown).ok).toBe(false);
  });
});

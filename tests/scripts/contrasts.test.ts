import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { contrastOf, listContrasts, readColours } from '../../scripts/contrasts.mjs';

const css = readFileSync(join(import.meta.dirname, '../../src/base.css'), 'utf8');

describe('the contrast of two colours', () => {
  // Published: WCAG 2.2, Understanding 1.4.3 and 1.4.6: black on white is 21, #777 falls just short of 4.5, #595959 passes 7.
  it.each([
    ['000000', 'ffffff', 21],
    ['ffffff', 'ffffff', 1],
    ['777777', 'ffffff', 4.48],
    ['595959', 'ffffff', 7.0],
  ])('of %s and %s is %f', (one, other, ratio) => {
    expect(contrastOf(one, other)).toBeCloseTo(ratio, 1);
    expect(contrastOf(other, one)).toBe(contrastOf(one, other));
  });
});

describe('the colours of the station', () => {
  it('are enough apart wherever one lies on the other', () => {
    const short = listContrasts(readColours(css)).filter(({ ratio, least }) => ratio < least);
    expect(short).toEqual([]);
  });

  it('and it is seen when one is too pale, or is not there', () => {
    const pale = new Map(readColours(css)).set('soft-ink', '8a7b70');
    expect(listContrasts(pale).filter(({ ratio, least }) => ratio < least)).toEqual([
      expect.objectContaining({ what: 'soft-ink', on: 'paper' }),
      expect.objectContaining({ what: 'soft-ink', on: 'card' }),
    ]);
    expect(() => listContrasts(new Map())).toThrow('no colour is named --ink');
  });
});

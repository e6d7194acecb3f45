import { describe, it } from 'vitest';
import { type HeatThresholdId, heatThresholds, listThresholdsMet } from '../../shared/heat/thresholds';
import { brand } from '../../shared/units/brand';
import type { Celsius } from '../../shared/units/temperature';
import { checkAnswer, checkFigure } from './check';

const pores = 'published: Gamez-Garcia, J. Cosmet. Sci. 62:109–120, 2011';
const figures: readonly (readonly [HeatThresholdId, number, string])[] = [
  ['staysHotAfterUse', 80, 'published: J. Burn Care Res. 29:650–654, 2008'],
  ['poresBegin', 150, pores],
  ['helixMeltsInWater', 158, 'published: Wortmann, Springob, Sendelbach, J. Cosmet. Sci. 53:219–228, 2002'],
  ['poresRiseFast', 190, pores],
  ['meltsOnSlowPasses', 220, pores],
  ['helixMeltsDry', 233, 'published: Milczarek et al., Colloid Polym. Sci. 270:1106–1115, 1992'],
];

describe('published temperatures', () => {
  it.each(figures)('%s stands at %d °C', (id, expected, source) => {
    const got = heatThresholds.find((threshold) => threshold.id === id)?.from ?? Number.NaN;
    checkFigure({ input: `${id}, °C`, got, expected, tolerance: 0, source });
  });

  it('tell wet hair from dry: 158 °C melts the helix in water, and dry hair only from 233 °C', () => {
    const source = 'published: Milczarek et al. 1992; Wortmann et al. 2002';
    const met = (value: number, wetness: 'wet' | 'dry') =>
      listThresholdsMet(brand<Celsius>(value), wetness).filter((id) => id.startsWith('helixMelts'));
    checkAnswer({ input: '200 °C, wet', got: met(200, 'wet'), expected: ['helixMeltsInWater'], source });
    checkAnswer({ input: '200 °C, dry', got: met(200, 'dry'), expected: [], source });
    checkAnswer({ input: '233 °C, dry', got: met(233, 'dry'), expected: ['helixMeltsDry'], source });
  });

  it('put no water into dry hair: pores need it', () => {
    const got = listThresholdsMet(brand<Celsius>(232), 'dry').filter((id) => id.startsWith('pores'));
    checkAnswer({ input: '232 °C, dry', got, expected: [], source: pores });
  });

  it.each([
    ['15 cm', 47],
    ['10 cm', 61],
    ['5 cm', 95],
  ])('are not reached by a dryer at %s: %d °C', (distance, celsius) => {
    const source = 'published: Lee et al., Ann. Dermatol. 23:455–462, 2011 (30 cycles: the cortex unharmed)';
    const got = listThresholdsMet(brand<Celsius>(celsius), 'wet').filter((id) => id !== 'staysHotAfterUse');
    checkAnswer({ input: `a dryer at ${distance}`, got, expected: [], source });
  });
});

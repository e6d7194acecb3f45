import { describe, it } from 'vitest';
import { BLEACH_LOG_LOSS, computePublishedHelixPercent } from '../../shared/chemistry/bleach';
import { checkFigure } from './check';

const source = 'published: Wortmann, Springob, Sendelbach, J. Cosmet. Sci. 53:219–228, 2002, Fig. 4, Table I';

describe('bleaching', () => {
  it.each([
    [0, 94.6],
    [3, 76.9],
    [6, 62.6],
  ])('%d times leaves %d %% of the helix by the printed line', (bleaches, expected) => {
    const got = computePublishedHelixPercent(bleaches);
    checkFigure({ input: `n = ${bleaches}, %`, got, expected, tolerance: 0.1, source });
  });

  it('three times was measured as 71.0 %, within seven points of the line', () => {
    const got = computePublishedHelixPercent(3);
    checkFigure({ input: 'n = 3, %', got, expected: 71, tolerance: 7, source });
  });

  it('is taken relative to no bleach: each leaves the same share', () => {
    const expected = computePublishedHelixPercent(4) / computePublishedHelixPercent(3);
    const got = Math.exp(-BLEACH_LOG_LOSS);
    checkFigure({ input: 'one bleach, share left', got, expected, tolerance: 1e-12, source });
  });
});

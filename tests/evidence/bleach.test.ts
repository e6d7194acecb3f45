import { describe, it } from 'vitest';
import { BLEACH_LOG_LOSS } from '../../shared/chemistry/bleach';
import { computeProfile } from '../../shared/heat/profile';
import { exactly } from '../../shared/units/range';
import { allKnown } from '../shared/heat/histories';
import { checkFigure } from './check';

const source = 'published: Wortmann, Springob, Sendelbach, J. Cosmet. Sci. 53:219–228, 2002, Fig. 4, Table I';

/** The printed line, ln(Hx %) = 4.55 − 0.069 n, with the station's loss a bleach in it. */
const computeLine = (bleaches: number) => Math.exp(4.55 - BLEACH_LOG_LOSS * bleaches);

describe('bleaching', () => {
  it.each([
    [0, 94.6],
    [3, 76.9],
    [6, 62.6],
  ])('%d times leaves %d %% of the helix by the printed line', (bleaches, expected) => {
    const got = computeLine(bleaches);
    checkFigure({ input: `n = ${bleaches}, %`, got, expected, tolerance: 0.1, source });
  });

  it('three times was measured as 71.0 %, within seven points of the line', () => {
    checkFigure({ input: 'n = 3, %', got: computeLine(3), expected: 71, tolerance: 7, source });
  });

  it.each([
    [1, 93.33],
    [3, 81.3],
    [6, 66.1],
  ])('%d times leaves %d %% of what was there before: relative to no bleach', (times, expected) => {
    const once = { weeksAgo: exactly(4), place: 'all', sureness: 'told' } as const;
    const history = { ...allKnown, habits: [], bleaches: Array.from({ length: times }, () => once) };
    const got = 100 * (computeProfile(history, [30])[0]?.helixLeft.typical ?? Number.NaN);
    checkFigure({ input: `${times} bleaches, %`, got, expected, tolerance: 0.05, source });
  });
});

import { describe, it } from 'vitest';
import { computeTryptophanRate, tryptophanFits, tryptophanMeasured } from '../../shared/heat/tryptophan';
import { checkAnswer, checkFigure } from './check';

const source =
  'published: McMullen & Jachowicz, Thermal degradation of hair II, J. Cosmet. Sci. 49:245–256, 1998, pp. 248–249';

describe('tryptophan', () => {
  it.each([
    [132, 0.0268],
    [152, 0.05776],
  ])('of light-brown hair goes at %d °C with %d per minute', (celsius, expected) => {
    const got = computeTryptophanRate(celsius, 'pigmented');
    checkFigure({ input: `${celsius} °C, per minute`, got, expected, tolerance: 1e-5, source });
  });

  it.each([
    [132, 0.0511],
    [152, 0.105],
  ])(
    'of unpigmented hair goes at %d °C with %d per minute, inside the published range',
    (celsius, expected) => {
      const got = computeTryptophanRate(celsius, 'unpigmented');
      checkFigure({ input: `${celsius} °C, per minute`, got, expected, tolerance: 5e-5, source });
      const range = 'published: the same authors, part I, 49:223–244, 1998: 0.03–0.12 /min at 130–164 °C';
      checkFigure({
        input: `${celsius} °C, per minute`,
        got,
        expected: 0.075,
        tolerance: 0.045,
        source: range,
      });
    },
  );

  it.each([
    ['pigmented', 132, 12, 27.5],
    ['pigmented', 152, 12, 50],
    ['unpigmented', 132, 10, 40],
    ['unpigmented', 152, 10, 65],
  ] as const)('of %s hair at %d °C is lost in %d min by %d %%', (pigment, celsius, minutes, expected) => {
    const got = 100 * (1 - Math.exp(-computeTryptophanRate(celsius, pigment) * minutes));
    checkFigure({
      input: `${pigment}, ${celsius} °C, ${minutes} min, %`,
      got,
      expected,
      tolerance: 1e-9,
      source,
    });
  });

  it.each([
    ['pigmented', 55],
    ['unpigmented', 51.6],
  ] as const)('of %s hair asks for %d kJ/mol', (pigment, expected) => {
    const got = tryptophanFits[pigment].energyJ / 1_000;
    checkFigure({ input: `${pigment}, kJ/mol`, got, expected, tolerance: 0.1, source });
  });

  it('was measured from 130 to 164 °C, up to 15 minutes', () => {
    const got = tryptophanMeasured;
    const expected = { fromC: 130, toC: 164, minutes: 15 };
    checkAnswer({ input: 'where it was measured', got, expected, source });
  });
});

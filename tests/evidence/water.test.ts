import psychrolib from 'psychrolib';
import { describe, it } from 'vitest';
import {
  computeBoilingPoint,
  computePressurePa,
  computeSaturationK,
  computeSaturationMPa,
} from '../../shared/heat/boilingPoint';
import { checkFigure } from './check';

const iapws = 'published: IAPWS R7-97(2012)';
const atmosphere = 'published: U.S. Standard Atmosphere 1976 / ISO 2533';

describe('the saturation line of water', () => {
  it.each([
    [0.1, 372.755919],
    [1, 453.035632],
    [10, 584.149488],
  ])('lies at %d MPa and %d K', (megapascal, expected) => {
    const got = computeSaturationK(megapascal);
    checkFigure({
      input: `${megapascal} MPa, K`,
      got,
      expected,
      tolerance: 5e-7,
      source: `${iapws}, Table 36`,
    });
  });

  it.each([
    [300, 0.00353658941],
    [500, 2.63889776],
    [600, 12.3443146],
  ])('lies at %d K and %d MPa', (kelvin, expected) => {
    const got = computeSaturationMPa(kelvin);
    const tolerance = expected * 2e-9;
    checkFigure({ input: `${kelvin} K, MPa`, got, expected, tolerance, source: `${iapws}, Table 35` });
  });

  it('leads back to where it came from', () => {
    for (let kelvin = 280; kelvin <= 640; kelvin += 10) {
      const got = computeSaturationK(computeSaturationMPa(kelvin));
      checkFigure({ input: `${kelvin} K and back`, got, expected: kelvin, tolerance: 1e-7, source: iapws });
    }
  });
});

describe('the pressure of the air', () => {
  it.each([
    [0, 101_325],
    [1_000, 89_874.6],
    [2_000, 79_495.2],
    [5_000, 54_019.9],
    [11_000, 22_632.1],
  ])('at %d m is %d Pa', (metres, expected) => {
    const got = computePressurePa(metres);
    checkFigure({ input: `${metres} m, Pa`, got, expected, tolerance: 0.06, source: atmosphere });
  });
});

describe('water boils', () => {
  it.each([
    [0, 99.97],
    [1_000, 96.65],
    [1_500, 94.98],
    [2_000, 93.32],
    [3_000, 89.97],
  ])('at %d m at %d °C', (metres, expected) => {
    const got = computeBoilingPoint(metres);
    const source = `${iapws} after ${atmosphere}`;
    checkFigure({ input: `${metres} m, °C`, got, expected, tolerance: 0.01, source });
  });

  it('within 0.02 °C of where an independent package of psychrometrics has its vapour pressure reach the air’s', () => {
    psychrolib.SetUnitSystem(psychrolib.SI);
    for (let metres = -400; metres <= 5_500; metres += 100) {
      const airPa = psychrolib.GetStandardAtmPressure(metres);
      let low = 60;
      let high = 120;
      while (high - low > 1e-9) {
        const middle = (low + high) / 2;
        if (psychrolib.GetSatVapPres(middle) < airPa) low = middle;
        else high = middle;
      }
      const source = 'psychrolib 1.1.1 (ASHRAE Handbook Fundamentals 2017, chapter 1, equations 3, 5 and 6)';
      const got = computeBoilingPoint(metres);
      checkFigure({ input: `${metres} m, °C`, got, expected: low, tolerance: 0.02, source });
    }
  });
});

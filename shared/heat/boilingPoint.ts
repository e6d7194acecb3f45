import { brand } from '../units/brand';
import type { Celsius } from '../units/temperature';

/**
 * What presses on the water up here, in Pa?
 * Takes geopotential metres, from −2,000 to 11,000: the layer in which air cools by 6.5 K a kilometre; at salon heights
 * these differ from metres above the sea by less than a thousandth. Outside it is read at the nearer end; no number
 * counts as sea level. published: U.S. Standard Atmosphere 1976 / ISO 2533. Checked by tests/evidence/water.test.ts.
 */
export function computePressurePa(altitudeM: number): number {
  const metres = Number.isNaN(altitudeM) ? 0 : Math.min(Math.max(altitudeM, -2_000), 11_000);
  const seaLevelPa = 101_325;
  const seaLevelK = 288.15;
  const lapseKPerM = 0.0065;
  /** g₀ M ÷ (R* L), with 9.80665 m/s², 0.0289644 kg/mol and 8.31432 J/(mol·K) of the same standard. */
  const exponent = (9.80665 * 0.0289644) / (8.31432 * lapseKPerM);
  return seaLevelPa * (1 - (lapseKPerM * metres) / seaLevelK) ** exponent;
}

/** Coefficients of the saturation line. published: IAPWS R7-97(2012), Table 34 (read from memory, proven by Tables 35 and 36). */
const n = [
  0.11670521452767e4, -0.72421316703206e6, -0.17073846940092e2, 0.1202082470247e5, -0.32325550322333e7,
  0.1491510861353e2, -0.48232657361591e4, 0.40511340542057e6, -0.23855557567849, 0.65017534844798e3,
] as const;

/** Both directions solve one implicit quadratic equation; this is its larger root, as the release gives it. */
const solveRelease = (a: number, b: number, c: number): number =>
  (2 * c) / (-b + Math.sqrt(b * b - 4 * a * c));

/**
 * Under which pressure does water boil at this temperature? MPa from K, 273.15 to 647.096.
 * published: IAPWS R7-97(2012), equation 30. Checked by tests/evidence/water.test.ts (Table 35).
 */
export function computeSaturationMPa(kelvin: number): number {
  const t = kelvin + n[8] / (kelvin - n[9]);
  const a = t * t + n[0] * t + n[1];
  const b = n[2] * t * t + n[3] * t + n[4];
  const c = n[5] * t * t + n[6] * t + n[7];
  return solveRelease(a, b, c) ** 4;
}

/**
 * At which temperature does water boil under this pressure? K from MPa, 0.000611 to 22.064.
 * published: IAPWS R7-97(2012), equation 31. Checked by tests/evidence/water.test.ts (Table 36).
 */
export function computeSaturationK(megapascal: number): number {
  const p = megapascal ** 0.25;
  const e = p * p + n[2] * p + n[5];
  const f = n[0] * p * p + n[3] * p + n[6];
  const g = n[1] * p * p + n[4] * p + n[7];
  const d = (2 * g) / (-f - Math.sqrt(f * f - 4 * e * g));
  return (n[9] + d - Math.sqrt((n[9] + d) ** 2 - 4 * (n[8] + n[9] * d))) / 2;
}

/**
 * At which temperature does water boil in this salon?
 * From the height above the sea by the standard atmosphere; weather moves it by about half a degree. Not rounded.
 * Checked by tests/evidence/water.test.ts (0.01 °C, and against an independent package).
 */
export const computeBoilingPoint = (altitudeM: number): Celsius =>
  brand<Celsius>(computeSaturationK(computePressurePa(altitudeM) / 1e6) - 273.15);

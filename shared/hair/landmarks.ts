import { exactly, makeRange, type Range } from '../units/range';

/** Up to where the hair hangs, as it is said at the chair. */
export const landmarks = ['ear', 'chin', 'collarbone', 'braLine', 'waist'] as const;
export type Landmark = (typeof landmarks)[number];

/**
 * How far from the scalp do they lie along hanging hair, cm from the parting?
 * Assumed because heads and bodies differ, and a landmark is told by eye: middles for adults, told with ASSUMED_LENGTH_SPREAD.
 */
export const ASSUMED_LANDMARK_CM: Readonly<Record<Landmark, number>> = {
  ear: 12,
  chin: 22,
  collarbone: 33,
  braLine: 48,
  waist: 65,
};

/** By which share may hair told by landmark be longer or shorter? Assumed because neighbouring landmarks lie that near. */
export const ASSUMED_LENGTH_SPREAD = 0.15;

/** How long is hair of which nothing was told? Assumed because most of it ends between the ear and the waist. */
export const ASSUMED_UNKNOWN_LENGTH_CM: Range = makeRange(
  ASSUMED_LANDMARK_CM.ear,
  ASSUMED_LANDMARK_CM.collarbone,
  ASSUMED_LANDMARK_CM.waist,
);

/**
 * How long is her hair, in cm? Exact where it was measured, wide where it was told by landmark, wider where neither.
 * Checked by tests/shared/hair/landmarks.test.ts.
 */
export function readLength(told: Landmark | undefined, measuredCm: number | 'unknown' | undefined): Range {
  if (measuredCm !== undefined && measuredCm !== 'unknown' && measuredCm > 0) return exactly(measuredCm);
  if (told === undefined) return ASSUMED_UNKNOWN_LENGTH_CM;
  const cm = ASSUMED_LANDMARK_CM[told];
  return makeRange(cm * (1 - ASSUMED_LENGTH_SPREAD), cm, cm * (1 + ASSUMED_LENGTH_SPREAD));
}

/**
 * Where do the landmarks lie along hair of this length, cm from the scalp?
 * Those of her own body: hair that is told to end at one and was measured moves all of them in proportion.
 */
export function placeLandmarks(told: Landmark | undefined, lengthCm: number) {
  const scale = told === undefined ? 1 : lengthCm / ASSUMED_LANDMARK_CM[told];
  return landmarks
    .map((landmark) => ({ landmark, cm: ASSUMED_LANDMARK_CM[landmark] * scale }))
    .filter(({ cm }) => cm <= lengthCm * (1 + 1e-9));
}

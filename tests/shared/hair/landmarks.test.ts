import { describe, expect, it } from 'vitest';
import {
  ASSUMED_LANDMARK_CM,
  ASSUMED_UNKNOWN_LENGTH_CM,
  landmarks,
  placeLandmarks,
  readLength,
} from '../../../shared/hair/landmarks';
import { exactly } from '../../../shared/units/range';

describe('the length of hair', () => {
  it('is exact by the tape, wide by landmark, and widest where nothing was told', () => {
    expect(readLength('chin', 27)).toEqual(exactly(27));
    for (const told of landmarks) {
      const { low, typical, high } = readLength(told, 'unknown');
      expect(typical).toBe(ASSUMED_LANDMARK_CM[told]);
      expect(low).toBeLessThan(typical);
      expect(high).toBeGreaterThan(typical);
    }
    expect(readLength(undefined, undefined)).toBe(ASSUMED_UNKNOWN_LENGTH_CM);
  });

  it('grows from landmark to landmark', () => {
    const lengths = landmarks.map((told) => readLength(told, undefined).typical);
    expect(lengths).toEqual([...lengths].sort((a, b) => a - b));
  });
});

describe('landmarks along the strand', () => {
  it('are those it hangs past, the last one at its tip', () => {
    expect(placeLandmarks('collarbone', 33).map(({ landmark }) => landmark)).toEqual([
      'ear',
      'chin',
      'collarbone',
    ]);
    expect(placeLandmarks('collarbone', 33).at(-1)?.cm).toBe(33);
  });

  it('move in proportion on a body whose hair was measured', () => {
    expect(placeLandmarks('collarbone', 66)).toEqual([
      { landmark: 'ear', cm: 24 },
      { landmark: 'chin', cm: 44 },
      { landmark: 'collarbone', cm: 66 },
    ]);
  });

  it('are none on hair that ends before the ear', () => {
    expect(placeLandmarks(undefined, 8)).toEqual([]);
  });
});

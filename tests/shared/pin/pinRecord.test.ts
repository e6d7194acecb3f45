import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  findPinFallsAtMs,
  findPinWaitLeftMs,
  findPinWaitMs,
  isEasyPin,
  isPin,
  type PinRecord,
  settlePinClock,
} from '../../../shared/pin/pinRecord';

const now = 1_794_500_000_000;
const record: PinRecord = {
  ...{ salt: '00'.repeat(16), rounds: 600_000, key: '00'.repeat(32) },
  ...{ wrong: 0, wrongAtMs: now, forgottenAtMs: null },
};

describe('a wrong PIN', () => {
  it('waits a second, and twice as long each time, up to five minutes', () => {
    const waits = Array.from({ length: 12 }, (_, wrong) => findPinWaitMs(wrong) / 1000);
    expect(waits).toEqual([0, 1, 2, 4, 8, 16, 32, 64, 128, 256, 300, 300]);
    expect(findPinWaitMs(5_000)).toBe(300_000);
  });

  it('waits to the end, and not a moment longer', () => {
    const wrong = { ...record, wrong: 3 };
    expect(findPinWaitLeftMs(wrong, now)).toBe(4_000);
    expect(findPinWaitLeftMs(wrong, now + 3_999)).toBe(1);
    expect(findPinWaitLeftMs(wrong, now + 4_000)).toBe(0);
  });

  it('waits no less where the clock is set back, and not for ever', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20 }), fc.integer({ min: 1, max: 1e9 }), (wrong, backMs) => {
        const later = now - backMs;
        const settled = settlePinClock({ ...record, wrong, forgottenAtMs: now }, later);
        expect(findPinWaitLeftMs({ ...record, wrong }, later)).toBe(findPinWaitMs(wrong));
        expect(findPinWaitLeftMs(settled, later + findPinWaitMs(wrong))).toBe(0);
        expect(findPinFallsAtMs(settled)).toBe(later + 24 * 3_600_000);
      }),
    );
  });
});

it('a PIN is six digits', () => {
  expect(['123456', '000000'].map(isPin)).toEqual([true, true]);
  expect(['', '12345', '1234567', '12345a', ' 123456', '１２３４５６'].map(isPin)).not.toContain(true);
});

it('what is tried first is told apart', () => {
  expect(['000000', '777777', '123456', '456789', '987654', '012345'].map(isEasyPin)).not.toContain(false);
  expect(['112233', '908172', '123457', '890123'].map(isEasyPin)).not.toContain(true);
});

/** Chance that can be repeated: the same seed draws the same numbers. */
export interface Chance {
  /** From 0 up to, not including, 1. */
  draw(): number;
  /** A whole number from 0 up to, not including, `below`. */
  drawBelow(below: number): number;
  pick<T>(from: readonly T[]): T;
  shuffle<T>(list: readonly T[]): T[];
}

/** Mulberry32, a small generator in the public domain: good enough to spread kills, and nothing else. */
export function makeChance(seed: number): Chance {
  let state = seed >>> 0;
  const draw = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const drawBelow = (below: number): number => Math.floor(draw() * below);
  return {
    draw,
    drawBelow,
    pick: <T>(from: readonly T[]): T => {
      if (from.length === 0) throw new RangeError('nothing to pick from');
      return from[drawBelow(from.length)] as T;
    },
    shuffle: (list) => {
      const left = [...list];
      return list.map(() => left.splice(drawBelow(left.length), 1)[0] as (typeof left)[number]);
    },
  };
}

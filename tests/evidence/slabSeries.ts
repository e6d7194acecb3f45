/**
 * The exact answer for a slab between two plates it touches through a contact: what is left of the difference to the
 * plates, 1 at first, 0 at last. `place` 0 is the middle and 1 the surface; `bi` contact × half ÷ conductivity; `fo`
 * diffusivity × time ÷ half². published: Carslaw & Jaeger, Conduction of Heat in Solids, 2nd ed. 1959, § 3.11 (read from memory,
 * proven by the textbook table's ζ₁ and C₁ at Bi 1).
 */
export function solveSlab(place: number, bi: number, fo: number): number {
  let sum = 0;
  for (let n = 0; n < 60; n += 1) {
    const root = findRoot(n, bi);
    sum += findFactor(root) * Math.exp(-root * root * fo) * Math.cos(root * place);
  }
  return sum;
}

/** The nth root of ζ tan ζ = Bi, between nπ and nπ + π/2. */
export function findRoot(n: number, bi: number): number {
  let low = n * Math.PI;
  let high = low + Math.PI / 2;
  for (let halving = 0; halving < 80; halving += 1) {
    const middle = (low + high) / 2;
    if (middle * Math.sin(middle) * Math.cos(n * Math.PI) < bi * Math.cos(middle) * Math.cos(n * Math.PI))
      low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

export const findFactor = (root: number): number => (4 * Math.sin(root)) / (2 * root + Math.sin(2 * root));

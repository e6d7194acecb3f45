import { scaleLinear } from 'd3-scale';

/** Room of the drawing, in its own units: about one to a pixel on a tablet. */
export const room = {
  width: 600,
  left: 56,
  right: 584,
  /** Flags of the snips, then what is counted, then the lines. */
  flagHeight: 34,
  countsY: 60,
  chartTop: 78,
  chartBottom: 196,
  strandTop: 204,
  strandHeight: 26,
  reachY: 276,
  barsFrom: 318,
  barHeight: 34,
} as const;

/** Where a place on the strand stands in the drawing; never beyond its paper. */
export const scaleStrand = (lengthCm: number) =>
  scaleLinear([0, lengthCm], [room.left, room.right]).clamp(true);
export type StrandScale = ReturnType<typeof scaleStrand>;

/** About so wide is a letter of the map, for whether a name fits where it belongs. */
const LETTER = 10.4;

/** How wide is this name, about? */
export const widthOf = (name: string): number => name.length * LETTER;

/** Which end of its stretch a name is written from, so that it stays on the paper. */
export function placeName(middle: number, name: string) {
  const half = widthOf(name) / 2;
  if (middle - half < room.left) return { x: room.left, 'text-anchor': 'start' } as const;
  if (middle + half > room.right) return { x: room.right, 'text-anchor': 'end' } as const;
  return { x: middle, 'text-anchor': 'middle' } as const;
}

/** From the edge of the drawing to zero, px: a figure stands there whole. */
export const START_PX = 28;
/** The same at its far end. */
export const END_PX = 20;

/** How long are the ticks, px: each millimetre, each five, each ten. */
const TICKS_PX = { one: 14, five: 24, ten: 36 } as const;

/** How many whole millimetres have room on so many px? None before it is drawn. */
export const findMostMm = (longPx: number, pxPerMm: number): number =>
  Math.max(Math.floor((longPx - START_PX - END_PX) / pxPerMm), 0);

/** Which figures stand on it? Each centimetre, told in millimetres. */
export const listTens = (mostMm: number): readonly number[] =>
  Array.from({ length: Math.floor(mostMm / 10) + 1 }, (_, ten) => ten * 10);

const findTick = (mm: number): number => {
  if (mm % 10 === 0) return TICKS_PX.ten;
  return mm % 5 === 0 ? TICKS_PX.five : TICKS_PX.one;
};

/** A tick for each millimetre, as the path of a drawing; upright it runs down the glass. */
export const drawTicks = (mostMm: number, pxPerMm: number, isUpright: boolean): string =>
  Array.from({ length: mostMm + 1 }, (_, mm) => {
    const at = START_PX + mm * pxPerMm;
    return isUpright ? `M0 ${at} H${findTick(mm)}` : `M${at} 0 V${findTick(mm)}`;
  }).join(' ');

/** So far along the ruler and so far in from the edge: where on the drawing? */
export const findPoint = (alongPx: number, acrossPx: number, isUpright: boolean): { x: number; y: number } =>
  isUpright ? { x: acrossPx, y: alongPx } : { x: alongPx, y: acrossPx };

/**
 * Across the edge, px: how broad it is, where its figures stand, between what a reading leaves them to be read, and
 * where the two marks of the pull say what they are. Upright, figures lie beside those words and need more.
 */
export const ACROSS_PX = {
  lying: { edge: 128, figures: 57, freeFrom: 42, freeTo: 72, said: 104 },
  upright: { edge: 172, figures: 66, freeFrom: 42, freeTo: 92, said: 130 },
} as const;

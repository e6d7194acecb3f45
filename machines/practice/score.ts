/** Of a hundred points, how many are for what? Assumed because seeing what speaks against it and deciding rightly is what a client is safe by. */
export const ASSUMED_POINTS = { asked: 20, flags: 30, looks: 10, strand: 10, decision: 30 } as const;

/** A flag that was seen only after a hint counts this share. Assumed because she will have no hint at the bar. */
export const ASSUMED_HINTED_COUNTS = 0.5;

export type ScoreName = keyof typeof ASSUMED_POINTS;

/** One part of the score; whole points. */
export interface ScorePart {
  readonly name: ScoreName;
  readonly points: number;
  readonly of: number;
}

/** How much of each part was done, from none to all of it; null where there was nothing to do: nobody loses by that. */
export type Done = Readonly<Record<ScoreName, number | null>>;

/** The share of these that holds; null of none. */
export const shareOf = <T>(all: readonly T[], count: (each: T) => number): number | null =>
  all.length === 0 ? null : all.reduce((sum, each) => sum + count(each), 0) / all.length;

/** Which points does each part give? Whole, none above its own; the score is their sum. */
export const countPoints = (done: Done): readonly ScorePart[] =>
  (Object.keys(ASSUMED_POINTS) as ScoreName[]).map((name) => ({
    name,
    points: Math.floor(ASSUMED_POINTS[name] * (done[name] ?? 1)),
    of: ASSUMED_POINTS[name],
  }));

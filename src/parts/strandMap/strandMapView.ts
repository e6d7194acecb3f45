/** One place along the strand, cm from the scalp, and the iron minutes there. */
export interface MapPoint {
  readonly cm: number;
  readonly low: number;
  readonly typical: number;
  readonly high: number;
}

/** From here to there along the strand, and what to call it. */
export interface MapStretch {
  readonly id: string;
  readonly fromCm: number;
  readonly toCm: number;
  readonly name: string;
  /** Where the name has no room: what is left of it. */
  readonly short?: string;
}

/** Everything that is drawn, in words already: the picture computes nothing but places. */
export interface StrandMapView {
  readonly lengthCm: number;
  readonly points: readonly MapPoint[];
  /** What the lines above the strand count. */
  readonly counts: string;
  /** Minutes at which a line is drawn, each with its words. */
  readonly ticks: readonly { readonly minutes: number; readonly name: string }[];
  readonly landmarks: readonly { readonly cm: number; readonly name: string }[];
  readonly scalp: string;
  readonly bleached: readonly MapStretch[];
  readonly reach: MapStretch | null;
  readonly reached: readonly MapStretch[];
  readonly snips: readonly { readonly cm: number; readonly name: string }[];
  /** The whole picture as one text. */
  readonly said: string;
}

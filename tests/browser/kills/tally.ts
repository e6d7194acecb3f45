/** What a series of kills came to. */
export interface Tally {
  kills: number;
  beforeAcknowledgement: number;
  /** Entries that stood before the rounds, of the consultations that were tapped. */
  standing: number;
  acknowledged: number;
  found: number;
  inFlight: number;
  lost: number;
  indexLostByBrowser: number;
  /** Kills that fell between the two copies of an entry. */
  between: number;
  readonly delaysMs: number[];
  readonly faults: string[];
}

/** Before the first kill. */
export const makeTally = (): Tally => ({
  kills: 0,
  beforeAcknowledgement: 0,
  standing: 0,
  acknowledged: 0,
  found: 0,
  inFlight: 0,
  lost: 0,
  indexLostByBrowser: 0,
  between: 0,
  delaysMs: [],
  faults: [],
});

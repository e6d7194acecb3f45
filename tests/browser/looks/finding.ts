/** What is looked for on every screen. */
export const rules = [
  /** The taps of the scene do not lead to what it is called after. */
  'notShown',
  /** Something is beyond the edge of its page and has to be scrolled to. */
  'scrolls',
  'scrollsSideways',
  /** Letters are cut off by a box or by the window, or hang out of their button. */
  'clipped',
  /** A word is torn in two at the end of a line. */
  'torn',
  'overlap',
  /** Smaller than a wet glove needs. */
  'target',
  'contrast',
  /** The primary action is not the one at the bottom right. */
  'primary',
  'axe',
  /** No Tab leads there, or out of reading order, or the focus cannot be seen. */
  'keyboard',
] as const;

export type LooksRule = (typeof rules)[number];

/** One thing that is not as it should be: which, and what was measured. */
export interface Finding {
  readonly rule: LooksRule;
  readonly element: string;
  readonly measured: string;
}

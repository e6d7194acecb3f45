/** What does she use at home? */
export type Tool = 'flatIron' | 'curlingIron' | 'wand' | 'hotBrush' | 'rollers' | 'dryer' | 'other';

/** How wet is the hair when the tool touches it? */
export const wetnesses = ['wet', 'damp', 'dry'] as const;
export type Wetness = (typeof wetnesses)[number];

/** One hot tool as she told it. "Don't know" is an answer and never means none. */
export interface HeatHabit {
  readonly tool: Tool;
  readonly wetness: Wetness | 'unknown';
  readonly daysAWeek: number | 'unknown';
  /** For how many weeks she did so, until she stopped or until today. */
  readonly weeks: number | 'unknown';
  /** How many weeks ago she stopped; 0 while she still does. */
  readonly stoppedWeeksAgo: number | 'unknown';
  /** All passes over one section together: more passes in the same seconds are more contact neither way. */
  readonly secondsASection: number | 'unknown';
  /** How often it goes over the same section in those seconds: says how slow one pass is, and counts nothing twice. */
  readonly passes: number | 'unknown';
  readonly settingC: number | 'unknown';
  readonly plateWidthCm: number;
}

/** How long does the tool travel one section, when she gives no other time? common practice, no source. */
export const DEFAULT_SECONDS_A_SECTION = 60;

/**
 * How wide is the plate along the strand, when she gives no other width? One inch.
 * Assumed because ½, 1, 1½ and 2 inches are what is offered as answers, and the second is the middle of what is sold.
 */
export const ASSUMED_PLATE_WIDTH_CM = 2.54;

interface ToolFacts {
  /** Its minutes count as iron minutes. */
  readonly isIron: boolean;
  /** It travels along the strand; every other one stays where it was set down. */
  readonly glides: boolean;
}

/**
 * Which tools count as an iron, and which of them glide.
 * The dryer does not count: published, Lee et al., Ann. Dermatol. 23:455–462, 2011 (47–95 °C, 30 cycles: surface
 * damage rises, the cortex unharmed). Which glide: common practice, no source. A tool not listed counts as an iron
 * that stays, the careful side of both.
 */
const factsByTool: Readonly<Record<Tool, ToolFacts>> = {
  flatIron: { isIron: true, glides: true },
  curlingIron: { isIron: true, glides: false },
  wand: { isIron: true, glides: false },
  hotBrush: { isIron: true, glides: false },
  rollers: { isIron: true, glides: false },
  dryer: { isIron: false, glides: false },
  other: { isIron: true, glides: false },
};

/** Do its minutes count as iron minutes? All but the dryer. Checked by tests/shared/heat/passes.test.ts. */
export const isIron = (tool: Tool): boolean => factsByTool[tool].isIron;

/** Does it travel along the strand? Only the flat iron. Checked by tests/shared/heat/passes.test.ts. */
export const isGliding = (tool: Tool): boolean => factsByTool[tool].glides;

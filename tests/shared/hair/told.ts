/** A flat iron as it is told at the chair: a minute a section, three days a week, two years, on wet hair. */
export const ironTold = {
  tool: 'flatIron',
  wetness: 'wet',
  daysAWeek: 3,
  forMonths: 24,
  settingC: 200,
  secondsASection: 60,
  plateWidthCm: 2.54,
  passes: 'unknown',
} as const;

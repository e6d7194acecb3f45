import fc from 'fast-check';
import type { Bleach } from '../../../shared/chemistry/bleach';
import type { Assumptions } from '../../../shared/heat/assumptions';
import { usualGrowth } from '../../../shared/heat/growth';
import { ASSUMED_PLATE_WIDTH_CM, type HeatHabit, type Tool } from '../../../shared/heat/habit';
import type { HairHistory } from '../../../shared/heat/hairHistory';
import { exactly, makeRange } from '../../../shared/units/range';
import { toWeeks } from '../../../shared/units/time';
import { numberBetween } from '../seeded';

/** A minute a section, three days a week, for two years, on wet hair, still. */
export const twoYearsWet: HeatHabit = {
  tool: 'flatIron',
  wetness: 'wet',
  daysAWeek: 3,
  weeks: 104,
  stoppedWeeksAgo: 0,
  secondsASection: 60,
  passes: 6,
  settingC: 200,
  plateWidthCm: ASSUMED_PLATE_WIDTH_CM,
};

/** Hair of which everything is known: 30 cm that grow a quarter of a centimetre a week. */
export const allKnown: HairHistory = {
  habits: [twoYearsWet],
  bleaches: [],
  growth: exactly(0.25),
  lengthCm: exactly(30),
  pigment: 'pigmented',
};

/** Nothing left open by papers either: every band has to close. */
export const pinned: Assumptions = {
  gapC: () => exactly(20),
  helixEnergyJ: exactly(80_000),
  helixHalfLifeMin: exactly(22.5),
  wetMultiplier: exactly(2),
  dampMultiplier: exactly(1.5),
};

const tools: readonly Tool[] = ['flatIron', 'curlingIron', 'wand', 'hotBrush', 'rollers', 'dryer', 'other'];
const orUnknown = (min: number, max: number) =>
  fc.oneof(
    { weight: 3, arbitrary: numberBetween(min, max) },
    { weight: 1, arbitrary: fc.constant('unknown' as const) },
  );

/** As it is told: any time, whole months in the trade's weeks, or not known. */
const orMonths = (most: number) =>
  fc.oneof(
    { weight: 2, arbitrary: numberBetween(0, toWeeks(most)) },
    { weight: 2, arbitrary: fc.integer({ min: 0, max: most }).map(toWeeks) },
    { weight: 1, arbitrary: fc.constant('unknown' as const) },
  );

/** A habit of which some or all is known. */
export const anyHabit: fc.Arbitrary<HeatHabit> = fc.record({
  tool: fc.constantFrom(...tools),
  wetness: fc.constantFrom('wet', 'damp', 'dry', 'unknown'),
  daysAWeek: orUnknown(0, 7),
  weeks: orMonths(360),
  stoppedWeeksAgo: orMonths(72),
  secondsASection: orUnknown(0, 600),
  passes: orUnknown(1, 30),
  settingC: orUnknown(40, 250),
  plateWidthCm: numberBetween(0.5, 10),
});

const sorted = (min: number, max: number) =>
  fc.tuple(numberBetween(min, max), numberBetween(min, max), numberBetween(min, max)).map((three) => {
    const [low, typical, high] = [...three].sort((a, b) => a - b) as [number, number, number];
    return makeRange(low, typical, high);
  });

/** A bleach at a time that is known or not. */
export const anyBleach: fc.Arbitrary<Bleach> = fc.record({
  weeksAgo: sorted(0, 300),
  place: fc.constantFrom('all', 'ends', 'newGrowth', 'band', 'oldest', 'unknown'),
  sureness: fc.constantFrom('told', 'likely', 'possible'),
});

/** Any head of hair. */
export const anyHistory: fc.Arbitrary<HairHistory> = fc.record({
  habits: fc.array(anyHabit, { maxLength: 5 }),
  bleaches: fc.array(anyBleach, { maxLength: 6 }),
  growth: fc.oneof(fc.constant(usualGrowth), sorted(0.15, 0.4)),
  lengthCm: sorted(2, 120),
  pigment: fc.constantFrom('pigmented', 'unpigmented', 'both'),
});

/** A place on it, or beyond its tip. */
export const anyPlace = numberBetween(0, 150);

import { isAtLeastAsBad } from '../records/gradeOutcome';
import type { OutcomeRecord, StrandRecord } from '../records/record';
import type { ByZone } from '../records/zones';
import { zones } from '../records/zones';
import type { ZoneFinding } from './decisionTable';
import { isHotter, isSameLine, type Mix, nameProven } from './mixes';

/** A strand whose outcome counts today. */
export type Counting = StrandRecord & { readonly outcome: OutcomeRecord };

/** Did this strand stand all that this mix is? Compared as the permit compares a bowl with it. */
const stoodAllOf = (strand: Counting, mix: Mix): boolean => {
  const stood = nameProven(strand);
  return (
    isSameLine(stood.line, mix.line) &&
    stood.ratio === mix.ratio &&
    stood.developerPercent >= mix.developerPercent &&
    stood.minutes >= mix.minutes &&
    !isHotter(mix.heat, stood.heat)
  );
};

/** The mix that would go on by this strand, for no longer than it was meant to be on. */
const nameMeant = (strand: Counting): Mix => {
  const proven = nameProven(strand);
  return { ...proven, minutes: Math.min(proven.minutes, strand.minutes) };
};

const hasFailed = (finding: ZoneFinding): boolean => finding === 'gummy' || finding === 'broken';
const hasHeld = ({ outcome }: Counting): boolean => !isAtLeastAsBad(outcome.grade, 'gummy');

/**
 * How many strands speak for each mix that would go on? Those that stood it, all its time, each from a place of its own:
 * a weaker or shorter one, or a second from the same place, says nothing more. The mix that fewest speak for counts. A
 * zone that failed has spoken, for however long it was on.
 * `newest` are the newest of each zone. Checked in tests/shared/judgement/countStrands.test.ts.
 */
export function countStrands(
  counting: readonly Counting[],
  newest: readonly Counting[],
  found: ByZone<ZoneFinding>,
): number {
  const failed = zones.filter((zone) => hasFailed(found[zone])).length;
  const held = counting.filter(hasHeld);
  const places = newest
    .filter(({ zone }) => !hasFailed(found[zone]))
    .map((one) => held.filter((strand) => stoodAllOf(strand, nameMeant(one))).map(({ place }) => place))
    .map((each) => new Set(each).size);
  return failed + (places.length === 0 ? 0 : Math.min(...places));
}

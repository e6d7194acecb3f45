import type { MixAnswers } from '../records/forms/test';
import { isAtLeastAsBad } from '../records/gradeOutcome';
import type { ConsultationRecord, StrandRecord } from '../records/record';

/** What a permit binds to. Ratio is parts of developer to one part of colour. */
export type Mix = Pick<MixAnswers, 'line' | 'developerPercent' | 'ratio' | 'heat' | 'minutes'>;

const heatOrder: readonly string[] = ['none', 'foil', 'dryHeat'];

/** The mix of a strand or a bowl, without batch and grams. */
export const nameMix = ({ line, developerPercent, ratio, heat, minutes }: Mix): Mix => ({
  line,
  developerPercent,
  ratio,
  heat,
  minutes,
});

/** One short text for a mix, equal for equal mixes whatever the case and spaces of the line. */
export const formMixKey = ({ line, developerPercent, ratio, heat, minutes }: Mix): string =>
  [line.trim().toLowerCase(), developerPercent, `1:${ratio}`, heat, minutes].join('|');

/** Is one heat hotter than another? */
export const isHotter = (one: string, other: string): boolean =>
  heatOrder.indexOf(one) > heatOrder.indexOf(other);

/** Is this mix, of the same line, as strong as the other in every respect? Then what closed the other closes it. */
export const isNoGentler = (mix: Mix, closed: Mix): boolean =>
  mix.line.trim().toLowerCase() === closed.line.trim().toLowerCase() &&
  mix.developerPercent >= closed.developerPercent &&
  mix.minutes >= closed.minutes &&
  !isHotter(closed.heat, mix.heat);

/**
 * For how long was it on when it went? Whole minutes, rounded down, so that no longer time escapes.
 * By its own clock, which a change of the tablet's clock moves along.
 */
function countMinutesOn({ clocks }: ConsultationRecord, strand: StrandRecord): number {
  const clock = clocks.find(({ id }) => id === strand.clock);
  if (clock === undefined || clock.endedAtMs === null) return strand.minutes;
  return Math.min(strand.minutes, Math.floor((clock.endedAtMs - clock.startedAtMs) / 60_000));
}

/**
 * Which strands of this zone, broken or gummy, close this mix for good?
 * A retracted outcome no longer closes; a strand that broke in the mix always does.
 */
export const listClosedMixes = (
  record: ConsultationRecord,
  mix: Mix & Pick<StrandRecord, 'zone'>,
): readonly string[] =>
  record.strands
    .filter(
      (strand) =>
        strand.zone === mix.zone &&
        (strand.ended?.how === 'broke' ||
          (strand.outcome !== null && isAtLeastAsBad(strand.outcome.grade, 'gummy'))) &&
        isNoGentler(mix, { ...strand, minutes: countMinutesOn(record, strand) }),
    )
    .map(formMixKey);

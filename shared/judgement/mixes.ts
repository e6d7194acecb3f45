import type { MixAnswers } from '../records/forms/test';
import { isAtLeastAsBad } from '../records/gradeOutcome';
import type { ConsultationRecord, StrandRecord } from '../records/record';

/** What a permit binds to. Ratio is parts of developer to one part of colour. */
export type Mix = Pick<MixAnswers, 'line' | 'developerPercent' | 'ratio' | 'heat' | 'minutes'>;

const heatOrder: readonly string[] = ['none', 'foil', 'dryHeat'];

/** What a strand or a bowl is made of, for so many minutes; without batch and grams. */
export const nameMix = ({ line, developerPercent, ratio, heat, minutes }: Mix): Mix => ({
  line,
  developerPercent,
  ratio,
  heat,
  minutes,
});

/** What this strand really proved: its mix for as long as it was on, not for as long as it was meant to be. */
export const nameTested = (strand: StrandRecord): Mix => ({
  ...nameMix(strand),
  minutes: strand.minutesOn ?? strand.minutes,
});

/** What a bowl may be at the most on the strength of this strand: what it proved, or what was on the head last time. */
export const nameProven = (strand: StrandRecord): Mix => {
  const tested = nameTested(strand);
  if (strand.carried === null) return tested;
  const { maxDeveloperPercent, maxMinutes } = strand.carried;
  return {
    ...tested,
    developerPercent: Math.min(tested.developerPercent, maxDeveloperPercent),
    minutes: Math.min(tested.minutes, maxMinutes),
  };
};

/** The name of a product line, the same however it is typed: case, spaces and invisible signs do not count. */
const formLineKey = (line: string): string =>
  line
    .normalize('NFKC')
    .replaceAll(/\p{Cf}/gu, '')
    .replaceAll(/\s+/gu, ' ')
    .trim()
    .toLowerCase();

/** Is it the same product line? */
export const isSameLine = (one: string, other: string): boolean => formLineKey(one) === formLineKey(other);

/** One short text for a mix, equal for equal mixes however the line is typed. */
export const formMixKey = ({ line, developerPercent, ratio, heat, minutes }: Mix): string =>
  [formLineKey(line), developerPercent, `1:${ratio}`, heat, minutes].join('|');

/** Is one heat hotter than another? */
export const isHotter = (one: string, other: string): boolean =>
  heatOrder.indexOf(one) > heatOrder.indexOf(other);

/**
 * A mix counts as gentler from one trade step of developer down (10 volumes, 3 %), or from this share of the time.
 * Assumed because less than a bottle's step or a quarter of the time is no other mix, only another number.
 */
const ASSUMED_GENTLER = { byPercent: 3, ofTime: 0.75 } as const;

/** Is this mix, of the same line, no gentler than the other in any respect? Then what closed the other closes it. */
export const isNoGentler = (mix: Mix, closed: Mix): boolean =>
  isSameLine(mix.line, closed.line) &&
  mix.developerPercent > closed.developerPercent - ASSUMED_GENTLER.byPercent &&
  mix.minutes > closed.minutes * ASSUMED_GENTLER.ofTime &&
  !isHotter(closed.heat, mix.heat);

/**
 * Which strands of this zone, broken or gummy, close this mix for good?
 * Judged by the time they were really on. A retracted outcome no longer closes; a strand that broke in the mix does.
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
        isNoGentler(mix, nameTested(strand)),
    )
    .map(formMixKey);

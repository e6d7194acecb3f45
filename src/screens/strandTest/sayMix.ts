import type { StrandRecord } from '../../../shared/records/record';
import type { Settings } from '../../../shared/records/settings';
import { formatPercent, formatQuantity } from '../../../shared/units/format';
import type { Words } from '../../words/words';
import { sayVolumes } from '../bottleAndBowl';

/** The mix of a strand in one line: line, bottle, ratio, heat, minutes. */
export function sayMix(strand: StrandRecord, words: Words, { units }: Settings): string {
  const write = (value: number, quantity: 'count' | 'minutes') =>
    formatQuantity(value, quantity, units, words.locale);
  return [
    strand.line,
    words.mix.bottle(
      formatPercent(strand.developerPercent, units, words.locale),
      sayVolumes(strand.developerPercent, words, units),
    ),
    words.mix.limitRatio(write(strand.ratio, 'count')),
    words.mix.limitHeat[strand.heat],
    write(strand.minutes, 'minutes'),
  ].join(' · ');
}

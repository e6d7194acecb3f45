import { mixQuestions } from '../../../shared/records/forms/test';
import { type RawForm, readForm } from '../../../shared/records/readForm';
import type { StrandRecord } from '../../../shared/records/record';
import type { Settings } from '../../../shared/records/settings';
import { formatPercent, formatQuantity } from '../../../shared/units/format';
import type { Words } from '../../words/words';
import { sayVolumes } from '../bottleAndBowl';

type SaidMix = Pick<StrandRecord, 'line' | 'developerPercent' | 'ratio' | 'heat' | 'minutes'>;

/** The mix of a strand in one line: line, bottle, ratio, heat, minutes. */
export function sayMix(strand: SaidMix, words: Words, { units }: Settings): string {
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

/** The same of what stands in the fields; nothing while one of them does not read. */
export function sayDraftMix(raw: RawForm, words: Words, settings: Settings, nowMs: number): string {
  const read = readForm(mixQuestions, raw, { units: settings.units, hasAgeLine: false, nowMs });
  return read.ok ? sayMix(read.value, words, settings) : '';
}

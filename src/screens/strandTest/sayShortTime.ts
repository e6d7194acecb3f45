import { findShortTime } from '../../../shared/judgement/shortTime';
import { isLifting } from '../../../shared/judgement/stops';
import type { ConsultationRecord, StrandRecord } from '../../../shared/records/record';
import { formatQuantity } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import type { Words } from '../../words/words';

/**
 * "Short of its time: 1 of 20 min. No full strand." of a strand that came off before its time, the second where a full
 * one was asked. Empty where it stood its whole time, runs or broke.
 * Checked in tests/src/screens/strandTest/shortTime.test.tsx.
 */
export function sayShortTime(
  strand: StrandRecord,
  { answers }: Pick<ConsultationRecord, 'answers'>,
  words: Words,
  units: UnitSettings,
): string {
  const ofPlanned = sayOfPlanned(strand, words, units);
  if (ofPlanned === '') return '';
  const said = words.strandTest.shortTime;
  const isFullAsked = isLifting(answers.client?.service ?? 'lighten');
  return [said.short(ofPlanned), ...(isFullAsked ? [said.noFullStrand] : [])].join(' ');
}

/** "1 of 20 min"; empty where it did not come off early. */
export function sayOfPlanned(strand: StrandRecord, words: Words, units: UnitSettings): string {
  const short = findShortTime(strand);
  if (short === null) return '';
  return words.strandTest.shortTime.ofPlanned(
    formatQuantity(short.onMin, 'count', units, words.locale),
    formatQuantity(short.plannedMin, 'minutes', units, words.locale),
  );
}

/** What a strand that came off early leaves for the head; empty where it did not. */
export function sayProves(strand: StrandRecord, words: Words, units: UnitSettings): string {
  const short = findShortTime(strand);
  if (short === null) return '';
  const said = words.strandTest.shortTime;
  return short.onMin === 0
    ? said.provesNothing
    : said.proves(formatQuantity(short.onMin, 'minutes', units, words.locale));
}

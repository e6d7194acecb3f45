import { findShortTime } from '../../../shared/judgement/shortTime';
import { isLifting } from '../../../shared/judgement/stops';
import type { ConsultationRecord, StrandRecord } from '../../../shared/records/record';
import { formatQuantity } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import type { Words } from '../../words/words';

/**
 * "Short of its time: 1 of 20 min. No full strand: proven for 1 min only." of a strand that came off before its time; the
 * head gets no more than that, also where the level was reached. Empty where it stood its whole time, runs or broke.
 * Checked in tests/src/screens/strandTest/shortTime.test.tsx.
 */
export function sayShortTime(
  strand: StrandRecord,
  { answers }: Pick<ConsultationRecord, 'answers'>,
  words: Words,
  units: UnitSettings,
): string {
  const short = findShortTime(strand);
  if (short === null) return '';
  const said = words.strandTest.shortTime;
  const minutes = formatQuantity(short.onMin, 'minutes', units, words.locale);
  const isFullAsked = isLifting(answers.client?.service ?? 'lighten');
  const proves = isFullAsked ? said.noFullStrand(minutes) : said.proves(minutes);
  const ofPlanned = sayOfPlanned(strand, words, units);
  return [
    strand.why === 'levelReached' ? said.levelReached(ofPlanned) : said.short(ofPlanned),
    short.onMin === 0 ? said.provesNothing : proves,
  ].join(' ');
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

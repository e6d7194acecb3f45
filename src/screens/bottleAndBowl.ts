import { toVolumes } from '../../shared/chemistry/peroxide';
import type { Mixture } from '../../shared/judgement/mixture';
import type { BowlAnswers } from '../../shared/records/forms/bowl';
import { brand } from '../../shared/units/brand';
import { formatPercent, formatQuantity } from '../../shared/units/format';
import type { UnitSettings } from '../../shared/units/quantity';
import type { Words } from '../words/words';

/**
 * How strong is it, without a doubt? "12 % bottle (40 vol), 6 % in the bowl": never the bowl's figure alone. Where two
 * bottles make the developer, both are named.
 */
export const sayBottleAndBowl = (
  { bottlePercent, bowlPercent }: Pick<Mixture, 'bottlePercent' | 'bowlPercent'>,
  words: Words,
  units: UnitSettings,
  from: Pick<BowlAnswers, 'developerPercent' | 'bottles'> = { developerPercent: bottlePercent },
): string =>
  words.strandTest.start.bottleAndBowl(
    sayBottlesOf(from, words, units),
    formatPercent(bowlPercent, units, words.locale),
  );

/** The bottle in volumes, as the trade labels it. */
export const sayVolumes = (percent: number, words: Words, units: UnitSettings): string =>
  formatQuantity(toVolumes(brand(percent)), 'volume', units, words.locale);

/** The bottle as it stands on the shelf: "6 % bottle (20 vol)". */
export const sayBottle = (percent: number, words: Words, units: UnitSettings): string =>
  words.mix.bottle(formatPercent(percent, units, words.locale), sayVolumes(percent, words, units));

/** The bottle a bowl was weighed from, or the two of them: "9 % and 3 % bottles, 6 % (20 vol) together". */
export function sayBottlesOf(
  { developerPercent, bottles = [] }: Pick<BowlAnswers, 'developerPercent' | 'bottles'>,
  words: Words,
  units: UnitSettings,
): string {
  const [strong, weak] = bottles;
  if (strong === undefined || weak === undefined) return sayBottle(developerPercent, words, units);
  const write = (percent: number) => formatPercent(percent, units, words.locale);
  return words.mix.twoBottles(
    write(strong.percent),
    write(weak.percent),
    write(developerPercent),
    sayVolumes(developerPercent, words, units),
  );
}

/** "no stronger than 6 % (20 vol)" */
export const sayBottleLimit = (percent: number, words: Words, units: UnitSettings): string =>
  words.mix.limitDeveloper(formatPercent(percent, units, words.locale), sayVolumes(percent, words, units));

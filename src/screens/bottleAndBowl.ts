import { toVolumes } from '../../shared/chemistry/peroxide';
import { thinOnScale } from '../../shared/chemistry/thinning';
import type { Mixture } from '../../shared/judgement/mixture';
import type { BowlAnswers } from '../../shared/records/forms/bowl';
import type { Settings } from '../../shared/records/settings';
import { brand } from '../../shared/units/brand';
import { formatMass, formatPercent, formatQuantity } from '../../shared/units/format';
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

/**
 * What was poured of which bottle: "40 g of 9 % and 40 g of 3 %, together 6 % (20 vol)", so that two bottles that were
 * swapped are heard. As the scale said; where nobody weighed item by item, as it was to be.
 */
export function sayPoured(
  bowl: Pick<BowlAnswers, 'developerPercent' | 'bottles' | 'weighed' | 'shades' | 'colourG' | 'ratio'>,
  words: Words,
  { units, scaleStepG }: Pick<Settings, 'units' | 'scaleStepG'>,
): string {
  const { developerPercent, bottles = [], weighed = [], shades, colourG, ratio } = bowl;
  const [strong, weak] = bottles;
  if (strong === undefined || weak === undefined) return sayBottle(developerPercent, words, units);
  const totalG = Math.round((colourG * ratio) / scaleStepG) * scaleStepG;
  const meant = thinOnScale(
    { strongPercent: strong.percent, weakPercent: weak.percent, wantedPercent: developerPercent, totalG },
    scaleStepG,
  );
  const [strongG, weakG] =
    weighed.length > 0
      ? weighed.slice(shades.length).map(({ amountG }) => amountG)
      : [meant.ok ? meant.value.strongG : undefined, meant.ok ? meant.value.weakG : undefined];
  if (strongG === undefined || weakG === undefined) return sayBottlesOf(bowl, words, units);
  const write = (percent: number) => formatPercent(percent, units, words.locale);
  const weigh = (grams: number) => formatMass(brand(grams), units, words.locale);
  return words.mix.poured(
    words.mix.pour(weigh(strongG), write(strong.percent)),
    words.mix.pour(weigh(weakG), write(weak.percent)),
    write(developerPercent),
    sayVolumes(developerPercent, words, units),
  );
}

/** "no stronger than 6 % (20 vol)" */
export const sayBottleLimit = (percent: number, words: Words, units: UnitSettings): string =>
  words.mix.limitDeveloper(formatPercent(percent, units, words.locale), sayVolumes(percent, words, units));

import type { Wetness } from '../../../../shared/heat/habit';
import {
  ASSUMED_DAMP_MULTIPLIER,
  ASSUMED_WET_MULTIPLIER,
  findWetMultiplier,
} from '../../../../shared/heat/helix';
import { ASSUMED_SECTIONS_MM } from '../../../../shared/heat/press/choices';
import { sumSpans } from '../../../../shared/heat/press/readPress';
import { brand } from '../../../../shared/units/brand';
import { formatQuantity, formatRange, formatTemperature } from '../../../../shared/units/format';
import type { UnitSettings } from '../../../../shared/units/quantity';
import type { Celsius } from '../../../../shared/units/temperature';
import type { Words } from '../../../words/words';
import type { PressView } from './viewPress';

/** How many times as much of the structure the same time takes on hair this wet: "2 times (1–4) as much". */
export function sayTimes(wetness: Wetness, words: Words, units: UnitSettings): string {
  const range = findWetMultiplier(wetness, ASSUMED_WET_MULTIPLIER, ASSUMED_DAMP_MULTIPLIER);
  const likely = formatQuantity(range.typical, 'count', units, words.locale);
  return words.press.times(likely, formatRange(range, 'count', units, words.locale));
}

/** What is called so thick: "thick". */
export const nameSection = (thicknessMm: number, words: Words): string =>
  words.press.sections[ASSUMED_SECTIONS_MM.indexOf(thicknessMm)] ?? '';

/** What a press came to, in sentences: its verdict, what the water did, and the whole picture as one text. */
export function sayPress(view: PressView, words: Words, units: UnitSettings) {
  const said = words.press;
  const { read, choice, tooHot } = view;
  const writeC = (celsius: number) => formatTemperature(brand<Celsius>(celsius), units, words.locale);
  const writeS = (seconds: number) => formatQuantity(seconds, 'seconds', units, words.locale);
  const percent = (share: number) => formatQuantity(Math.round(share * 100), 'percent', units, words.locale);
  const boiled = writeS(sumSpans(read.boiling));
  const overS = writeS(sumSpans(read.tooHot));
  const hair = said.wetness[choice.wetness];
  const verdicts = {
    coolMiddle: () => said.verdicts.coolMiddle,
    cookedOutside: () => said.verdicts.cookedOutside(overS, writeC(tooHot.fromC)),
    tooHot: () => said.verdicts.tooHot(overS, writeC(tooHot.fromC)),
    through: () => said.verdicts.through(writeS(read.worksAtS ?? 0)),
  };
  const [outside, middle] = [writeC(read.surfaceC), writeC(read.coreC)];
  const verdict = verdicts[view.verdict]();
  const water =
    choice.wetness === 'dry'
      ? said.water.dry(boiled)
      : said.water.soaked(boiled, percent(read.steamShare), hair, sayTimes(choice.wetness, words, units));
  const pressed = said.bars.pressed(
    formatQuantity(choice.presses, 'count', units, words.locale),
    writeS(choice.contactS),
  );
  const picture = [
    said.said(nameSection(choice.thicknessMm, words), hair, writeC(choice.plateC), pressed),
    said.ends(outside, middle),
    said.waterLeft(boiled, percent(read.waterLeft)),
    verdict,
  ].join(' ');
  return { outside, middle, verdict, water, picture };
}

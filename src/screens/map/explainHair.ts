import { findHairTemperature } from '../../../shared/heat/account';
import { stationAssumptions } from '../../../shared/heat/assumptions';
import { type HeatFigure, heatMarks } from '../../../shared/heat/marks';
import type { Answers } from '../../../shared/records/forms/asked';
import type { Settings } from '../../../shared/records/settings';
import { formatRange, formatTemperature } from '../../../shared/units/format';
import type { Quantity } from '../../../shared/units/quantity';
import type { Range } from '../../../shared/units/range';
import { daysPerWeek } from '../../../shared/units/time';
import { readMark } from '../../words/marks';
import type { Words } from '../../words/words';
import { saySnip } from './sayHair';
import { sayInputs } from './sayInputs';
import { roundRange, sayLikely, sayShares } from './saySizes';
import type { HairView } from './viewHair';
import { writeHow } from './writeHow';

/** One figure for whoever asks why: what it is, from what, how, and where that comes from. */
export interface Explained {
  readonly id: HeatFigure;
  readonly name: string;
  readonly value: string;
  readonly inputs: readonly string[];
  readonly how: string;
  readonly source: string;
}

/** Days of a month on average: see shared/heat/growth.ts. */
const monthsAWeek = daysPerWeek / 30.4375;

/** A source as it is said: its kind in words, then the citation as it stands. */
export function saySource(mark: string, words: Words): string {
  const { kind, source } = readMark(mark);
  return words.hair.source(words.hair.kinds[kind], source);
}

/** Every figure of this hair, each with its inputs, its formula in words, its source and its mark. */
export function explainHair(
  view: HairView,
  answers: Answers,
  words: Words,
  settings: Settings,
): readonly Explained[] {
  const { units } = settings;
  const { hair, locale } = words;
  const { tip } = view;
  const inputs = sayInputs(view, answers, words, settings);
  const how = writeHow(units, locale);
  const likely = (range: Range, quantity: Quantity, digits: number) =>
    sayLikely(roundRange(range, digits), quantity, units, locale, hair.likely);
  const share = (left: Range, isBeyond: boolean) => {
    const said = sayShares(left, units, locale);
    return isBeyond ? hair.onlyBand(said) : said;
  };
  const temperatures = view.history.habits.map((habit) => findHairTemperature(habit, stationAssumptions));
  const values: Readonly<Record<HeatFigure, string>> = {
    ageWeeks: hair.months(likely(roundRange(tip.ageWeeks, 9, monthsAWeek), 'count', 0)),
    ironMin: likely(tip.ironMin, 'minutes', 0),
    boilEquivalents: likely(tip.boilEquivalents, 'count', 1),
    contactMin: likely(tip.contactMin, 'minutes', 1),
    hairTemperature: temperatures.map((hairC) => formatRange(hairC, 'temperature', units, locale)).join(', '),
    helixLeft: share(tip.helixLeft, tip.isBeyond.helix),
    matrixLeft: share(tip.matrixLeft, tip.isBeyond.helix),
    tryptophanLeft: share(tip.tryptophanLeft, tip.isBeyond.tryptophan),
    bleaches: likely(tip.bleaches, 'count', 0),
    boilingPoint: formatTemperature(view.boilsAt, units, locale),
    whereToSnip: view.snips.map((snip) => saySnip(snip, words, units)).join('; '),
  };
  const ids = Object.keys(heatMarks) as readonly HeatFigure[];
  return ids
    .filter((id) => values[id] !== '')
    .map((id) => ({
      id,
      name: hair.figures[id],
      value: values[id],
      inputs: inputs[id],
      how: hair.how[id](how),
      source: saySource(heatMarks[id], words),
    }));
}

import { findHairTemperature } from '../../../shared/heat/account';
import { stationAssumptions } from '../../../shared/heat/assumptions';
import { isIron } from '../../../shared/heat/habit';
import { type HeatFigure, heatMarks } from '../../../shared/heat/marks';
import type { Answers } from '../../../shared/records/forms/asked';
import type { Settings } from '../../../shared/records/settings';
import { formatRange, formatTemperature } from '../../../shared/units/format';
import type { Quantity } from '../../../shared/units/quantity';
import { type Range, scale } from '../../../shared/units/range';
import { weeksPerMeanMonth } from '../../../shared/units/time';
import { saySource } from '../../words/saySource';
import type { Words } from '../../words/words';
import { saySnip } from './sayHair';
import { sayInputs } from './sayInputs';
import { roundAsKnown, roundRange, sayLikely, sayShares } from './saySizes';
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
  const asKnown = (range: Range, quantity: Quantity) =>
    sayLikely(roundAsKnown(range), quantity, units, locale, hair.likely);
  const share = (left: Range, isBeyond: boolean) => {
    const said = sayShares(left, units, locale);
    return isBeyond ? hair.onlyBand(said) : said;
  };
  const temperatures = view.history.habits
    .filter(({ tool }) => isIron(tool))
    .map((habit) =>
      formatRange(findHairTemperature(habit, stationAssumptions), 'temperature', units, locale),
    );
  const isMeasured = view.history.growth.low === view.history.growth.high;
  const values: Readonly<Record<HeatFigure, string>> = {
    ageWeeks: hair.months(likely(scale(tip.ageWeeks, 1 / weeksPerMeanMonth), 'count', 0)),
    ironMin: likely(tip.ironMin, 'minutes', 0),
    boilEquivalents: asKnown(tip.boilEquivalents, 'count'),
    contactMin: asKnown(tip.contactMin, 'minutes'),
    hairTemperature: hair.list(temperatures),
    helixLeft: share(tip.helixLeft, tip.isBeyond.helix),
    matrixLeft: share(tip.matrixLeft, tip.isBeyond.helix),
    tryptophanLeft: share(tip.tryptophanLeft, tip.isBeyond.tryptophan),
    bleaches: likely(tip.bleaches, 'count', 0),
    boilingPoint: formatTemperature(view.boilsAt, units, locale),
    whereToSnip: hair.list(view.snips.map((snip) => saySnip(snip, words, units))),
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
      source: id === 'ageWeeks' && isMeasured ? hair.measuredOnHer : saySource(heatMarks[id], words),
    }));
}

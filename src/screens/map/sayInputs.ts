import { readHabit } from '../../../shared/hair/readHistory';
import { findHairTemperature } from '../../../shared/heat/account';
import { stationAssumptions } from '../../../shared/heat/assumptions';
import { DEFAULT_SECONDS_A_SECTION, isIron } from '../../../shared/heat/habit';
import type { HeatFigure } from '../../../shared/heat/marks';
import type { Answers } from '../../../shared/records/forms/asked';
import type { HabitAnswers } from '../../../shared/records/forms/hotTools';
import type { Settings } from '../../../shared/records/settings';
import { formatQuantity, formatRange } from '../../../shared/units/format';
import type { Quantity } from '../../../shared/units/quantity';
import { scale } from '../../../shared/units/range';
import { weeksPerMeanMonth } from '../../../shared/units/time';
import type { Words } from '../../words/words';
import { findAltitudeUnit, fromMetres } from '../settings/settingsDraft';
import { roundAsKnown, roundRange, sayAboutRange, sayLikely } from './saySizes';
import type { HairView } from './viewHair';

/** From what is each figure reckoned: her answers and the figures before it, in words. */
export function sayInputs(
  view: HairView,
  answers: Answers,
  words: Words,
  settings: Settings,
): Readonly<Record<HeatFigure, readonly string[]>> {
  const { units, altitudeM } = settings;
  const { locale, hair } = words;
  const said = hair.inputs;
  const write = (value: number, quantity: Quantity) => formatQuantity(value, quantity, units, locale);
  const told = (name: keyof typeof said.notKnown, value: number | 'unknown', quantity: Quantity) =>
    value === 'unknown' ? said.notKnown[name] : said[name](write(value, quantity));
  const band = (range: HairView['tip']['ironMin'], quantity: Quantity) =>
    sayLikely(roundRange(range, 0), quantity, units, locale, hair.likely);

  const irons = (answers.hotTools?.habits ?? []).filter(({ tool }) => isIron(tool));
  const nameOf = ({ tool }: HabitAnswers) => words.asked.hotTools.habits.rows.tool.options[tool];
  const sayTool = (habit: HabitAnswers) =>
    said.tool(nameOf(habit), [
      said.wetness[habit.wetness],
      habit.secondsASection === DEFAULT_SECONDS_A_SECTION
        ? said.usualSeconds(write(habit.secondsASection, 'seconds'))
        : told('seconds', habit.secondsASection, 'seconds'),
      told('days', habit.daysAWeek, 'count'),
      told('months', habit.forMonths, 'count'),
      ...((habit.stoppedMonthsAgo ?? 0) === 0 ? [] : [told('stopped', habit.stoppedMonthsAgo ?? 0, 'count')]),
    ]);
  const sayHeat = (habit: HabitAnswers) => {
    const hairC = findHairTemperature(readHabit(habit), stationAssumptions);
    const setting = told('setting', habit.settingC, 'temperature');
    return said.tool(nameOf(habit), [
      setting,
      said.hair(formatRange(hairC, 'temperature', units, locale)),
      said.wetness[habit.wetness],
    ]);
  };
  const growth = scale(view.history.growth, weeksPerMeanMonth);
  const length = said.length(sayAboutRange(view.history.lengthCm, units, words));
  const { tip } = view;
  const contact = said.contact(
    sayLikely(roundAsKnown(tip.contactMin), 'minutes', units, locale, hair.likely),
  );
  const bleach = tip.bleaches.high === 0 ? said.noBleach : said.bleaches(band(tip.bleaches, 'count'));
  const height = write(Math.round(fromMetres(altitudeM, units)), 'count');
  return {
    ageWeeks: [length, said.growth(formatRange(growth, 'length', units, locale))],
    ironMin: irons.map(sayTool),
    boilEquivalents: [said.wetMinutes(band(tip.wetMin, 'minutes'))],
    contactMin: [
      said.ironMinutes(band(tip.ironMin, 'minutes')),
      length,
      ...irons.map((habit) => said.tool(nameOf(habit), [said.plate(write(habit.plateWidthCm, 'length'))])),
    ],
    hairTemperature: irons.map(sayHeat),
    helixLeft: [contact, ...irons.map(sayHeat), bleach],
    matrixLeft: [contact, ...irons.map(sayHeat), bleach],
    tryptophanLeft: [contact, ...irons.map(sayHeat)],
    bleaches: [bleach],
    boilingPoint: [
      said.altitude(
        words.settings.altitudeTold(height, words.settings.altitudeUnits[findAltitudeUnit(units)]),
      ),
    ],
    whereToSnip: [
      length,
      bleach,
      ...(answers.client?.reach === undefined ? [] : [hair.reach[answers.client.reach]]),
    ],
  };
}

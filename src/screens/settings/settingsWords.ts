import { settingsForm } from '../../../shared/records/forms/settings';
import { formatQuantity } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import type { AnyFormWords, AnyQuestionWords } from '../../words/formWords';
import type { Words } from '../../words/words';
import { findAltitudeUnit, findSettingsForm } from './settingsDraft';

/** What is asked on the settings page, each figure with its unit and its limits, each name with its length? */
export function findSettingsWords(words: Words, units: UnitSettings): AnyFormWords {
  const { questions, ranges, altitudeIn, altitudeTold, altitudeUnits } = words.settings;
  const write = (value: number) => formatQuantity(value, 'count', units, words.locale);
  const unit = altitudeUnits[findAltitudeUnit(units)];
  const withRange = (asked: AnyQuestionWords, range: string): AnyQuestionWords => ({
    ...asked,
    hint: [range, asked.hint ?? ''].join(' ').trim(),
  });
  const sayNumber = (name: 'chairs' | 'keepMonths' | 'ageLine' | 'skinTestWaitH' | 'skinTestLapsesDays') => {
    const { min, max } = settingsForm[name].field;
    return withRange(questions[name], ranges[name](write(min), write(max)));
  };
  const { min: weakest, max: strongest } = settingsForm.ceilingPercent.field;
  const sayPercent = (value: number) => formatQuantity(value, 'percent', units, words.locale);
  const sayNames = (name: 'staff' | 'shelf') => {
    const { max, of } = settingsForm[name];
    return withRange(questions[name], ranges[name](write(max), write(of.name.maxLength)));
  };
  const { altitude } = findSettingsForm(units);
  return {
    ...questions,
    altitude: withRange(
      {
        ...questions.altitude,
        ask: altitudeIn(unit),
        told: (figure) => altitudeTold(figure, unit),
      },
      ranges.altitude(write(altitude.field.min), write(altitude.field.max), unit),
    ),
    ceilingPercent: withRange(
      questions.ceilingPercent,
      ranges.ceilingPercent(sayPercent(weakest), sayPercent(strongest)),
    ),
    chairs: sayNumber('chairs'),
    keepMonths: sayNumber('keepMonths'),
    ageLine: sayNumber('ageLine'),
    skinTestWaitH: sayNumber('skinTestWaitH'),
    skinTestLapsesDays: sayNumber('skinTestLapsesDays'),
    staff: sayNames('staff'),
    shelf: sayNames('shelf'),
  };
}

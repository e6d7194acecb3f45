import type { NumberQuestion } from '../../../shared/records/form';
import { type SettingsAnswers, settingsForm } from '../../../shared/records/forms/settings';
import {
  type FieldRefusal,
  type RawForm,
  type ReadingContext,
  readForm,
} from '../../../shared/records/readForm';
import type { Settings } from '../../../shared/records/settings';
import { writeForm } from '../../../shared/records/writeForm';
import { accept, type Result, refuse } from '../../../shared/result';
import { roundTo } from '../../../shared/units/quantity';
import { draftEntry, listUnreadLists, makeEntry } from './shelfDraft';

/** Metres in a foot: exact by definition (international foot). */
const METRES_A_FOOT = 0.3048;

/** In which unit is the height asked? Feet where lengths are in inches. */
export const findAltitudeUnit = ({ length }: Settings['units']): 'm' | 'ft' => (length === 'in' ? 'ft' : 'm');

const toMetres = (altitude: number, units: Settings['units']): number =>
  findAltitudeUnit(units) === 'ft' ? altitude * METRES_A_FOOT : altitude;

/** So many metres in the unit in which heights are asked. */
export const fromMetres = (metres: number, units: Settings['units']): number =>
  findAltitudeUnit(units) === 'ft' ? metres / METRES_A_FOOT : metres;

/** The questions, whatever the limits of the height are in this unit. */
type SettingsForm = Omit<typeof settingsForm, 'altitude'> & { readonly altitude: NumberQuestion };

/** The form in the units that are in force; limits in feet are rounded inward to whole tens. */
export function findSettingsForm(units: Settings['units']): SettingsForm {
  if (findAltitudeUnit(units) === 'm') return settingsForm;
  const { field } = settingsForm.altitude;
  const min = Math.ceil(fromMetres(field.min, units) / 10) * 10;
  const max = Math.floor(fromMetres(field.max, units) / 10) * 10;
  return { ...settingsForm, altitude: { ...settingsForm.altitude, field: { ...field, min, max } } };
}

/** What is asked of a product in its row: name, kind, how long a mix is good. The rest has a page of its own, for a spray. */
export function askInRows(form: SettingsForm) {
  const { name, kind, useWithinMin } = form.shelf.of;
  return { ...form, shelf: { ...form.shelf, of: { name, kind, useWithinMin } } };
}

/** What stands in the fields for the settings in force? */
export function draftSettings(settings: Settings): RawForm {
  const { units, profile, staff, shelf, scaleStepG, chairs } = settings;
  const answers: Readonly<Record<keyof SettingsAnswers, unknown>> = {
    locale: settings.locale,
    ...units,
    altitude: roundTo(fromMetres(settings.altitudeM, units), 0),
    scaleStepG: String(scaleStepG),
    chairs,
    staff: staff.map((name) => ({ name })),
    figuresByStylist: settings.figuresByStylist ? 'yes' : 'no',
    shelf: shelf.map(draftEntry),
    carried: settings.carried ? 'yes' : 'no',
    spoken: settings.spoken ? 'yes' : 'no',
    contact: settings.contact,
    keeps: settings.keepMonths === null ? 'noEnd' : 'months',
    keepMonths: settings.keepMonths ?? undefined,
    erasesByItself: settings.erasesByItself ? 'yes' : 'no',
    ceilingPercent: profile.ceilingPercent,
    isAnyReactionAbsolute: profile.isAnyReactionAbsolute ? 'yes' : 'no',
    hasAgeLine: profile.ageLine === null ? 'no' : 'yes',
    ageLine: profile.ageLine ?? undefined,
    skinTestWaitH: profile.skinTestWaitH,
    skinTestLapsesDays: profile.skinTestLapsesDays,
    skinTestFor: profile.skinTestFor.length === 0 ? ['never'] : profile.skinTestFor,
  };
  return writeForm(settingsForm, answers, units);
}

/**
 * Under what are the fields read? As the station's own: a warmth trial was stamped by it, and may lie ahead of a clock
 * that was set back.
 */
export const readAsStation = ({ units }: Settings, nowMs: number): Omit<ReadingContext, 'isPartial'> => ({
  units,
  hasAgeLine: false,
  nowMs,
  isStation: true,
});

/** Do the fields say settings, or what is wrong with them? A height left as it was keeps its metres to the millimetre. */
export function readSettings(
  raw: RawForm,
  inForce: Settings,
  nowMs: number,
): Result<Settings, readonly FieldRefusal[]> {
  const { units } = inForce;
  const read = readForm(findSettingsForm(units), raw, readAsStation(inForce, nowMs));
  if (!read.ok) return refuse(read.error);
  const said = read.value as unknown as SettingsAnswers;
  const unread = listUnreadLists(said.shelf);
  if (unread.length > 0) return refuse(unread);
  const isAltitudeKept = raw.altitude === draftSettings(inForce).altitude;
  return accept({
    ...inForce,
    locale: said.locale,
    units: { temperature: said.temperature, mass: said.mass, length: said.length },
    altitudeM: isAltitudeKept ? inForce.altitudeM : toMetres(said.altitude, units),
    scaleStepG: steps[said.scaleStepG],
    chairs: said.chairs,
    staff: said.staff.map(({ name }) => name),
    figuresByStylist: said.figuresByStylist === 'yes',
    shelf: said.shelf.map(makeEntry),
    carried: said.carried === 'yes',
    spoken: said.spoken === 'yes',
    contact: said.contact,
    keepMonths: said.keepMonths ?? null,
    erasesByItself: said.erasesByItself === 'yes',
    profile: {
      ageLine: said.ageLine ?? null,
      skinTestWaitH: said.skinTestWaitH,
      skinTestLapsesDays: said.skinTestLapsesDays,
      skinTestFor: said.skinTestFor.filter((service) => service !== 'never'),
      ceilingPercent: said.ceilingPercent,
      isAnyReactionAbsolute: said.isAnyReactionAbsolute === 'yes',
    },
  });
}

const steps: Readonly<Record<SettingsAnswers['scaleStepG'], Settings['scaleStepG']>> = {
  '0.1': 0.1,
  '0.5': 0.5,
  '1': 1,
};

import * as v from 'valibot';
import type { ConsultationEvent } from '../event';
import { defaultSettings, type Settings, settingsSchema } from '../settings';

/**
 * Who works there, whom to call, how long a station keeps its records, what it shows and when it covers that: no log is
 * judged under these.
 */
const stayAtHome = ['staff', 'contact', 'keepMonths', 'erasesByItself', 'learns', 'coverAfterMin'] as const;

/** An edition of the settings as it goes along with a record: all that a log is judged under, and nobody's name. */
export type CarriedSettings = Omit<Settings, (typeof stayAtHome)[number]>;

/** One edition, and the number by which entries of the log name it. */
export interface CarriedEdition {
  readonly id: number;
  readonly settings: CarriedSettings;
}

/** The schema of one edition: as settings are kept, without what stays at home. */
export const editionSchema = v.strictObject({
  id: v.pipe(v.number(), v.safeInteger(), v.minValue(0)),
  settings: v.omit(settingsSchema, stayAtHome),
});

/** Lists of ingredients and trials stay at home too: no gate asks them, and some are long. */
const leaveOut = ({
  staff: _staff,
  contact: _contact,
  keepMonths: _keepMonths,
  erasesByItself: _erasesByItself,
  learns: _learns,
  coverAfterMin: _coverAfterMin,
  shelf,
  ...rest
}: Settings): CarriedSettings => ({
  ...rest,
  shelf: shelf.map(({ ingredients: _ingredients, trial: _trial, ...product }) => product),
});

/** The editions that entries of this log name, each once, in their order. */
export const listEditions = (
  log: readonly Pick<ConsultationEvent, 'settingsId'>[],
  find: (settingsId: number) => Settings,
): readonly CarriedEdition[] =>
  [...new Set(log.map(({ settingsId }) => settingsId))]
    .sort((one, other) => one - other)
    .map((id) => ({ id, settings: leaveOut(find(id)) }));

/** The edition of this number among those that came along; undefined where the file lacks it. */
export function findCarried(editions: readonly CarriedEdition[], settingsId: number): Settings | undefined {
  const carried = editions.find(({ id }) => id === settingsId);
  return carried === undefined ? undefined : { ...defaultSettings, ...carried.settings };
}

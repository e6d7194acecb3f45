import type { RawEvent } from '../../shared/records/classify';
import type { StationInUse } from '../station/createStation';
import { isUrgent } from './urgent';
import { goAsSomebody, type Who } from './who';

/** One tap for one client, in the name of whoever is at the tablet, or of the person who takes it on. */
export type SubmitFor = (id: string, raw: RawEvent, name?: string) => ReturnType<StationInUse['submit']>;

export type SubmitAllFor = (id: string, raws: readonly RawEvent[]) => ReturnType<StationInUse['submitAll']>;

/**
 * In whose name is a tap written? Where nobody is chosen (this window has just become the writer) it asks first; what
 * is urgent is written at once, as `nobody`. Checked in tests/src/screens/app.test.tsx and reaction/rinseSteps.test.tsx.
 */
export function makeSubmit(station: Pick<StationInUse, 'submit'>, who: Who, nobody: string): SubmitFor {
  return (id, raw, name = who.by()) => {
    if (name !== '') return station.submit(id, name, raw);
    if (isUrgent(raw)) return station.submit(id, nobody, raw);
    return goAsSomebody(who, () => station.submit(id, who.by(), raw));
  };
}

/** Several taps in one go are nothing urgent: who is at the tablet says so first. */
export const makeSubmitAll =
  (station: Pick<StationInUse, 'submitAll'>, who: Who): SubmitAllFor =>
  (id, raws) =>
    goAsSomebody(who, () => station.submitAll(id, who.by(), raws));

import type { ConsultationRecord } from '../../../shared/records/record';
import type { Words } from '../../words/words';
import type { ZoneAtScale } from './viewMix';

/** Why does what stands weighed here go on nobody now? Hair that gave way, a bowl too old, skin to be asked anew; null where it may. */
export function sayHeld(
  { givenWay, isTooOld, useByMs, bowl }: ZoneAtScale,
  { answers }: ConsultationRecord,
  words: Words,
  whenNotCalm: string,
): string | null {
  if (givenWay !== null && bowl?.kind !== 'toner') return words.refusals.permit[givenWay.code].what;
  if (isTooOld) return words.mix.tooOld(words.moments.time(useByMs ?? 0));
  return answers.client?.scalp === undefined ? whenNotCalm : null;
}

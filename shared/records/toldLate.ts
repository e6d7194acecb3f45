import type { UnitSettings } from '../units/quantity';
import type { RawEvent } from './classify';
import { findUnasked } from './forms/askedHere';
import { clientForm } from './forms/client';
import type { ConsultationRecord } from './record';
import type { LocalProfile } from './settings';
import { writeForm } from './writeForm';

export type Tellable = (typeof clientForm.reactions.absolute)[number];

/** What she can tell of late that stops for good in this house, each given by press-and-hold. */
export const listTellable = (profile: Pick<LocalProfile, 'isAnyReactionAbsolute'>): readonly Tellable[] =>
  clientForm.reactions.absolute.filter((reaction) => reaction !== findUnasked(profile));

/**
 * She tells of it now, wherever she is: over the head, in a stop, at the finish, away, in a reaction. Which tap is that?
 * What was told before stays beside it. Whether chart and record take it at this moment is asked as of any other tap;
 * null where she has told of it already. Checked in tests/machines/consultation/toldLate.test.ts.
 */
export function tellLate(
  { answers }: Pick<ConsultationRecord, 'answers'>,
  reaction: Tellable,
  units: UnitSettings,
): RawEvent | null {
  const told: readonly string[] = answers.client?.reactions ?? [];
  if (told.includes(reaction)) return null;
  const reactions = [...told.filter((item) => item !== 'none'), reaction];
  return {
    type: 'ANSWERED',
    step: 'client',
    answers: { ...writeForm(clientForm, answers.client ?? {}, units), reactions },
  };
}

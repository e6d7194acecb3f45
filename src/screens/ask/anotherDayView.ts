import type { Consultation } from '../../../machines/consultation/consultation';
import type { ClientAnswers } from '../../../shared/records/forms/client';
import { passDay } from '../../../shared/records/passedDay';
import type { Settings } from '../../../shared/records/settings';
import type { WayStep } from '../../../shared/records/steps';
import { isOpenNow } from '../isOpenNow';
import { type ScreenName, screenOf, stepOf } from '../screenOf';

/** Where nothing runs and nothing stands weighed: she can be asked anew before anything else is done. */
const asking: readonly ScreenName[] = ['hotTools', 'feelHair', 'heatSpray', 'preparing', 'decision', 'mix'];

/**
 * At which step is she who has to be asked anew today, since what holds for a day was told on another one? null where
 * nothing has to be asked, or where something else comes first. Checked in tests/src/screens/anotherDay.test.tsx.
 */
export function findAskedAnew(consultation: Consultation, settings: Settings, nowMs: number): WayStep | null {
  const { record, state } = consultation;
  if (!asking.includes(screenOf(state))) return null;
  if (passDay(record, nowMs).todayAtMs !== null) return null;
  const goesBack = { type: 'REOPENED', answers: { step: 'client' } } as const;
  return isOpenNow(consultation, goesBack, settings, nowMs) ? stepOf(state) : null;
}

/** Which reactions did she last tell of, on whatever day? The record of today has forgotten them. */
export const findReactionsTold = ({
  log,
}: Pick<Consultation, 'log'>): ClientAnswers['reactions'] | undefined =>
  log
    .map((event) =>
      event.type === 'ANSWERED' && event.payload.step === 'client'
        ? event.payload.answers.reactions
        : undefined,
    )
    .findLast((told) => told !== undefined);

/** When did she last tell anything? */
export const findToldAtMs = ({ log }: Pick<Consultation, 'log'>): number | null =>
  log.findLast(({ type }) => type === 'ANSWERED')?.atMs ?? null;

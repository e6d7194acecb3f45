import type { Consultation } from '../../machines/consultation/consultation';
import type { RawEvent } from '../../shared/records/classify';
import type { Settings } from '../../shared/records/settings';
import type { Result } from '../../shared/result';
import type { PageSurroundings } from '../parts/StepPage';
import type { SubmitRefusal } from '../station/submitRefusal';
import type { TapRefusal } from './explainRefusal';
import type { RinseSteps } from './reaction/rinseSteps';

/**
 * Hands one tap to the station, in the name of whoever is at it, or of the person who takes it on by name (an
 * override, a correction); what comes back is to be said.
 */
export type Submit = (raw: RawEvent, by?: string) => Promise<Result<void, TapRefusal>>;

export type SubmitAll = (raws: readonly RawEvent[]) => Promise<Result<void, TapRefusal>>;

/** What the screen of a step is given. It owns nothing of the consultation: it reads it and submits. */
export interface StepProps {
  readonly consultation: Consultation;
  readonly settings: Settings;
  readonly nowMs: number;
  /** Who is at the tablet; empty while nobody is chosen. */
  readonly by: string;
  /** Handed on to `StepPage` as it is. */
  readonly page: PageSurroundings;
  readonly submit: Submit;
  /** Several taps of one person, in order; stops at the first that is refused. */
  readonly submitAll: SubmitAll;
  readonly rinseSteps: RinseSteps;
  /** Tries once more to write the record of a consultation that is over. */
  readonly finishClosing: () => Promise<Result<void, SubmitRefusal>>;
}

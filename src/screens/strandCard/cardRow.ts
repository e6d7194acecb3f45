import type { ConsultationRecord } from '../../../shared/records/record';
import type { Settings } from '../../../shared/records/settings';
import type { UnitSettings } from '../../../shared/units/quantity';
import type { Words } from '../../words/words';
import type { CardStrand } from './viewCard';

/** Of what, in which words and when a card is written. */
export interface Told {
  readonly record: ConsultationRecord;
  readonly strand: CardStrand;
  readonly units: UnitSettings;
  readonly settings: Settings;
  readonly words: Words;
  readonly nowMs: number;
}

/** One line of a card. What was reckoned and not seen is no fact, and is marked beside its words. */
export interface CardRow {
  readonly key: string;
  readonly name: string;
  readonly told: string;
  readonly isEstimate: boolean;
}

/** A fact. */
export const tellRow = (key: string, name: string, told: string): CardRow => ({
  key,
  name,
  told,
  isEstimate: false,
});

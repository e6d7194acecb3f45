import type { Consultation } from '../../../machines/consultation/consultation';
import { formatQuantity } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import type { Words } from '../../words/words';

/** Whose is it? "Chair 3 · Q.F." */
export const sayWhose = (
  consultation: Pick<Consultation, 'record'> | undefined,
  words: Words,
  units: UnitSettings,
): string =>
  consultation === undefined
    ? ''
    : words.general.chairAndTicket(
        formatQuantity(consultation.record.chair, 'count', units, words.locale),
        consultation.record.ticket,
      );

import { findCarried } from '../../shared/records/json/carriedSettings';
import type { ToldConsultation } from '../../shared/records/json/consultationFile';
import { defaultSettings } from '../../shared/records/settings';
import type { Result } from '../../shared/result';
import type { Consultation } from './consultation';
import { type ReplayFault, replay } from './replay';

/**
 * What consultation does a file tell? Its log passes schema, judge, chart and gate again, as if it were read from the store,
 * under the settings that came along with it: this station's own may never have been those. A file that is read has every
 * edition its logs name. Checked in tests/machines/consultation/bringIn.test.ts.
 */
export const judgeTold = ({ id, settings, log }: ToldConsultation): Result<Consultation, ReplayFault> =>
  replay(id, log, (settingsId) => findCarried(settings, settingsId) ?? defaultSettings);

import type { Settings } from '../../../shared/records/settings';

/** The language of this folder. */
export const locale: Settings['locale'] = 'es';

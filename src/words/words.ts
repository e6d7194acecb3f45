import type { Settings } from '../../shared/records/settings';
import { en } from './en/en';

/** Every word a person sees. A further language is one more folder beside `en`, held to this type. */
export type Words = typeof en;

const byLocale: Readonly<Record<Settings['locale'], Words>> = { en };

/** Which words does the station speak? */
export const findWords = (locale: Settings['locale']): Words => byLocale[locale];

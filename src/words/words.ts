import type { Settings } from '../../shared/records/settings';
import { en } from './en/en';
import { es } from './es/es';

/** The same shape in any language: each sentence a text, each function with the parameters it has in English. */
type InAnyLanguage<T> = T extends string
  ? string
  : T extends (...told: infer Told) => infer Said
    ? (...told: Told) => InAnyLanguage<Said>
    : { readonly [K in keyof T]: InAnyLanguage<T[K]> };

/** Every word a person sees. A further language is one more folder beside `en`, held to this type. */
export type Words = InAnyLanguage<Omit<typeof en, 'locale'>> & Pick<typeof en, 'locale'>;

const byLocale: Readonly<Record<Settings['locale'], Words>> = { en, es };

/** Which words does the station speak? */
export const findWords = (locale: Settings['locale']): Words => byLocale[locale];

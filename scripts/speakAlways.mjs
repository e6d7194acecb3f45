/**
 * `STATION_SPEAKS=es ONLY=mix npm run browser -- tests/browser/looks.test.ts` looks at screens in another language than
 * their scenes' houses chose: built so, a station speaks it whatever its settings say. Not set, nothing is changed.
 * @param {string | undefined} locale as in src/words/words.ts
 * @returns {import('vite').Plugin}
 */
export function speakAlways(locale) {
  return {
    name: 'speak-always',
    transform(code, id) {
      if (locale === undefined || !id.endsWith('src/words/words.ts')) return null;
      if (!code.includes('byLocale[locale]')) throw new Error('src/words/words.ts finds its words otherwise');
      return code.replace('byLocale[locale]', `byLocale[${JSON.stringify(locale)}]`);
    },
  };
}

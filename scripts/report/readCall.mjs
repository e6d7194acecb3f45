// How the report was called, or what is wrong with that.
import { parseArgs } from 'node:util';
import { isDay, isZone } from './days.mjs';

/** @typedef {typeof import('../../src/words/en/report').report.calls} Words */
/**
 * @typedef {{
 *   files: readonly string[],
 *   from: string | undefined,
 *   to: string | undefined,
 *   zone: string | undefined,
 *   html: string | undefined,
 *   isJson: boolean,
 *   isByStylist: boolean,
 * }} Call
 */

/**
 * Spanish where `--lang es` asks for it, else English.
 * @param {readonly string[]} args
 * @returns {'en' | 'es'}
 */
export const readLanguage = (args) =>
  args.some((each, at) => each === '--lang=es' || (each === '--lang' && args[at + 1] === 'es')) ? 'es' : 'en';

/** @param {readonly string[]} args */
const parse = (args) =>
  parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      from: { type: 'string' },
      to: { type: 'string' },
      zone: { type: 'string' },
      lang: { type: 'string', default: 'en' },
      html: { type: 'string' },
      json: { type: 'boolean', default: false },
      'by-stylist': { type: 'boolean', default: false },
      help: { type: 'boolean', default: false },
    },
  });

/**
 * @param {ReturnType<typeof parse>} parsed
 * @param {Words} words
 */
function findWrong({ values: { from, to, zone, lang }, positionals }, words) {
  if (lang !== 'en' && lang !== 'es') return words.badLanguage(lang);
  if (positionals.length === 0) return words.noFiles;
  if (from !== undefined && !isDay(from)) return words.badDay('--from', from);
  if (to !== undefined && !isDay(to)) return words.badDay('--to', to);
  if (zone !== undefined && !isZone(zone)) return words.badZone(zone);
  return from !== undefined && to !== undefined && from > to ? words.backwards(from, to) : null;
}

/**
 * 'help' where that was asked, else the call, else a sentence that says what is wrong. The same file twice is once.
 * Checked in tests/scripts/report.test.ts.
 * @param {readonly string[]} args
 * @param {Words} words
 * @returns {'help' | { call: Call } | { wrong: string }}
 */
export function readCall(args, words) {
  try {
    const parsed = parse(args);
    const { values, positionals } = parsed;
    if (values.help) return 'help';
    const wrong = findWrong(parsed, words);
    if (wrong !== null) return { wrong };
    const { from, to, zone, html, json, 'by-stylist': isByStylist } = values;
    return { call: { files: [...new Set(positionals)], from, to, zone, html, isJson: json, isByStylist } };
  } catch (error) {
    return { wrong: error instanceof Error ? error.message : String(error) };
  }
}

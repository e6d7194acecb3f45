/**
 * How long may a name be to be looked up and taken apart? Letters; a longer one is kept whole, as not known.
 * Assumed because the longest INCI names in use on labels stay below it, and because it bounds the work for any text.
 */
export const ASSUMED_LONGEST_NAME = 120;

const invisible = /[\u00ad\u200b-\u200f\u2060\ufeff]/g;
const dashes = /[\u2010-\u2015\u2212]/g;
const quotes = /[\u2018\u2019]/g;
const percent = /[<>≤≥~]?\s?\d{1,3}(?:[.,]\d{1,4})?\s?%/g;
const footnotes = /[*\u2020\u2021\u00a7\u00ae\u00b0]+/g;
const numbering = /^\d{1,3}[.)]\s+/;
const emptyBrackets = /[([{]\s?[)\]}]/g;
const lead = /^(?:[-:\u2010-\u2015\u2212]\s)+/;
const stops = /[\s.]+$/;
const edges = /^[\s.:_-]+|[\s.:_-]+$/g;

/** Does anything stand here that could be a name? */
export const hasName = (text: string): boolean => /[\p{L}\p{N}]/u.test(text);

const closeGaps = (text: string): string => text.replace(/\s+/g, ' ').trim();

/** What is left where a separator, or the mark of a line, left a dash or a colon in front of the name? */
export const dropLead = (text: string): string => text.replace(lead, '');

/**
 * What was written, in capitals as INCI lists are printed: single spaces, plain hyphens and quotes, no stop at the
 * end. Nothing else is taken from it, so that reading it again gives the same.
 */
export function writeCapitals(written: string): string {
  const plain = written.replace(invisible, '').replace(dashes, '-').replace(quotes, "'");
  const capitals = closeGaps(plain.toUpperCase().normalize('NFKC'));
  return capitals.length > ASSUMED_LONGEST_NAME ? capitals : dropLead(capitals).replace(stops, '');
}

/** Shares of a hundred, asterisks, numbering and stops at either end are the label's, not the name's. */
const stripOnce = (name: string): string =>
  [percent, footnotes, emptyBrackets]
    .reduce((left, pattern) => closeGaps(left.replace(pattern, ' ')), name)
    .replace(numbering, '')
    .replace(edges, '');

/** Which name is to be looked up? What was written, in capitals, without what the label adds to it. */
export function stripName(written: string): string {
  const capitals = writeCapitals(written);
  if (capitals.length > ASSUMED_LONGEST_NAME) return capitals;
  const stripped = stripOnce(capitals);
  return stripped === capitals ? capitals : stripName(stripped);
}

/** What is compared? Letters, digits and what tells numbers apart: spaces, stops and hyphens at letters do not count. */
export const compareBy = (name: string): string =>
  name.replace(/[\s.'_]/g, '').replace(/(?<!\d)-|-(?!\d)/g, '');

/**
 * How long may a name be to be looked up and taken apart? Letters; a longer one is kept whole, as not known.
 * Assumed because the longest INCI names in use on labels stay below it, and because it bounds the work for any text.
 */
export const ASSUMED_LONGEST_NAME = 120;

const invisible = /[\u00ad\u200b-\u200f\u2060\ufeff]/g;
const dashes = /[\u2010-\u2015\u2212]/g;
const quotes = /[\u2018\u2019\u02bc]/g;
const percent = /[<>≤≥~]?\s?\d{1,3}(?:[.,]\d{1,4})?\s?%/g;
const footnotes = /[*\u2020\u2021\u00a7\u00ae\u00b0]+/g;
const numbering = /^\d{1,3}[.)]\s+/;
const emptyBrackets = /[([{]\s?[)\]}]/g;
const edges = /^[\s.:_-]+|[\s.:_-]+$/g;

/** Does anything stand here that could be a name? */
export const hasName = (text: string): boolean => /[\p{L}\p{N}]/u.test(text);

const toCapitals = (text: string): string => text.toUpperCase().normalize('NFKC');
const closeGaps = (text: string): string => text.replace(/\s+/g, ' ').trim();

/** Shares of a hundred, asterisks, numbering and stops at either end are the label's, not the name's. */
const stripOnce = (name: string): string =>
  [percent, footnotes, emptyBrackets]
    .reduce((left, pattern) => closeGaps(left.replace(pattern, ' ')), name)
    .replace(numbering, '')
    .replace(edges, '');

function stripAll(name: string): string {
  const stripped = stripOnce(name);
  return stripped === name ? name : stripAll(stripped);
}

/**
 * How would an INCI list print what was written here? In capitals, single spaces, plain hyphens, without per cent and
 * asterisks. Printing it again changes nothing. Where nothing would be left, what was written stays.
 */
export function printName(written: string): string {
  const plain = written.replace(invisible, '').replace(dashes, '-').replace(quotes, "'");
  const capitals = closeGaps(toCapitals(plain));
  if (capitals.length > ASSUMED_LONGEST_NAME) return capitals;
  const stripped = stripAll(capitals);
  return hasName(stripped) ? stripped : capitals;
}

/** What is compared? Letters, digits and what tells numbers apart: spaces, stops and hyphens at letters do not count. */
export const compareBy = (printed: string): string =>
  printed.replace(/[\s.'_]/g, '').replace(/(?<!\d)-|-(?!\d)/g, '');

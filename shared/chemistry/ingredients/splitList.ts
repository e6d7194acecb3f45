import { dropLead } from './labelName';

/**
 * What stands between two names: a comma that is not between digits, semicolons, dots in the middle, bullets, strokes,
 * "(and)", "+/-", "may contain", a dash with room on both sides. No pattern begins with a run, so that any text is
 * looked through once.
 */
const separators = new RegExp(
  [
    '[([]\\s?(?:and|&|et|und)\\s?[)\\]]',
    '\\+\\s?/\\s?[-\u2010-\u2015\u2212]|\u00b1',
    '\\b(?:may contain|peut contenir|kann enthalten)\\b',
    ',(?!\\d)|(?<!\\d),',
    '[;\u00b7\u2022\u2219\u22c5\u25cf\u25cb\u25e6\u25aa\u25a0\u2023\u30fb|\u00a6\u060c\u3001]',
    '(?<=\\s)[-\u2013\u2014](?=\\s)(?!\\s\\d)',
  ].join('|'),
  'giu',
);

const lineEnds = /[\n\r\t\v\f\u0085\u2028\u2029]/;
const header =
  /^(?:(?:(?:in)?active\s)?ingr[eé]d\w*(?:\s?\([^()]{0,20}\))?|inci|contains|composition)[:\s.]+/iu;
const headerAlone = /^(?:ingr[eé]d\w*|inci)[:.]?$/iu;

/** Pairs of brackets stay in the name they stand in; one without its fellow parts names as a comma does. */
const bracketed = /[([{][^()[\]{}]*[)\]}]|[^()[\]{}]+/g;

function splitAtLoneBrackets(line: string): readonly string[] {
  const pieces: string[] = [];
  let end = -1;
  for (const { 0: text, index } of line.matchAll(bracketed)) {
    if (index === end) pieces.push((pieces.pop() ?? '') + text);
    else pieces.push(text);
    end = index + text.length;
  }
  return pieces;
}

function dropHeader(line: string): string {
  const rest = line.replace(header, '').trim();
  if (headerAlone.test(rest)) return '';
  return rest === line ? rest : dropHeader(rest);
}

/**
 * Where does one name end and the next begin?
 * Gives the names in order, each as the lines it was written on: more than one only where nothing but a new line
 * stands between them, which may be the next name or the same one going on. Linear in its text.
 */
export const splitList = (text: string): readonly (readonly string[])[] =>
  text
    .split(separators)
    .map((piece) =>
      piece
        .split(lineEnds)
        .map((line) => dropHeader(line.trim()))
        .flatMap(splitAtLoneBrackets)
        .map((line) => dropLead(line.trim()))
        .filter((line) => line !== ''),
    )
    .filter((lines) => lines.length > 0);

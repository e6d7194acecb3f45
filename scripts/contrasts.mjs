/** Ratios: published, WCAG 2.2: 1.4.6 for text (AAA), 1.4.11 for what has to be seen to be used. */
const TEXT = 7;
const MARK = 3;

/**
 * What is written or drawn in a colour, and what it lies on, by the names of src/base.css. Beside them
 * tests/browser/looks measures every text against what is really behind it.
 * @type {readonly (readonly [what: string, on: readonly string[], least: number])[]}
 */
const pairs = [
  ['ink', ['paper', 'card', 'wash', 'amber'], TEXT],
  ['soft-ink', ['paper', 'card'], TEXT],
  ['slate', ['paper', 'card', 'wash'], TEXT],
  ['madder', ['paper', 'card', 'wash'], TEXT],
  ['fern', ['paper', 'card'], TEXT],
  ['copper', ['paper', 'card'], TEXT],
  ['card', ['ink', 'slate', 'madder', 'fern', 'copper'], TEXT],
  ['amber', ['ink', 'slate'], MARK],
];

/**
 * The colours that a style sheet names, as `--ink: #1f1813;`.
 * @param {string} css
 * @returns {ReadonlyMap<string, string>} name to six hexadecimal digits
 */
export function readColours(css) {
  return new Map(
    [...css.matchAll(/--([\w-]+):\s*#([0-9a-f]{6})\b/gi)].map(([, name = '', hex = '']) => [name, hex]),
  );
}

/**
 * Relative luminance, 0 to 1. Published: WCAG 2.2, its definition of it.
 * @param {string} hex six hexadecimal digits of sRGB
 */
function luminance(hex) {
  const [red = 0, green = 0, blue = 0] = [0, 2, 4].map((at) => {
    const share = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/**
 * Contrast ratio, 1 to 21. Published: WCAG 2.2, its definition of it.
 * @param {string} one six hexadecimal digits of sRGB
 * @param {string} other the same
 */
export function contrastOf(one, other) {
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}

/**
 * Every pair, with what it has and what it needs. Throws where a colour is not named.
 * @param {ReadonlyMap<string, string>} colours
 */
export function listContrasts(colours) {
  /** @param {string} name */
  const find = (name) => {
    const hex = colours.get(name);
    if (hex === undefined) throw new Error(`no colour is named --${name}`);
    return hex;
  };
  return pairs.flatMap(([what, grounds, least]) =>
    grounds.map((on) => ({ what, on, ratio: contrastOf(find(what), find(on)), least })),
  );
}

// A sheet as text for a terminal, and as one page of HTML for paper: nothing in it runs, and nothing is fetched.

/** @typedef {import('./laySheet.mjs').Sheet} Sheet */
/** @typedef {import('./laySheet.mjs').Part} Part */

/** Controls and signs that turn the direction of writing: a ticket, or the name of a file, could move the cursor of a terminal with them. */
const unseen = /[\p{Cc}\p{Cf}\u2028\u2029]/gu;
/** One line without them. @param {string} text */
export const plain = (text) => text.replace(unseen, '\ufffd');

/**
 * As JSON of the same meaning, in which no sign moves a cursor or turns the writing round: each stands as its number (published:
 * RFC 8259, section 7).
 * @param {unknown} content
 */
export const formatJson = (content) =>
  JSON.stringify(content, null, 1).replace(unseen, (sign) =>
    sign === '\n'
      ? sign
      : sign
          .split('')
          .map((unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`)
          .join(''),
  );

const isFigure = /^\d+(:\d\d| %)?$/;

/** @param {Part} part */
function formatPart({ title, heads, rows, none, lines = [] }) {
  const cells = [heads, ...rows].map((row) => row.map(plain));
  const widths = heads.map((_, at) => Math.max(...cells.map((row) => [...(row[at] ?? '')].length)));
  /** @param {readonly string[]} row */
  const line = (row) =>
    row
      .map((cell, at) => {
        const blank = ' '.repeat((widths[at] ?? 0) - [...cell].length);
        return isFigure.test(cell) ? blank + cell : cell + blank;
      })
      .join('   ')
      .trimEnd();
  const table = rows.length > 0 ? cells.map(line) : none === '' ? [] : [none];
  return [title.toUpperCase(), ...[...table, ...lines.map(plain)].map((each) => `  ${each}`)].join('\n');
}

/** As lines for a terminal. @param {Sheet} sheet */
export const formatText = ({ title, stamp, lines, parts, note }) =>
  [
    ...[title, ...(stamp === '' ? [] : [stamp]), ...lines].map(plain),
    '',
    ...parts.map((part) => `${formatPart(part)}\n`),
    note,
  ].join('\n');

/** @type {Readonly<Record<string, string>>} */
const signs = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };
/** @param {string} text */
const letters = (text) => plain(text).replace(/[&<>"']/g, (sign) => signs[sign] ?? '');

/** Figures stand under each other by their last digit, and so does what is said above them. */
const cell = (/** @type {'th' | 'td'} */ tag, /** @type {string} */ text, /** @type {boolean} */ isRight) =>
  `<${tag}${tag === 'th' ? ' scope="col"' : ''}${isRight ? ' class="figure"' : ''}>${letters(text)}</${tag}>`;

/** @param {readonly string[]} texts */
const paragraphs = (texts) => texts.map((text) => `<p>${letters(text)}</p>`).join('');

/** @param {Part} part */
function layPart({ title, heads, rows, none, lines = [] }) {
  const areFigures = heads.map((_, at) => rows.every((row) => isFigure.test(row[at] ?? '')));
  /** @param {'th' | 'td'} tag */
  const line = (tag) => (/** @type {readonly string[]} */ row) =>
    `<tr>${row.map((text, at) => cell(tag, text, areFigures[at] === true)).join('')}</tr>`;
  const body = rows.map(line('td')).join('\n');
  const table =
    rows.length > 0
      ? `<table><thead>${line('th')(heads)}</thead><tbody>\n${body}\n</tbody></table>`
      : paragraphs(none === '' ? [] : [none]);
  return `<section><h2>${letters(title)}</h2>${table}${paragraphs(lines)}</section>`;
}

/** By this a page is known again, so that the next week's may take its place. */
const mark = '<meta name="generator" content="Strandproof report">';

/** Is this text a page that a report wrote? @param {string} text */
export const isPage = (text) => text.startsWith('<!doctype html>') && text.includes(mark);

/** Ink on paper; whatever size the printer has, with 15 mm around it. */
const style = `
@page { margin: 15mm; }
:root { color-scheme: light; }
body { max-width: 180mm; margin: 12mm auto; padding: 0 4mm; background: #fff; color: #1f1813;
  font: 10.5pt/1.4 "Atkinson Hyperlegible Next", "Atkinson Hyperlegible", system-ui, sans-serif;
  font-variant-numeric: tabular-nums; }
h1 { margin: 0 0 2mm; font-size: 20pt; line-height: 1.15; }
h2 { margin: 6mm 0 1.5mm; font-size: 13pt; break-after: avoid; }
p { margin: 1mm 0; overflow-wrap: anywhere; }
.stamp { padding: 2mm 3mm; border: 0.6mm solid #8e1b2f; color: #8e1b2f; font-weight: 700; }
table { min-width: 60%; border-collapse: collapse; }
thead { display: table-header-group; }
tr { break-inside: avoid; }
th, td { padding: 1.2mm 3mm 1.2mm 0; border-bottom: 0.25mm solid #5b4b40; text-align: left; vertical-align: top; }
th { color: #5b4b40; font-weight: 600; vertical-align: bottom; }
td { overflow-wrap: anywhere; }
.figure { padding-left: 4mm; overflow-wrap: normal; text-align: right; }
footer { margin-top: 8mm; color: #5b4b40; font-size: 9pt; }
@media print { body { max-width: none; margin: 0; padding: 0; } }
`;

/**
 * As one page for paper. @param {Sheet} sheet
 * @param {string} language
 */
export const formatHtml = ({ title, stamp, lines, parts, note }, language) => `<!doctype html>
<html lang="${letters(language)}">
<head>
<meta charset="utf-8">
${mark}
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${letters(title)}</title>
<style>${style}</style>
</head>
<body>
<h1>${letters(title)}</h1>
${stamp === '' ? '' : `<p class="stamp">${letters(stamp)}</p>`}
${paragraphs(lines)}
${parts.map(layPart).join('\n')}
<footer>${paragraphs([note])}</footer>
</body>
</html>
`;

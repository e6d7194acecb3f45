// The decision table as Markdown, worked out from the very function that suggests.

/**
 * @typedef {'notPlanned' | 'untested' | 'sound' | 'rough' | 'gummy' | 'broken'} ZoneFinding
 * @typedef {'low' | 'raised' | 'high'} Risk
 * @typedef {{
 *   isLifting: boolean,
 *   zones: Record<'roots' | 'lengths' | 'ends', ZoneFinding>,
 *   risk: Risk,
 *   strands: number,
 *   shortBy: number,
 *   isEven: boolean,
 *   stop: 'none' | 'judgement' | 'absolute',
 * }} Findings
 * @typedef {(findings: Findings) => string} Suggest
 */

/** @type {readonly ZoneFinding[]} */
const outcomes = ['sound', 'rough', 'gummy', 'broken', 'untested'];
/** @type {readonly Risk[]} */
const risks = ['low', 'raised', 'high'];

/** A full head whose strands all held, of hair with nothing against it. @type {Findings} */
const best = {
  isLifting: true,
  zones: { roots: 'notPlanned', lengths: 'sound', ends: 'sound' },
  risk: 'low',
  strands: 2,
  shortBy: 0,
  isEven: true,
  stop: 'none',
};

/** What else holds back, one thing at a time. @type {readonly (readonly [string, Partial<Findings>])[]} */
const others = [
  ['nothing', {}],
  ['a judgement stop not lifted', { stop: 'judgement' }],
  ['an absolute stop', { stop: 'absolute' }],
  ['no strand tested', { strands: 0 }],
  ['one strand', { strands: 1 }],
  ['one strand, risk high', { strands: 1, risk: 'high' }],
  ['patchy or banded', { isEven: false }],
  ['half a level short', { shortBy: 0.5 }],
  ['a level and a half short', { shortBy: 1.5 }],
  ['two levels short', { shortBy: 2 }],
];

/** @param {readonly string[]} cells */
const formatRow = (cells) => `| ${cells.join(' | ')} |`;

/**
 * @param {readonly string[]} head
 * @param {readonly (readonly string[])[]} rows
 */
const formatTable = (head, rows) => [head, head.map(() => '---'), ...rows].map(formatRow).join('\n');

/**
 * What does the table suggest, cell by cell? Two Markdown tables: by outcome and risk, then by what else holds back.
 * Two strands, even, on target and no stop, where nothing else is said; the other zone held. Pure.
 * Checked in tests/shared/judgement/decisionTable.test.ts.
 * @param {Suggest} suggest
 */
export function formatDecisionTable(suggest) {
  const byOutcome = outcomes.flatMap((outcome) =>
    risks.map((risk) => [
      outcome,
      risk,
      ...[true, false].flatMap((isLifting) => [
        suggest({ ...best, isLifting, risk, zones: { ...best.zones, lengths: outcome } }),
        suggest({ ...best, isLifting, risk, zones: { ...best.zones, ends: outcome } }),
      ]),
    ]),
  );
  const byOther = others.map(([name, change]) => [
    name,
    suggest({ ...best, ...change }),
    suggest({ ...best, ...change, isLifting: false }),
  ]);
  return [
    formatTable(
      [
        'strand',
        'risk',
        'lighten or lift: lengths',
        'lighten or lift: ends',
        'deposit, gloss, tone: lengths',
        'deposit, gloss, tone: ends',
      ],
      byOutcome,
    ),
    formatTable(['what else holds back', 'lighten or lift', 'deposit, gloss, tone'], byOther),
  ].join('\n\n');
}

import { findShownUnit, type Quantity, roundTo, type UnitSettings } from '../../units/quantity';

/** What one cell holds; null where a row has nothing to say. */
export type Cell = string | number | null;

/**
 * One column: how its cells are read again, and what it means, in a sentence for whoever opens the file. A `quantity` is
 * told in the station's unit, which the column's name ends in.
 */
interface Column {
  readonly type: 'string' | 'number' | 'datetime';
  readonly quantity?: Quantity;
  readonly means: string;
}

const text = (means: string) => ({ type: 'string', means }) as const;
/** Several figures in one cell. */
const figures = (quantity: Quantity, means: string) => ({ type: 'string', quantity, means }) as const;
const figure = (quantity: Quantity, means: string) => ({ type: 'number', quantity, means }) as const;
const moment = (means: string) => ({ type: 'datetime', means }) as const;

/** The columns of the flat table, in their order. Names are for ever: spreadsheets are built on them. */
export const columns = {
  consultation: text('Which consultation: the same on all its rows.'),
  kind: text('What the row is of: visit, strand, look, bowl, lifted, correction, reaction.'),
  number: figure('count', 'Which strand, bowl or look of the consultation, from 1.'),
  at: moment('When it was told or done: RFC 3339, with the offset of the tablet then.'),
  by: text('Who did it.'),
  ticket: text('Initials or ticket.'),
  chair: figure('count', 'Chair.'),
  stylist: text('Who does her hair.'),
  modelVersion: figure('count', 'The model it was judged by.'),
  zone: text('Roots, lengths or ends.'),
  what: text(
    'How it ended or stands: of a visit, a strand, a bowl, a reaction; the rule or the answer otherwise.',
  ),
  ended: moment('When it ended: a visit, a strand, a bowl.'),
  service: text('What she wants.'),
  reach: text('Full head, roots, ends out.'),
  targetLevel: figure('level', 'Depth she wants, 1 black to 10 lightest blond.'),
  suggested: text('What was suggested.'),
  decision: text('What was decided.'),
  line: text('Product line.'),
  batch: text('Batch.'),
  shades: text('Shades and their parts.'),
  developer: figure('percent', 'Strength of the developer.'),
  bottles: figures('percent', 'The two bottles it was thinned from, where there were two.'),
  ratio: figure('parts', 'Developer to one part of colour.'),
  heat: text('None, foil, dry heat.'),
  colour: figure('mass', 'Colour or lightener, without developer.'),
  weighed: figures('mass', 'What the scale said of each, in the order of the shades, then the developer.'),
  minutes: figure('minutes', 'How long it was meant to stay.'),
  minutesOn: figure('minutes', 'How long it was on, whole minutes.'),
  over: figure('seconds', 'How long past its time it was taken off or rinsed.'),
  missedLooks: figure('count', 'Looks that fell due and nobody made.'),
  level: figure('level', 'Depth seen.'),
  undertone: text('Undertone seen.'),
  feel: text('How it felt.'),
  stinging: text('Whether it stung.'),
  hair: text('How the hair on the head held at a look.'),
  fibre: text('What became of the hair.'),
  stretch: text('How it came back, wet.'),
  evenness: text('Even, patchy, banded.'),
  grade: text('What the outcome counts as.'),
  setting: figure('temperature', 'Heat setting of the plan for home.'),
  rest: figure('count', 'Hours with nothing hot.'),
  back: text('When she comes back.'),
  code: text('The coded reason.'),
  words: text('The reason in words.'),
} as const satisfies Readonly<Record<string, Column>>;

export type ColumnName = keyof typeof columns;
export const columnNames = Object.keys(columns) as readonly ColumnName[];

/** One thing that was told or done. What a row does not name it has nothing to say about. */
export type Row = Readonly<Record<ColumnName, Cell>>;

const unitNames: Readonly<Record<string, string>> = {
  '°C': 'degC',
  '°F': 'degF',
  '%': 'percent',
};

/** Under which name does the column stand in a file? snake_case, and the unit where there is one: `colour_oz`. */
export function nameColumn(name: ColumnName, units: UnitSettings): string {
  const snake = name.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);
  const column: Column = columns[name];
  const { symbol } = column.quantity === undefined ? { symbol: '' } : findShownUnit(column.quantity, units);
  return symbol === '' ? snake : `${snake}_${unitNames[symbol] ?? symbol}`;
}

/** Finer than any scale or dial, coarse enough to undo the rounding of a conversion. */
const DIGITS = 6;

/** A figure of this column in the station's unit; null where there is none. */
export function showFigure(
  name: ColumnName,
  canonical: number | 'unknown' | null | undefined,
  units: UnitSettings,
): Cell {
  if (typeof canonical !== 'number' || !Number.isFinite(canonical)) return null;
  const { quantity = 'count' }: Column = columns[name];
  return roundTo(findShownUnit(quantity, units).toShown(canonical), DIGITS);
}

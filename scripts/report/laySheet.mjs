// A report as a sheet of parts, each a table or a line that says there is none: for a terminal and for paper alike.
import { sayDay } from './days.mjs';

/** @typedef {import('../../shared/records/report/makeReport').Report} Report */
/** @typedef {import('../../shared/records/report/reportFault').ReportFault} ReportFault */
/** @typedef {import('../../shared/records/report/reckonReport').PersonFigures} PersonFigures */
/** @typedef {typeof import('../../src/words/en/report').report} Words */
/**
 * @typedef {{
 *   title: string,
 *   heads: readonly string[],
 *   rows: readonly (readonly string[])[],
 *   none: string,
 *   lines?: readonly string[],
 * }} Part
 */
/** @typedef {{ title: string, stamp: string, lines: readonly string[], parts: readonly Part[], note: string }} Sheet */

/** "6:05", minutes and seconds. @param {number} ms */
const sayOver = (ms) => {
  const seconds = Math.floor(ms / 1000);
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
};

/** "25 %", whole. @param {number} share */
const sayPercent = (share) => `${Math.round(100 * share)} %`;

/** @param {number} score */
const saySquare = (score) => score.toFixed(2);

/** @param {number} count */
const write = (count) => String(count);

/** @param {PersonFigures} person */
function layPerson({ name, clients, outcomes, late, missed, lifted }) {
  /** @param {string} grade */
  const ofGrade = (grade) => outcomes.find((each) => each.grade === grade)?.count ?? 0;
  const looks = missed.reduce((sum, { count }) => sum + count, 0);
  const grades = ['sound', 'rough', 'gummy', 'broken'].map(ofGrade);
  return [name, ...[clients, ...grades, late.length, looks, lifted].map(write)];
}

/**
 * @param {Report} report
 * @param {readonly ReportFault[]} faults
 * @param {Words} words
 * @param {readonly string[]} lines by what the days are parted
 * @returns {Sheet}
 */
export function laySheet(report, faults, words, lines) {
  const { figures, people, files, again, erased, outside, isDemo } = report;
  const { clients, strands, chance, late, missed, rules, told, open } = words;
  const goneOn = figures.clients - figures.endings.reduce((sum, { count }) => sum + count, 0);
  /** @type {Part[]} */
  const parts = [
    {
      title: clients.title,
      heads: clients.heads,
      rows: [
        ...figures.endings.map(({ how, count }) => [clients.endings[how], write(count)]),
        ...(goneOn > 0 ? [[clients.open, write(goneOn)]] : []),
        ...(figures.clients > 0 ? [[clients.all, write(figures.clients)]] : []),
      ],
      none: clients.nobody,
    },
    {
      title: strands.title,
      heads: strands.heads,
      rows: figures.outcomes.map(({ grade, count }) => [strands.grades[grade], write(count)]),
      none: strands.none,
    },
    {
      title: chance.title,
      heads: chance.heads,
      rows: figures.chance.bands.map(({ from, to, said, seen }) => [
        chance.band(sayPercent(from), sayPercent(to)),
        sayPercent(said),
        ...[seen.of, seen.count].map(write),
        sayPercent(seen.share),
        chance.band(sayPercent(seen.low), sayPercent(seen.high)),
      ]),
      none: chance.none,
      lines:
        figures.chance.score === null
          ? []
          : [
              chance.score(saySquare(figures.chance.score.ours), saySquare(figures.chance.score.ofBaseRate)),
              chance.hint,
            ],
    },
    {
      title: late.title,
      heads: late.heads,
      rows: figures.late.map(({ ticket, kind, zone: length, overMs }) => [
        ticket,
        late.clock(kind === 'head' ? 'head' : 'strand', length),
        sayOver(overMs),
      ]),
      none: late.none,
    },
    {
      title: missed.title,
      heads: missed.heads,
      rows: figures.missed.map(({ ticket, count }) => [ticket, write(count)]),
      none: missed.none,
    },
    {
      title: rules.title,
      heads: rules.heads,
      rows: [...figures.rules]
        .sort((one, other) => other.stopped - one.stopped || (one.rule < other.rule ? -1 : 1))
        .map((count) => [
          rules.what(count.rule),
          ...[count.stopped, count.lifted].map(write),
          count.isOftenLifted ? rules.often : '',
        ]),
      none: rules.none,
    },
    {
      title: told.title,
      heads: told.heads,
      rows: figures.told.map(({ ticket, came }) => [ticket, told.came[came]]),
      none: told.none,
    },
    {
      title: open.title,
      heads: open.heads,
      rows: figures.stillOpen.map(({ ticket, how }) => [ticket, open.how[how]]),
      none: open.none,
    },
  ];
  if (people !== null) {
    const { title, heads, none, hint } = words.people;
    parts.push({ title, heads, none, rows: people.map(layPerson), lines: [hint] });
  }
  if (faults.length > 0) {
    parts.push({ title: words.leftOut, heads: [], rows: [], none: '', lines: faults.map(words.sayFault) });
  }
  parts.push({
    title: words.files.title,
    heads: words.files.heads,
    rows: files.map(({ name, kind, visits, unread }) => [
      name,
      words.files.kinds[kind],
      unread === 0 ? write(visits) : `${visits}; ${words.files.unread(write(unread))}`,
    ]),
    none: '',
    lines: [
      ...(again > 0 ? [words.files.again(write(again))] : []),
      ...(erased > 0 ? [words.files.erased(write(erased))] : []),
      ...(outside > 0 ? [words.files.outside(write(outside))] : []),
    ],
  });
  return {
    title: words.title(sayDay(figures.from), sayDay(figures.to)),
    stamp: isDemo ? words.invented : '',
    lines,
    parts,
    note: words.note,
  };
}

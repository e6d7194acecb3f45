import { formatElapsed, formatQuantity } from '../../../shared/units/format';
import { sayBottle } from '../bottleAndBowl';
import { type CardRow, type Told, tellRow } from './cardRow';
import { type CardLook, listCardLooks } from './listCardLooks';
import { sayDecision, sayOutcome, sayWho } from './sayCardOutcome';
import { findTimes } from './viewCard';

/** All that is known of one strand, line by line, in the order in which it came about. */
export const sayCard = (told: Told): readonly CardRow[] => [
  tellRow('place', told.words.strandCard.from, sayPlace(told)),
  tellRow('line', told.words.strandTest.forms.strand.line.ask, told.strand.line),
  tellRow(
    'batch',
    told.words.strandTest.forms.strand.batch.ask,
    told.strand.batch || told.words.strandCard.none,
  ),
  tellRow('mix', told.words.strandCard.mix, sayMix(told)),
  tellRow('times', told.words.strandCard.times, sayTimes(told)),
  tellRow('why', told.words.strandCard.why, sayWhy(told)),
  tellRow('looks', told.words.strandCard.looks, sayLooks(told)),
  ...sayOutcome(told),
  ...sayDecision(told),
  tellRow('by', told.words.strandCard.by, sayWho(told)),
];

function sayPlace({ strand, units, words }: Told): string {
  const { hairs, washedOff } = words.strandCard;
  return [
    words.general.zones[strand.zone],
    words.strandTest.forms.strand.place.options[strand.place],
    hairs(formatQuantity(strand.hairs, 'count', units, words.locale)),
    ...(strand.buildUp === 'washedOff' ? [washedOff] : []),
  ].join(' · ');
}

const sayMix = ({ strand, units, words }: Told): string =>
  [
    sayBottle(strand.developerPercent, words, units),
    words.mix.limitRatio(formatQuantity(strand.ratio, 'count', units, words.locale)),
    words.mix.limitHeat[strand.heat],
  ].join(' · ');

function sayTimes({ record, strand, units, words }: Told): string {
  const { fromTo, onFor, planned } = words.strandCard;
  const { startedAtMs, endedAtMs, onMs, plannedMin, setMin, countsMin } = findTimes(record, strand);
  const minutes = (value: number) => formatQuantity(value, 'minutes', units, words.locale);
  return [
    fromTo(words.moments.time(startedAtMs), words.moments.time(endedAtMs)),
    onFor(formatElapsed(onMs), countsMin === null ? null : minutes(countsMin)),
    planned(minutes(plannedMin), setMin === plannedMin ? null : minutes(setMin)),
  ].join(' · ');
}

/** Why it came off: a word of the form it was tapped on. */
function sayWhy({ strand, words }: Told): string {
  const { takenOff, discarded } = words.strandTest.forms;
  const options: Readonly<Record<string, string>> =
    strand.ended.how === 'discarded' ? discarded.why.options : takenOff.why.options;
  const why = options[strand.why ?? ''] ?? words.strandCard.none;
  return words.strandCard.endedBy[strand.ended.how](why);
}

function sayLooks({ record, strand, units, words }: Told): string {
  const said = words.strandCard;
  const sayLook = ({ sinceMs, seen }: CardLook): string => {
    const at = formatElapsed(sinceMs);
    if (seen === null) return said.missedAt(at);
    const { level, feel } = seen;
    const told =
      typeof level === 'number' ? formatQuantity(level, 'level', units, words.locale) : said.noLevel;
    return said.lookAt(at, told, feel === undefined || feel === 'sound' ? null : said.feels[feel]);
  };
  const { shown, left } = listCardLooks(record, strand);
  const [first = said.noLook, ...rest] = shown.map(sayLook);
  const gap = left === 0 ? [] : [said.looksLeft(formatQuantity(left, 'count', units, words.locale))];
  // A line ends behind a dot and never begins with one.
  return [first, ...gap, ...rest].join('\u00a0· ');
}

import { computeBowlPercent } from '../../../shared/chemistry/ratio';
import type { Settings } from '../../../shared/records/settings';
import { brand } from '../../../shared/units/brand';
import { formatMass, formatPercent, formatQuantity } from '../../../shared/units/format';
import type { Words } from '../../words/words';
import { sayBottlesOf } from '../bottleAndBowl';
import type { BowlThen, LastVisit, ZoneThen } from './viewLastVisit';

/** "sound, level 6": what the strand of this zone came to. */
export function sayOutcomeThen({ strand }: ZoneThen, { units }: Settings, words: Words): string {
  const said = words.lastVisit;
  if (strand === null) return said.noStrand;
  const { outcome, carried } = strand;
  if (outcome === null)
    return strand.ended?.how === 'broke' ? words.strandTest.grades.broken : said.noOutcome;
  const level =
    outcome.level === undefined
      ? []
      : [said.level(formatQuantity(outcome.level, 'level', units, words.locale))];
  return [
    words.strandTest.grades[outcome.grade],
    ...level,
    ...(carried === null ? [] : [said.carriedOver]),
  ].join(', ');
}

/** What was poured: as the scale said it where it was weighed in item by item, else as it was to be. */
function sayGrams({ bowl }: BowlThen, { units, scaleStepG }: Settings, words: Words): string {
  const { weighed = [], shades, colourG, ratio } = bowl;
  const sum = (of: readonly { readonly amountG: number }[]) =>
    of.reduce((all, { amountG }) => all + amountG, 0);
  const meant = Math.round((colourG * ratio) / scaleStepG) * scaleStepG;
  const write = (grams: number) => formatMass(brand(grams), units, words.locale);
  return weighed.length === 0
    ? words.lastVisit.grams(write(colourG), write(meant))
    : words.lastVisit.grams(
        write(sum(weighed.slice(0, shades.length))),
        write(sum(weighed.slice(shades.length))),
      );
}

/** The formula of one bowl: its line and shades, how strong, and how much for how long. */
export function sayBowlThen(then: BowlThen, settings: Settings, words: Words): readonly string[] {
  const { bowl, minutesOn } = then;
  const { units } = settings;
  const said = words.lastVisit;
  const shades = bowl.shades.map(({ shade }) => shade).join(' + ');
  const inBowl = computeBowlPercent(brand(bowl.developerPercent), bowl.ratio);
  const bottle = sayBottlesOf(bowl, words, units);
  const strength = inBowl.ok
    ? said.bottleAndBowl(bottle, formatPercent(inBowl.value, units, words.locale))
    : bottle;
  const minutes =
    minutesOn === null ? [] : [said.on(formatQuantity(minutesOn, 'minutes', units, words.locale))];
  return [
    `${bowl.kind === 'toner' ? said.toner(bowl.line) : bowl.line} · ${shades}`,
    strength,
    [
      words.mix.limitRatio(formatQuantity(bowl.ratio, 'count', units, words.locale)),
      ...minutes,
      sayGrams(then, settings, words),
    ].join(' · '),
  ];
}

/** What she wanted, what was decided and by whom, and how it ended. */
export function sayFactsThen(
  { record, how }: LastVisit,
  { units }: Settings,
  words: Words,
): readonly (readonly [name: string, value: string])[] {
  const said = words.lastVisit;
  const { client } = record.answers;
  const { decision, stylist } = record;
  const asked = words.asked.client;
  const wanted = [
    ...(client?.service === undefined ? [] : [asked.service.options[client.service]]),
    ...(client?.reach === undefined ? [] : [asked.reach.options[client.reach]]),
    ...(client?.targetLevel === undefined
      ? []
      : [said.level(formatQuantity(client.targetLevel, 'level', units, words.locale))]),
  ].join(', ');
  const decided =
    decision === null
      ? said.notDecided
      : said.by(words.decision.decisions[decision.decision].name, decision.by);
  return [
    [said.wanted, wanted],
    [said.decided, decided],
    [said.ended, said.endings[how]],
    [said.does, stylist],
  ];
}

/** What stood in her way at the end; empty where nothing did. */
export function sayStopsThen({ stops, record, hasStandingStop }: LastVisit, words: Words): readonly string[] {
  if (!hasStandingStop) return [];
  const signs: Readonly<Record<string, string>> = words.reaction.signs.options;
  const reaction =
    record.reaction === null
      ? []
      : [words.lastVisit.reaction(record.reaction.signs.map((sign) => signs[sign] ?? sign).join(', '))];
  return [...stops.map((rule) => words.rules[rule].what), ...reaction];
}

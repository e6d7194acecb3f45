import type { Snip } from '../../../shared/hair/whereToSnip';
import type { HairAt } from '../../../shared/heat/profile';
import type { Reached } from '../../../shared/heat/reached';
import { type HairThresholdId, isOfHair } from '../../../shared/heat/thresholds';
import { formatQuantity } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import type { MapStretch } from '../../parts/strandMap/strandMapView';
import { readMark } from '../../words/marks';
import type { Words } from '../../words/words';
import { sayAbout } from './saySizes';

type ReachedByHair = Reached & { readonly id: HairThresholdId };

/** For what of all that happens to hair was a tool set hot enough? Coolest first. */
export const listReachedByHair = (reached: readonly Reached[]): readonly ReachedByHair[] =>
  reached.filter((each): each is ReachedByHair => isOfHair(each.id));

/** Where one strand is snipped, in words. */
export const saySnip = (snip: Snip, words: Words, units: UnitSettings): string =>
  words.hair.snip(
    words.strandTest.forms.strand.place.options[snip.place],
    sayAbout(snip.cm, units, words.locale),
    snip.why.map((reason) => words.hair.why[reason]),
  );

/** Where the map would snip, beside the question where she did. */
export const saySnipHint = ({ place, cm }: Snip, words: Words, units: UnitSettings): string =>
  words.hair.snipHint(words.hair.places[place], sayAbout(cm, units, words.locale));

const sayKind = (mark: string, words: Words): string => words.hair.shortKinds[readMark(mark).kind];

/** What heat does, and which kind of source says so: "the core softens (common practice)". */
export const sayWithKind = (what: string, mark: string, words: Words): string =>
  words.hair.ofKind(what, sayKind(mark, words));

/**
 * The worst threshold of each kind, published first: more of them would bury the strand, and all stand behind "Why?".
 * What only a setting that nobody knows may have reached is drawn where nothing that was told did, as perhaps.
 */
export function drawReached(
  reached: readonly Reached[],
  lengthCm: number,
  words: Words,
): readonly MapStretch[] {
  const said = words.hair;
  const all = listReachedByHair(reached).filter(({ fromCm }) => fromCm < lengthCm);
  return (['published', 'practice'] as const).flatMap((kind) => {
    const ofKind = all.filter(({ mark }) => readMark(mark).kind === kind);
    const worst = ofKind.findLast(({ isTold }) => isTold) ?? ofKind.at(-1);
    if (worst === undefined) return [];
    const say = worst.isTold ? said.hotEnough : said.mayBeHotEnough;
    const name = say(said.reached[worst.id], sayKind(worst.mark, words));
    return [{ id: worst.id, fromCm: worst.fromCm, toCm: lengthCm, name }];
  });
}

/** Where bleach lies, most likely: stretches of as many times each, as perhaps where nobody told so many of any place. */
export function drawBleached(
  profile: readonly HairAt[],
  words: Words,
  units: UnitSettings,
): readonly MapStretch[] {
  const told = new Set(profile.filter(({ bleaches }) => bleaches.low === bleaches.typical).map(countOf));
  const stretches: MapStretch[] = [];
  for (const hair of profile) {
    const count = countOf(hair);
    const before = stretches.at(-1);
    if (before?.id === String(count)) {
      stretches[stretches.length - 1] = { ...before, toCm: hair.cm };
      continue;
    }
    const say = told.has(count) ? words.hair.bleached : words.hair.mayBeBleached;
    const times = formatQuantity(count, 'count', units, words.locale);
    const name = { name: say(times), short: words.hair.times(times) };
    stretches.push({ id: String(count), fromCm: hair.cm, toCm: hair.cm, ...name });
  }
  return stretches.filter(({ id }) => id !== '0');
}

const countOf = ({ bleaches }: HairAt): number => bleaches.typical;

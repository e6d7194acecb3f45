import { scaleLinear } from 'd3-scale';
import type { Snip } from '../../../shared/hair/whereToSnip';
import type { HairAt } from '../../../shared/heat/profile';
import type { Reached } from '../../../shared/heat/reached';
import type { Answers } from '../../../shared/records/forms/asked';
import { formatQuantity } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import type { MapStretch, StrandMapView } from '../../parts/StrandMap';
import type { HairThresholdId } from '../../words/hairThreshold';
import { readMark } from '../../words/marks';
import type { Words } from '../../words/words';
import { roundRange, sayAbout, sayLikely } from './saySizes';
import type { HairView } from './viewHair';

/** So many thresholds are drawn, the worst of each kind: more would bury them. All of them stand behind "Why?". */
const thresholdsDrawn = { published: 1, practice: 1 } as const;

/** What heat does to hair; that the iron itself stays hot is said elsewhere. */
export const isOfHair = (each: Reached): each is Reached & { readonly id: HairThresholdId } =>
  each.id !== 'staysHotAfterUse';

/** Where one strand is snipped, in words. */
export const saySnip = (snip: Snip, words: Words, units: UnitSettings): string =>
  words.hair.snip(
    words.strandTest.forms.strand.place.options[snip.place],
    sayAbout(snip.cm, units, words.locale),
    snip.why.map((reason) => words.hair.why[reason]),
  );

/** Where the map would snip, beside the question where she did. */
export const saySnipHint = ({ place, cm }: Snip, words: Words, units: UnitSettings): string =>
  words.hair.snipHint(words.strandTest.forms.strand.place.options[place], sayAbout(cm, units, words.locale));

/** What heat does, and which kind of source says so: "the core softens · common practice". */
export const sayWithKind = (what: string, mark: string, words: Words): string =>
  words.hair.ofKind(what, words.hair.shortKinds[readMark(mark).kind]);

/** The worst threshold of each kind, published first. */
function pickReached({ reached, lengthCm }: HairView, words: Words): readonly MapStretch[] {
  const said = words.hair;
  const all = reached.filter(isOfHair).filter(({ fromCm }) => fromCm < lengthCm);
  return (['published', 'practice'] as const).flatMap((kind) =>
    all
      .filter(({ mark }) => readMark(mark).kind === kind)
      .slice(-thresholdsDrawn[kind])
      .map(({ id, fromCm, mark }) => ({
        id,
        fromCm,
        toCm: lengthCm,
        name: sayWithKind(said.reached[id], mark, words),
      })),
  );
}

/** Where bleach lies, most likely: stretches of as many times each. */
function listBleached(profile: readonly HairAt[], words: Words, write: (count: number) => string) {
  const stretches: MapStretch[] = [];
  for (const { cm, bleaches } of profile) {
    const count = bleaches.typical;
    const before = stretches.at(-1);
    if (before !== undefined && before.id === String(count)) {
      stretches[stretches.length - 1] = { ...before, toCm: cm };
    } else {
      stretches.push({ id: String(count), fromCm: cm, toCm: cm, name: words.hair.bleached(write(count)) });
    }
  }
  return stretches.filter(({ id }) => id !== '0');
}

/** The picture of the strand in words and places, ready to be drawn. */
export function sayStrandMap(
  view: HairView,
  answers: Answers,
  words: Words,
  units: UnitSettings,
): StrandMapView {
  const said = words.hair;
  const write = (count: number) => formatQuantity(count, 'count', units, words.locale);
  const most = Math.max(...view.profile.map(({ ironMin }) => ironMin.high));
  const ticks = most === 0 ? [0] : scaleLinear([0, most], [0, 1]).nice(3).ticks(3);
  const minutesAt = (hair: HairAt) =>
    sayLikely(roundRange(hair.ironMin, 0), 'minutes', units, words.locale, said.likely);
  const { client } = answers;
  const snips = view.snips.map((snip, index) => ({ ...snip, name: write(index + 1) }));
  return {
    lengthCm: view.lengthCm,
    points: view.profile.map(({ cm, ironMin }) => ({ cm, ...ironMin })),
    counts: said.counts,
    ticks: ticks.map((minutes) => ({ minutes, name: write(minutes) })),
    landmarks: view.landmarks.map(({ landmark, cm }) => ({ cm, name: said.landmarks[landmark] })),
    scalp: said.scalp,
    bleached: listBleached(view.profile, words, write),
    reach:
      view.reach === null || client?.reach === undefined
        ? null
        : { id: client.reach, ...view.reach, name: said.reach[client.reach] },
    reached: pickReached(view, words),
    snips: snips.map(({ cm, name }) => ({ cm, name })),
    said: [
      said.said.line(sayAbout(view.lengthCm, units, words.locale), minutesAt(view.tip)),
      ...(client?.reach === undefined ? [] : [`${said.reach[client.reach]}.`]),
      ...pickReached(view, words).map(({ name }) => `${name}.`),
      ...snips.map((snip) => said.said.snip(snip.name, saySnip(snip, words, units))),
    ].join(' '),
  };
}

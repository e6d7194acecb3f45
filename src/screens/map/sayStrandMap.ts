import { scaleLinear } from 'd3-scale';
import type { Answers } from '../../../shared/records/forms/asked';
import { formatQuantity } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import type { StrandMapView } from '../../parts/strandMap/strandMapView';
import type { Words } from '../../words/words';
import { drawBleached, drawReached, saySnip } from './sayHair';
import { roundRange, sayAbout, sayLikely } from './saySizes';
import type { HairView } from './viewHair';

/** About so many lines above the strand: more would be a table. */
const LINES = 3;

/**
 * The picture of the strand in words and places, ready to be drawn, and the same as one text: both from the same lists.
 * Where it is only asked where to snip, the heat that was reached is left out of both.
 */
export function sayStrandMap(
  view: HairView,
  answers: Answers,
  words: Words,
  units: UnitSettings,
  what: 'whole' | 'whereToSnip' = 'whole',
): StrandMapView {
  const said = words.hair;
  const write = (count: number) => formatQuantity(count, 'count', units, words.locale);
  const about = (cm: number) => sayAbout(cm, units, words.locale);
  const most = Math.max(...view.profile.map(({ ironMin }) => ironMin.high));
  const ticks = most === 0 ? [0] : scaleLinear([0, most], [0, 1]).nice(LINES).ticks(LINES);
  const reached = what === 'whole' ? drawReached(view.reached, view.lengthCm, words) : [];
  const bleached = drawBleached(view.profile, words, units);
  const snips = view.snips.map((snip, index) => ({ ...snip, name: write(index + 1) }));
  const goes = answers.client?.reach;
  const minutes = sayLikely(roundRange(view.tip.ironMin, 0), 'minutes', units, words.locale, said.likely);
  return {
    lengthCm: view.lengthCm,
    points: view.profile.map(({ cm, ironMin }) => ({ cm, ...ironMin })),
    counts: said.counts,
    ticks: ticks.map((tick) => ({ minutes: tick, name: write(tick) })),
    landmarks: view.landmarks.map(({ landmark, cm }) => ({ cm, name: said.landmarks[landmark] })),
    scalp: said.scalp,
    bleached,
    reach:
      view.reach === null || goes === undefined ? null : { id: goes, ...view.reach, name: said.reach[goes] },
    reached,
    snips: snips.map(({ cm, name }) => ({ cm, name })),
    said: said.sentence([
      said.said.line(about(view.lengthCm), minutes),
      ...bleached.map(({ name, fromCm, toCm }) => said.said.bleached(name, about(fromCm), about(toCm))),
      ...(goes === undefined ? [] : [said.reach[goes]]),
      ...reached.map(({ name }) => name),
      ...snips.map((snip) => said.said.snip(snip.name, saySnip(snip, words, units))),
    ]),
  };
}

import { ASSUMED_MAX_TOTAL_G } from '../../../shared/chemistry/ratio';
import { type WeighIn, type WeighInRefusal, weighIn } from '../../../shared/chemistry/weighIn';
import type { Mixture } from '../../../shared/judgement/mixture';
import { type Bottles, listToWeigh } from '../../../shared/judgement/weighedBowl';
import type { ConsultationEvent } from '../../../shared/records/event';
import { bowlForm } from '../../../shared/records/forms/bowl';
import type { RawForm } from '../../../shared/records/readForm';
import type { Settings } from '../../../shared/records/settings';
import { writeForm } from '../../../shared/records/writeForm';
import { accept, type Result, refuse } from '../../../shared/result';
import { brand } from '../../../shared/units/brand';
import { toGrams } from '../../../shared/units/mass';
import { readNumber } from '../../../shared/units/numberField';
import { msPerMinute } from '../../../shared/units/time';

/** A scale that speaks in ounces shows hundredths of one. common practice, no source. */
const OUNCE_STEP = 0.01;

/**
 * What the scale says after one pour, from zero, and nothing finer than it shows. ASSUMED range: what one bowl may weigh.
 */
export const askPour = ({ units, scaleStepG }: Pick<Settings, 'units' | 'scaleStepG'>) =>
  ({
    kind: 'number',
    field: {
      quantity: 'mass',
      min: 0.1,
      max: ASSUMED_MAX_TOTAL_G,
      step: units.mass === 'oz' ? OUNCE_STEP : scaleStepG,
    },
  }) as const;

/** Under which name does the n-th pour of this thing stand in the draft? */
const namePour = (item: number, nth: number): string => `pour${item}-${nth}`;

/** The pours of one thing as they were tapped or typed, in their order. */
function listPours(raw: RawForm, item: number): readonly string[] {
  const texts: string[] = [];
  for (let nth = 0; ; nth += 1) {
    const text = raw[namePour(item, nth)];
    if (typeof text !== 'string' || text === '') return texts;
    texts.push(text);
  }
}

/**
 * How far a bowl is weighed in: its pours, of which things they were, and when the first developer went in, with how many
 * entries her log had then.
 */
interface Poured extends RawForm {
  readonly of?: readonly string[];
  readonly developerAtMs?: number;
  readonly developerAfter?: number;
}

/** What goes in, by what it is: a shade by its name, a developer by its strength. */
export const nameThings = (
  { shades, bottlePercent }: Mixture,
  bottles: { readonly strongPercent: number; readonly weakPercent: number } | null,
): readonly string[] => [
  ...shades.map(({ shade }) => `shade ${shade}`),
  ...(bottles === null ? [bottlePercent] : [bottles.strongPercent, bottles.weakPercent]).map(
    (percent) => `bottle ${percent}`,
  ),
];

/** Is anything in the bowl already? */
export const hasPours = (raw: RawForm): boolean =>
  Object.entries(raw).some(
    ([name, text]) => name.startsWith('pour') && typeof text === 'string' && text !== '',
  );

/**
 * The pours by their things, after the bowl was changed: each stays with what it was of, wherever that stands now. Refused
 * where something is in that the bowl no longer asks for: it cannot be taken out, nor counted as something else.
 */
export function carryPours(raw: RawForm, things: readonly string[]): Result<RawForm, 'foreign'> {
  const { of = things, developerAtMs, developerAfter } = raw as Poured;
  const free = [...things.keys()];
  const moved: Record<string, string> = {};
  for (const [item, thing] of of.entries()) {
    const texts = listPours(raw, item);
    if (texts.length === 0) continue;
    const at = free.findIndex((each) => things[each] === thing);
    const [to] = at === -1 ? [] : free.splice(at, 1);
    if (to === undefined) return refuse('foreign');
    for (const [nth, text] of texts.entries()) moved[namePour(to, nth)] = text;
  }
  return accept({ ...moved, of: things, developerAtMs, developerAfter });
}

/** Is this pour, by its name, one of developer? */
export const isOfDeveloper = (name: string, shades: number): boolean =>
  Number(/^pour(\d+)-/.exec(name)?.[1] ?? -1) >= shades;

const findStepG = ({ units, scaleStepG }: Settings): number =>
  units.mass === 'oz' ? toGrams(brand(OUNCE_STEP)) : scaleStepG;

const sumOf = (texts: readonly string[], settings: Settings): number =>
  texts.reduce((sum, text) => {
    const read = readNumber(text, askPour(settings).field, settings.units);
    return sum + (read.ok ? read.value : 0);
  }, 0);

/** One pour to be asked: of which thing, the how manieth of it, and how much is still to go in, g. */
export interface AskedPour {
  readonly name: string;
  readonly item: number;
  readonly nth: number;
  readonly leftG: number;
}

/** How it stands at the scale, and what is asked next. */
export interface Pouring {
  readonly inG: readonly number[];
  readonly read: Result<WeighIn, WeighInRefusal>;
  readonly pours: readonly AskedPour[];
}

/** Would there be more colour in it than one bowl takes? */
const isTooMuchColour = ({ leftG }: WeighIn, { shades }: Mixture, inG: readonly number[]): boolean =>
  shades.reduce((sum, _, item) => sum + (inG[item] ?? 0) + (leftG[item] ?? 0), 0) >
  bowlForm.colourG.field.max;

/** How much of each is in, and what else goes in? Never more colour than a bowl takes, nor more than it holds. */
export function computePouring(
  mixture: Mixture,
  bottles: Bottles,
  raw: RawForm,
  settings: Settings,
): Pouring {
  const items = listToWeigh(mixture, bottles);
  const texts = items.map((_, item) => listPours(raw, item));
  const inG = texts.map((each) => sumOf(each, settings));
  const said = weighIn(items, inG, { stepG: findStepG(settings), mostG: ASSUMED_MAX_TOTAL_G });
  const read = said.ok && isTooMuchColour(said.value, mixture, inG) ? refuse('tooMuch' as const) : said;
  const pours = items.flatMap((_, item) => {
    const leftG = read.ok ? (read.value.leftG[item] ?? 0) : 0;
    const count = (texts[item]?.length ?? 0) + (leftG > 0 ? 1 : 0);
    return Array.from({ length: count }, (__, nth) => ({ name: namePour(item, nth), item, nth, leftG }));
  });
  return { inG, read, pours };
}

/**
 * How long ago did the first developer go in, ms? A clock that was put back since then makes the bowl no younger: it went in
 * so much earlier by today's clock.
 */
function findMixedAgoMs(
  raw: RawForm,
  { log, nowMs }: { readonly log: readonly ConsultationEvent[]; readonly nowMs: number },
): number {
  const { developerAtMs = nowMs, developerAfter = log.length } = raw as Poured;
  const shiftMs = log
    .slice(developerAfter)
    .reduce((sum, event) => sum + (event.type === 'CLOCK_CORRECTED' ? event.payload.shiftMs : 0), 0);
  return Math.max(0, nowMs - developerAtMs - shiftMs);
}

/**
 * What is sent of a bowl that was weighed item by item: its colour is what went in of it, and it was mixed when the first
 * developer went in.
 */
export function writeWeighed(
  inG: readonly number[],
  shades: number,
  raw: RawForm,
  { units }: Settings,
  now: { readonly log: readonly ConsultationEvent[]; readonly nowMs: number },
): RawForm {
  const colourG = inG.slice(0, shades).reduce((sum, grams) => sum + grams, 0);
  const weighed = inG.map((amountG) => ({ amountG }));
  const mixedMinAgo = findMixedAgoMs(raw, now) / msPerMinute;
  const form = { colourG: bowlForm.colourG, weighed: bowlForm.weighed, mixedMinAgo: bowlForm.mixedMinAgo };
  return writeForm(form, { colourG, weighed, mixedMinAgo }, units);
}

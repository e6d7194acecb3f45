import type { SnipReason } from '../../../shared/hair/whereToSnip';
import type { HeatFigure } from '../../../shared/heat/marks';
import type { HairThresholdId } from '../../../shared/heat/thresholds';
import type { MarkKind } from '../marks';
import { sayCount } from './sayCount';

/** Figures inside the sentences below, written in the station's units. */
export interface HowFigures {
  readonly gapGliding: string;
  readonly gapHeld: string;
  readonly at: string;
  readonly halfLife: string;
  readonly water: string;
  readonly dampness: string;
  readonly perBleach: string;
  readonly measuredFrom: string;
  readonly measuredTo: string;
  readonly measuredMinutes: string;
  readonly measuredSeconds: string;
}

const how: Readonly<Record<HeatFigure, (figures: HowFigures) => string>> = {
  ageWeeks: () => 'Distance from the scalp ÷ growth. The slower it grows, the older it is.',
  ironMin: () =>
    'Seconds a section ÷ 60 × days a week × the weeks in which this hair was there. All tools together.',
  boilEquivalents: () =>
    'Wet iron minutes ÷ 30. A picture to talk by, not a measurement. Damp minutes are not in it.',
  contactMin: () =>
    'Iron minutes × width of the plate ÷ the length of today, where the plate glides. A tool that stays: its whole hold.',
  hairTemperature: ({ gapGliding, gapHeld }) =>
    `The setting less ${gapGliding} where a plate glides, less ${gapHeld} where a tool stays. Wet hair stays near the boil while it is wet; that is left out here.`,
  helixLeft: ({ at, halfLife, water, dampness, perBleach, measuredSeconds }) =>
    `Half of it goes in ${halfLife} of contact at ${at}, faster when hotter, ${water} times as fast on wet hair, ${dampness} on damp. Each bleach leaves ${perBleach}. Measured at ${at}, up to ${measuredSeconds}.`,
  matrixLeft: ({ at }) =>
    `How far heat alone leaves what holds the helix from its limit: half the way in about 5 min of contact at ${at}, in about 1 min once bleached. What bleach itself takes, and water, are not in it.`,
  tryptophanLeft: ({ measuredFrom, measuredTo, measuredMinutes }) =>
    `By heat and minutes of contact; water makes no difference. Measured on light-brown and on white or bleached hair from ${measuredFrom} to ${measuredTo}, up to ${measuredMinutes}.`,
  bleaches: ({ perBleach }) => `Each bleach that met this hair leaves ${perBleach} of the helix.`,
  boilingPoint: () => 'Height above the sea, the air’s pressure there, and where water boils under it.',
  whereToSnip: () => 'In each zone the colour goes to: where least is left by the careful end of the band.',
};

/** For what a setting is hot enough, after "hot enough for". */
const reached: Readonly<Record<HairThresholdId, string>> = {
  waterBoils: 'boiling water',
  poresBegin: 'tiny holes',
  helixMeltsInWater: 'melting in water',
  poresRiseFast: 'many tiny holes',
  cortexSoftens: 'softening',
  meltsOnSlowPasses: 'melting on slow passes',
  hairBurns: 'burning',
  helixMeltsDry: 'melting when dry',
};

const why: Readonly<Record<SnipReason, string>> = {
  ironedWet: 'ironed wet',
  mayBeIronedWet: 'may be ironed wet',
  ironed: 'ironed most',
  bleached: 'bleached',
  mayBeBleached: 'may be bleached',
  mostBleach: 'most bleach lies there',
  overlap: 'colour runs over onto older hair',
  oldest: 'the oldest hair of it',
  finest: 'the finest hair',
};

const kinds: Readonly<Record<MarkKind, string>> = {
  published: 'Published',
  practice: 'Common practice, no source',
  memory: 'Second hand',
  assumed: 'Assumed by us',
  exact: 'Exact',
};

const shortKinds: Readonly<Record<MarkKind, string>> = {
  published: 'published',
  practice: 'common practice',
  memory: 'common practice',
  assumed: 'assumed',
  exact: 'exact',
};

/** What heat and bleach have done along the strand, as a picture and in figures. */
export const hair = {
  title: 'Heat along the strand',
  about: (figure: string) => `about ${figure}`,
  ironMinutes: 'iron minutes at the tip',
  boils: '× 30 min in boiling water',
  band: (range: string) => `(${range})`,
  likely: (likely: string, range: string) => `about ${likely} (${range})`,
  fromTo: (from: string, to: string) => `${from} to ${to}`,
  onlyBand: (range: string) => `beyond what was measured: ${range}`,
  nothingTold: 'No hot tool and no bleach told. The strand still decides.',
  counts: 'iron minutes',
  scalp: 'scalp',
  landmarks: {
    ear: 'ear',
    chin: 'chin',
    collarbone: 'collarbone',
    braLine: 'bra line',
    waist: 'waist',
  },
  reach: { fullHead: 'colour: all of it', roots: 'colour: roots', endsOut: 'colour: not the ends' },
  times: (times: string) => `${times}×`,
  bleached: (times: string) => `bleached ${times}×`,
  mayBeBleached: (times: string) => `perhaps bleached ${times}×`,
  hotEnough: (what: string, kind: string) => `hot enough for ${what} (${kind})`,
  mayBeHotEnough: (what: string, kind: string) => `perhaps for ${what} (${kind})`,
  ofKind: (what: string, kind: string) => `${what} (${kind})`,
  reached,
  kinds,
  /** Beside a name on the map there is room for no more. */
  shortKinds,
  said: {
    line: (tip: string, minutes: string) =>
      `From the scalp to the tip at ${tip}: iron minutes up to ${minutes}`,
    snip: (number: string, where: string) => `Snip ${number}: ${where}`,
    bleached: (times: string, from: string, to: string) => `${times} from ${from} to ${to}`,
  },
  snip: (place: string, at: string, reasons: readonly string[]) =>
    `${place}, ${at} down the strand: ${reasons.join(', ')}`,
  /** A place around the head inside a sentence. */
  places: {
    hairline: 'the hairline',
    fringe: 'the fringe',
    crown: 'the crown',
    whereIroned: 'where she irons',
    oldBleach: 'the old bleach band',
    nape: 'the nape',
  },
  snipHint: (place: string, at: string) =>
    `By the map: ${place}, ${at} down the strand. Not the nape unless it is worse.`,
  why,
  figures: {
    ageWeeks: 'Age of the hair at the tip',
    ironMin: 'Iron minutes at the tip',
    boilEquivalents: 'Times 30 min in boiling water',
    contactMin: 'Contact minutes at the tip',
    hairTemperature: 'Temperature of the hair',
    helixLeft: 'Helix left at the tip',
    matrixLeft: 'Matrix: left by heat alone',
    tryptophanLeft: 'Tryptophan left at the tip',
    bleaches: 'Times of bleach at the tip',
    boilingPoint: 'Water boils here at',
    whereToSnip: 'Where to snip',
  } satisfies Readonly<Record<HeatFigure, string>>,
  how,
  from: 'From',
  howSaid: 'How',
  measuredOnHer: 'Measured on her',
  sentence: (parts: readonly string[]) => parts.map((part) => `${part}.`).join(' '),
  list: (parts: readonly string[]) => parts.join('; '),
  source: (kind: string, source: string) => (source === '' ? kind : `${kind}: ${source}`),
  inputs: {
    length: (length: string) => `length ${length}`,
    growth: (growth: string) => `growth ${growth} a month`,
    tool: (tool: string, parts: readonly string[]) => `${tool}: ${parts.join(', ')}`,
    seconds: (seconds: string) => `${seconds} a section`,
    usualSeconds: (seconds: string) => `${seconds} a section, as is usual`,
    days: (days: string) => `${sayCount(days, 'day')} a week`,
    months: (months: string) => `for ${sayCount(months, 'month')}`,
    stopped: (months: string) => `stopped ${sayCount(months, 'month')} ago`,
    setting: (setting: string) => `set to ${setting}`,
    notKnown: {
      seconds: 'seconds a section not known: taken wide',
      days: 'days a week not known: taken wide',
      months: 'for how long not known: taken wide',
      stopped: 'when she stopped not known: taken wide',
      setting: 'setting not known: taken wide',
    },
    plate: (width: string) => `plate ${width}`,
    ironMinutes: (minutes: string) => `iron ${minutes}`,
    wetMinutes: (minutes: string) => `wet ${minutes}`,
    contact: (minutes: string) => `contact ${minutes}`,
    hair: (temperature: string) => `hair at ${temperature}`,
    bleaches: (count: string) => `bleached ${count} times`,
    noBleach: 'no bleach told',
    wetness: { wet: 'wet', damp: 'damp', dry: 'dry', unknown: 'wet or dry not known' },
    altitude: (height: string) => `${height} above the sea`,
  },
  plateIsHotter: 'By the setting. A plate is hotter than the hair under it.',
  months: (count: string) => sayCount(count, 'month'),
  beyond:
    'Beyond what was measured a band says little: carried on so far, hair that is used every day would read as gone, and it plainly is not. The strand decides.',
  notReckoned:
    'Relaxer, perm and colour are in none of these figures: nothing published says how much they take.',
  thresholdsTitle: 'Set hot enough for',
  settingNotKnown: 'Perhaps: the setting is not known.',
};

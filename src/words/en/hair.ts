import type { SnipReason } from '../../../shared/hair/whereToSnip';
import type { HeatFigure } from '../../../shared/heat/marks';
import type { HairThresholdId } from '../hairThreshold';
import type { MarkKind } from '../marks';

/** Figures inside the sentences below, written in the station's units. */
export interface HowFigures {
  readonly gapGliding: string;
  readonly gapHeld: string;
  readonly at: string;
  readonly halfLife: string;
  readonly water: string;
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
    'Iron minutes × width of the plate ÷ length ironed, where the plate glides. A tool that stays: its whole hold.',
  hairTemperature: ({ gapGliding, gapHeld }) =>
    `The setting less ${gapGliding} where a plate glides, less ${gapHeld} where a tool stays.`,
  helixLeft: ({ at, halfLife, water, perBleach, measuredSeconds }) =>
    `Half of it goes in ${halfLife} of contact at ${at}, faster when hotter, ${water} times as fast with water in the hair. Each bleach leaves ${perBleach}. Measured at ${at}, up to ${measuredSeconds}.`,
  matrixLeft: ({ at }) =>
    `How far what holds the helix is from its limit: half the way in about 5 min of contact at ${at}, in about 1 min once bleached.`,
  tryptophanLeft: ({ measuredFrom, measuredTo, measuredMinutes }) =>
    `By the temperature of the hair and the minutes of contact; water makes no difference. Measured from ${measuredFrom} to ${measuredTo}, up to ${measuredMinutes}.`,
  bleaches: ({ perBleach }) => `Each bleach that met this hair leaves ${perBleach} of the helix.`,
  boilingPoint: () => 'Height above the sea, the air’s pressure there, and where water boils under it.',
  whereToSnip: () => 'In each zone the colour goes to: where least is left by the careful end of the band.',
};

const reached: Readonly<Record<HairThresholdId, string>> = {
  waterBoils: 'water boils in it',
  poresBegin: 'tiny holes begin',
  helixMeltsInWater: 'wet hair gives way inside',
  poresRiseFast: 'tiny holes grow fast',
  cortexSoftens: 'the core softens',
  meltsOnSlowPasses: 'slow passes melt it',
  hairBurns: 'hair burns',
  helixMeltsDry: 'dry hair gives way inside',
};

const why: Readonly<Record<SnipReason, string>> = {
  ironedWet: 'ironed wet',
  ironed: 'ironed most',
  bleached: 'bleached',
  band: 'most bleach lies there',
  overlap: 'colour runs over onto older hair',
  oldest: 'the oldest hair of it',
  finest: 'the finest hair',
};

const kinds: Readonly<Record<MarkKind, string>> = {
  published: 'Published',
  practice: 'Common practice, no source',
  memory: 'From memory',
  assumed: 'Assumed by us',
  exact: 'Exact',
};

const shortKinds: Readonly<Record<MarkKind, string>> = {
  published: 'published',
  practice: 'common practice',
  memory: 'from memory',
  assumed: 'assumed',
  exact: 'exact',
};

/** What heat and bleach have done along the strand, as a picture and in figures. */
export const hair = {
  title: 'Heat along the strand',
  about: (figure: string) => `about ${figure}`,
  ironMinutes: 'iron minutes at the tip',
  boils: 'half hours in boiling water',
  band: (range: string) => `(${range})`,
  likely: (likely: string, range: string) => `about ${likely} (${range})`,
  onlyBand: (range: string) => `${range}, beyond what was measured`,
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
  bleached: (times: string) => `bleached ${times}×`,
  reached,
  ofKind: (what: string, kind: string) => `${what} (${kind})`,
  kinds,
  /** Beside a name on the map there is room for no more. */
  shortKinds,
  said: {
    line: (tip: string, minutes: string) =>
      `From the scalp to the tip at ${tip}: iron minutes up to ${minutes}.`,
    snip: (number: string, where: string) => `Snip ${number}: ${where}.`,
  },
  snip: (place: string, at: string, reasons: readonly string[]) =>
    `${place}, ${at} from the scalp: ${reasons.join(', ')}`,
  snipHint: (place: string, at: string) =>
    `By the map: ${place.toLowerCase()}, ${at} from the scalp, not the nape.`,
  why,
  figures: {
    ageWeeks: 'Age of the hair at the tip',
    ironMin: 'Iron minutes at the tip',
    boilEquivalents: 'Half hours in boiling water',
    contactMin: 'Contact minutes at the tip',
    hairTemperature: 'Temperature of the hair',
    helixLeft: 'Helix left at the tip',
    matrixLeft: 'Matrix, before its limit',
    tryptophanLeft: 'Tryptophan left at the tip',
    bleaches: 'Times of bleach at the tip',
    boilingPoint: 'Water boils here at',
    whereToSnip: 'Where to snip',
  } satisfies Readonly<Record<HeatFigure, string>>,
  how,
  from: 'From',
  howSaid: 'How',
  source: (kind: string, source: string) => (source === '' ? kind : `${kind}: ${source}`),
  inputs: {
    length: (length: string) => `length ${length}`,
    growth: (growth: string) => `growth ${growth} a month`,
    tool: (tool: string, parts: readonly string[]) => `${tool}: ${parts.join(', ')}`,
    seconds: (seconds: string) => `${seconds} a section`,
    days: (days: string) => `${days} days a week`,
    months: (months: string) => `for ${months} months`,
    stopped: (months: string) => `stopped ${months} months ago`,
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
    altitude: (height: string) => `${height} above the sea`,
  },
  plateIsHotter: 'By the setting. A plate is hotter than the hair under it.',
  months: (count: string) => `${count} months`,
  notReckoned:
    'Relaxer, perm and colour are in none of these figures: nothing published says how much they take.',
  thresholdsTitle: 'Heat that was reached',
};

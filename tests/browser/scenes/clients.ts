import type { Consultation } from '../../../machines/consultation/consultation';
import { endsIronedWet } from '../../../seeds/endsIronedWet';
import { salon } from '../../../seeds/salon';
import type { StoryStep } from '../../../seeds/story';
import type { RawEvent } from '../../../shared/records/classify';
import type { RawForm } from '../../../shared/records/readForm';
import type { Settings } from '../../../shared/records/settings';
import { lengthOf, playAlone } from '../makeLog';

export const minuteMs = 60_000;
export const hourMs = 60 * minuteMs;
export const dayMs = 24 * hourMs;

/** What the clock of every scene stands at: a Thursday afternoon. */
export const nowMs = Date.UTC(2026, 10, 12, 17, 30);

/** The longest names that a salon can give: 20 letters a person, 40 a product; more chairs than places. */
export const longLine = 'Sandbar harbour wall lightening powder N';
export const longSpray = 'Cove mist for the days after the harbour';
/** Everything that a list can tell, one slip of the finger and two names nobody knows. */
export const longList = [
  'AQUA (WATER), CYCLOPENTASILOXANE, DIMETHICON, CYCLOHEXASILOXANE, CYCLOTETRASILOXANE, ALCOHOL DENAT.,',
  'ISOPROPYL ALCOHOL, ISOBUTANE, SUCROSE, GLUCOSE, FRUCTOSE, MEL, HYDROLYZED WHEAT PROTEIN, POLYQUATERNIUM-11,',
  'PVP/DMAPA ACRYLATES COPOLYMER, QUATERNIUM-70, CAPRYLYL METHICONE, GLYOXYLIC ACID, DMDM HYDANTOIN, FORMALIN,',
  'ARGANIA SPINOSA KERNEL OIL, PARFUM, LINALOOL, HARBOURIUM COVEATE, SANDBAR EXTRACT',
].join('\n');
export const longName = 'Wilhelmina Mommsenmm';
export const fullSalon: Settings = {
  ...salon,
  contact: 'the salon, 555 0142 or 555 0143 evenings',
  chairs: 12,
  staff: [...salon.staff, longName, 'Maximilian Wommelmow', 'Wren-Marie Mummenwam'],
  shelf: [
    ...salon.shelf,
    { name: longLine, kind: 'lightener' },
    { name: 'Sandbar harbour wall permanent cream M W', kind: 'colour' },
    {
      name: longSpray,
      kind: 'spray',
      ingredients: longList,
      makerSaysUpToC: 180,
      trial: { atMs: nowMs - 40 * dayMs, bareS: 12, sprayedS: null },
    },
  ],
};

/** One tap of Opal's, a second after the one before it where nothing else is said. */
export const tap = (raw: RawEvent, afterMs = 1_000): StoryStep => ({ afterMs, by: 'Opal', raw });
export const say = (step: 'client' | 'hotTools' | 'feelHair' | 'heatSpray', answers: RawForm): StoryStep =>
  tap({ type: 'ANSWERED', step, answers });
export const event = (type: Exclude<RawEvent['type'], 'ANSWERED'>, answers: RawForm = {}, afterMs = 1_000) =>
  tap({ type, answers }, afterMs);

/** Three tools, of one of which nobody knows the setting, and all that can have been on hair. */
export const manyTools = say('hotTools', {
  habits: [
    { tool: 'flatIron', wetness: 'wet', daysAWeek: '3', forMonths: '24', settingC: '400' },
    { tool: 'curlingIron', wetness: 'damp', daysAWeek: '0.5', forMonths: '120', settingC: 'unknown' },
    { tool: 'dryer', wetness: 'damp', daysAWeek: '7', forMonths: '360', settingC: '250' },
  ],
  smoke: 'smellsBurnt',
  history: ['unknownBoxColour', 'compoundHenna', 'relaxer', 'lightener', 'poolWater'],
  bleaches: '3',
  relaxedWithinTwoWeeks: 'yes',
});

/** The same without what would hold her before a bowl. */
const manyToolsAllowed = {
  ...manyTools.raw.answers,
  history: ['lightener', 'poolWater'],
  bleachReach: 'ends',
  relaxedWithinTwoWeeks: undefined,
};

export const { steps } = endsIronedWet;

/** The story of the ends ironed wet up to and with its first tap of this type, of this zone. */
export function until(type: RawEvent['type'], zone?: string): readonly StoryStep[] {
  const last = steps.findIndex(
    ({ raw }) => raw.type === type && (zone === undefined || raw.answers?.zone === zone),
  );
  if (last === -1) throw new Error(`The story has no ${type}`);
  return steps.slice(0, last + 1);
}

/** The story until this step is confirmed. */
export function untilConfirmed(step: string): readonly StoryStep[] {
  const last = steps.findIndex(({ raw }) => raw.type === 'STEP_CONFIRMED' && raw.answers?.step === step);
  if (last === -1) throw new Error(`The story does not confirm ${step}`);
  return steps.slice(0, last + 1);
}

/** Looks at a strand that was begun just now: after two minutes, then every three, the levels in turn. */
export const looks = (zone: string, ...levels: readonly string[]): readonly StoryStep[] =>
  levels.map((level, index) =>
    event('LOOKED', { of: 'strand', zone, level, feel: 'sound' }, (index === 0 ? 2 : 3) * minuteMs),
  );

const off = (zone: string, afterMs = 1_000) => event('STRAND_TAKEN_OFF', { zone, why: 'timeIsUp' }, afterMs);
const { raw: outcomeTold } = steps.findLast(({ raw }) => raw.type === 'OUTCOME_RECORDED') ?? {};
export const outcome = (zone: string, answers: RawForm = {}) =>
  event('OUTCOME_RECORDED', {
    ...outcomeTold?.answers,
    zone,
    fibre: 'sound',
    stretch: 'springsBack',
    level: '7',
    ...answers,
  });
const { raw: bowlTold } = steps.find(({ raw }) => raw.type === 'BOWL_WEIGHED') ?? {};
const bowl = (zone: string) => event('BOWL_WEIGHED', { ...bowlTold?.answers, zone, minutes: '15' });

/** The same client, had both strands come out sound. */
export const bothSound: readonly StoryStep[] = [
  ...until('STRAND_STARTED', 'lengths'),
  off('ends', 25 * minuteMs),
  off('lengths'),
  outcome('ends'),
  outcome('lengths'),
];
/** Both came off before their time, and half a level below what she wants. */
export const bothOffEarly: readonly StoryStep[] = [
  ...until('STRAND_STARTED', 'lengths'),
  event('STRAND_TAKEN_OFF', { zone: 'ends', why: 'clientLeaves' }, minuteMs),
  event('STRAND_TAKEN_OFF', { zone: 'lengths', why: 'levelReached' }, 11 * minuteMs),
];
export const bothShort: readonly StoryStep[] = [
  ...bothOffEarly,
  outcome('ends', { level: '6.5' }),
  outcome('lengths', { level: '6.5' }),
];
export const bothDecided = [...bothSound, event('DECIDED', { decision: 'smallerLift' })];
/** The same after strands under dry heat, which is not for the scalp. */
export const warmDecided = bothDecided.map(({ raw, ...step }): StoryStep => {
  const isStarted = raw.type === 'STRAND_STARTED';
  return { ...step, raw: isStarted ? { ...raw, answers: { ...raw.answers, heat: 'dryHeat' } } : raw };
});
export const lengthsOn = [
  ...bothDecided,
  bowl('lengths'),
  event('BOWL_APPLIED', { zone: 'lengths', skinFirst: 'calm' }),
];
/** The lengths on, the bowl of the ends weighed and waiting. */
export const endsWaiting = [...lengthsOn, bowl('ends')];
export const bothOn = [...endsWaiting, event('BOWL_APPLIED', { zone: 'ends', skinFirst: 'calm' })];

/** The worst place of hair that was bleached is where that was: the strand of the ends comes from there. */
function fromOldBleach(step: StoryStep): StoryStep {
  const { raw } = step;
  if (raw.type !== 'STRAND_STARTED' || raw.answers?.zone !== 'ends') return step;
  return { ...step, raw: { ...raw, answers: { ...raw.answers, place: 'oldBleach' } } };
}

/** Both rinsed, of hair on which all was done that is told of any. */
export const longestAtHome: readonly StoryStep[] = [
  ...bothOn.map(
    (step): StoryStep =>
      step.raw.type === 'ANSWERED' && step.raw.step === 'hotTools'
        ? say('hotTools', manyToolsAllowed)
        : fromOldBleach(step),
  ),
  event('BOWL_RINSED', { zone: 'lengths' }, 15 * minuteMs),
  event('BOWL_RINSED', { zone: 'ends' }),
  event('FINISHED'),
];

/** The same story of hair with every sign that makes it suspect. */
export const withManySigns = (told: readonly StoryStep[]): readonly StoryStep[] =>
  told.map((step): StoryStep => {
    if (step.raw.type !== 'ANSWERED') return fromOldBleach(step);
    if (step.raw.step === 'hotTools') return say('hotTools', { ...manyToolsAllowed, ...hottest });
    return step.raw.step === 'feelHair' ? say('feelHair', allSigns) : step;
  });
const hottest = {
  habits: [
    { tool: 'flatIron', wetness: 'wet', daysAWeek: '3', forMonths: '24', settingC: '450' },
    { tool: 'curlingIron', wetness: 'damp', daysAWeek: '0.5', forMonths: '120', settingC: 'unknown' },
  ],
};
const allSigns = {
  ...{ nape: 'dry', mid: 'dry', ends: 'dry', porosity: 'high' },
  ...{ curl: 'lostAtEnds', breakage: 'much', wetStretch: 'staysLong' },
};

const feel = (stretch: string) => event('STRETCH_NOTED', { zone: 'lengths', stretch, before: 'stands' });
const toner = event('TONER_WEIGHED', {
  ...{ zone: 'lengths', line: 'Sandbar cream', developerPercent: '1.5', ratio: '2', minutes: '10' },
  ...{ colourG: '30', shades: [{ shade: 'Toner', parts: '1' }] },
});
/** Both rinsed, and what came of the lengths then: felt, toned, the toner on. */
export const bothRinsed = [
  ...bothOn,
  event('BOWL_RINSED', { zone: 'lengths' }, 12 * minuteMs),
  event('BOWL_RINSED', { zone: 'ends' }, minuteMs),
];
export const feltWeak = [...bothRinsed, feel('staysLong')];
export const feltStrong = [...bothRinsed, feel('springsBack')];
export const tonerWeighed = [...feltStrong, toner];
export const tonerOn = [...tonerWeighed, event('BOWL_APPLIED', { zone: 'lengths', skinFirst: 'calm' })];

/** Who sits where, told how far, her last tap so long ago. */
export interface Seated {
  readonly chair: number;
  readonly ticket: string;
  readonly steps: readonly StoryStep[];
  readonly agoMs?: number;
  readonly settings?: Settings;
}

/** The mix of the story by its longest name. */
function lengthen(answers: RawForm, settings: Settings): RawForm {
  if (settings !== fullSalon) return answers;
  return {
    ...answers,
    ...(answers.line === undefined ? {} : { line: longLine }),
  };
}

/** Her consultation, through judge and chart, as the station would have left it. */
export function seat({ chair, ticket, steps, agoMs = 1_000, settings = salon }: Seated): Consultation {
  const startAtMs = nowMs - agoMs - lengthOf(steps);
  const shiftMs = startAtMs - endsIronedWet.startAtMs;
  const told = steps.map(({ afterMs, by, raw }): StoryStep => {
    const answers = lengthen(raw.answers ?? {}, settings);
    const at = answers.putOnAtMs;
    const moved = typeof at === 'number' ? { ...answers, putOnAtMs: at + shiftMs } : answers;
    const seated = raw.type === 'OPENED' ? { ...moved, ticket, chair: String(chair) } : moved;
    return { afterMs, by, raw: { ...raw, ...(raw.answers && { answers: seated }) } as RawEvent };
  });
  return playAlone(told, startAtMs, settings, `client${String(chair).padStart(4, '0')}`);
}

/** All that leads to the end of a step, which is answered and not gone on from yet. */
export function untilAnswered(step: string) {
  const told = untilConfirmed(step);
  return told.slice(0, -1);
}

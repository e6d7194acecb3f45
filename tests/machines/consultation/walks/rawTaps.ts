import { salon } from '../../../../seeds/salon';
import type { RawEvent } from '../../../../shared/records/classify';
import { askForms } from '../../../../shared/records/forms/asked';
import type { RawForm } from '../../../../shared/records/readForm';
import type { ConsultationRecord } from '../../../../shared/records/record';
import type { Settings } from '../../../../shared/records/settings';
import type { AskStep } from '../../../../shared/records/steps';
import { writeForm } from '../../../../shared/records/writeForm';
import type { Zone } from '../../../../shared/records/zones';
import { last } from '../../../shared/records/returning';

export const minuteMs = 60_000;
export const hourMs = 60 * minuteMs;
export const dayMs = 24 * hourMs;
export const startAtMs = Date.UTC(2026, 2, 3, 9, 0);

const { profile } = salon;
/** The station's settings by id: as in the salon, a shorter wait, and no age line with fewer skin tests, each its own. */
export const settingsById: readonly Settings[] = [
  { ...salon, carried: true },
  { ...salon, carried: true, profile: { ...profile, skinTestWaitH: 24, skinTestLapsesDays: 14 } },
  { ...salon, profile: { ...profile, ageLine: null, skinTestFor: ['lighten', 'liftAndDeposit'] } },
];

/** The settings that were in force; of an edition that never was, the newest before it. */
export const findSettings = (settingsId: number): Settings =>
  settingsById[Math.min(settingsId, settingsById.length - 1)] ?? salon;

type Untimed = Exclude<RawEvent['type'], 'ANSWERED'>;
export const tap = (type: Untimed, answers: RawForm = {}): RawEvent => ({ type, answers });
export const say = (step: AskStep, answers: RawForm): RawEvent => ({ type: 'ANSWERED', step, answers });

/** What she wants, and what her hair has been through; `change` names what is said otherwise. */
export const cleanAnswers: { readonly [S in AskStep]: RawForm } = {
  client: {
    service: 'lighten',
    reach: 'fullHead',
    targetLevel: '7',
    naturalLevel: '5',
    endsLevel: '5',
    length: 'braLine',
    reactions: ['none'],
    scalp: 'sound',
    ageBand: 'over',
  },
  hotTools: {
    habits: [{ tool: 'flatIron', wetness: 'dry', daysAWeek: '3', forMonths: '24', settingC: '350' }],
    smoke: 'no',
    history: ['none'],
  },
  feelHair: {
    nape: 'dry',
    mid: 'dry',
    ends: 'dry',
    porosity: 'normal',
    curl: 'sameAlong',
    breakage: 'no',
    wetStretch: 'springsBack',
  },
  heatSpray: { finish: 'noHotTool' },
};

/** The same of a client who is back for the gloss of last time. */
const { answers: then } = last;
const { units } = salon;
const glossAnswers: typeof cleanAnswers = {
  client: writeForm(askForms.client, then.client ?? {}, units),
  hotTools: {
    ...writeForm(askForms.hotTools, then.hotTools ?? {}, units),
    history: ['salonColour', 'gloss'],
  },
  feelHair: writeForm(askForms.feelHair, then.feelHair ?? {}, units),
  heatSpray: cleanAnswers.heatSpray,
};

/** What this client says when nothing is otherwise. */
export const findAnswers = ({ lastTime }: Pick<ConsultationRecord, 'lastTime'>): typeof cleanAnswers =>
  lastTime === null ? cleanAnswers : glossAnswers;

/** Answers that bear on the plan, that a person has to judge, that ask for a test, or that leave a part unsaid. */
export const otherAnswers: readonly (readonly [AskStep, RawForm])[] = [
  ['client', { targetLevel: '8' }],
  ['client', { reach: 'endsOut' }],
  ['client', { service: 'depositOnly', targetLevel: '5' }],
  ['client', { reactions: ['tingled'] }],
  ['client', { scalp: 'tight' }],
  ['hotTools', { history: ['unknownBoxColour'] }],
  ['hotTools', { history: ['salonColour', 'relaxer'], relaxedWithinTwoWeeks: 'no' }],
  ['hotTools', { history: ['perm', 'relaxer'], relaxedWithinTwoWeeks: 'no' }],
  ['hotTools', { history: ['lightener'], bleaches: '1' }],
  ['hotTools', { history: ['keratin'], relaxedWithinTwoWeeks: 'unknown' }],
  ['feelHair', { ends: 'damp' }],
  ['feelHair', { wetStretch: 'snaps' }],
  ['heatSpray', { finish: 'styled', spray: 'Cove mist', tool: 'flatIron', settingC: '350' }],
];

/** Answers to which there is no override. */
export const absoluteAnswers: readonly RawForm[] = [
  { reactions: ['swelling'] },
  { reactions: ['tingled', 'hives'] },
  { reactions: ['blackTattoo'] },
  { reactions: ['tingledStops'] },
  { scalp: 'broken' },
  { scalp: 'irritated' },
  { ageBand: 'under' },
];

export const noteSkinTest = (atMs: number, putOnMsAgo: number, seen: string): RawEvent =>
  tap('SKIN_TEST_NOTED', { putOnAtMs: atMs - putOnMsAgo, seen });

/** Strengths that may be tried one after the other, in per cent. */
export const strengths = ['9', '6', '3'] as const;
export const powder = 'Sandbar powder';
export const cream = 'Sandbar cream';
const mixOf = (developerPercent: string, minutes: string): RawForm => ({
  line: powder,
  batch: 'B-17',
  developerPercent,
  ratio: '2',
  heat: 'foil',
  minutes,
});

export const startStrand = (
  zone: Zone,
  developerPercent: string,
  minutes = '25',
  change: RawForm = {},
): RawEvent =>
  tap('STRAND_STARTED', {
    zone,
    place: 'crown',
    hairs: '30',
    ...mixOf(developerPercent, minutes),
    makersLimitMin: '45',
    buildUp: 'washedOff',
    lookEveryMin: '3',
    ...change,
  });

export const recordOutcome = (zone: Zone, fibre = 'sound', stretch = 'springsBack'): RawEvent =>
  tap('OUTCOME_RECORDED', { zone, fibre, stretch, level: '8', wentPast30: 'no', evenness: 'even' });

export const weighBowl = (
  zone: Zone,
  developerPercent: string,
  minutes: string,
  change: RawForm = {},
): RawEvent =>
  tap('BOWL_WEIGHED', {
    zone,
    shades: [{ shade: 'powder', parts: '1' }],
    colourG: '40',
    ...mixOf(developerPercent, minutes),
    ...change,
  });

const why = { code: 'wrongTap', words: 'the other client said that' };
export const correct = (answer: string): RawEvent => tap('CORRECTED', { answer, ...why });
export const retract = (zone: Zone): RawEvent => tap('OUTCOME_RETRACTED', { zone, ...why });
export const override = (rule: string): RawEvent =>
  tap('OVERRIDDEN', { rule, code: 'seniorAgreed', words: 'felt it myself' });

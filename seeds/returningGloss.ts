import type { RawEvent } from '../shared/records/classify';
import type { Settings } from '../shared/records/settings';
import { salon } from './salon';
import type { Story, StoryStep } from './story';

const minute = 60_000;
const week = 7 * 24 * 60 * minute;

const juno = (afterMs: number, raw: RawEvent): StoryStep => ({ afterMs, by: 'Juno', raw });

/** The owner has turned carried outcomes on; this gloss needs no skin test here. Invented like the salon itself. */
const glossSalon: Settings = {
  ...salon,
  carried: true,
  profile: { ...salon.profile, skinTestFor: ['lighten', 'liftAndDeposit', 'depositOnly', 'tone'] },
};

const ticket = 'L.M.';
const zone = 'lengths';
const mix = {
  line: 'Sandbar cream',
  batch: 'C-4',
  developerPercent: '1.5',
  ratio: '2',
  heat: 'none',
  minutes: '20',
};
const bowl = { zone, shades: [{ shade: '6.3', parts: '1' }], colourG: '40', ...mix };

const client = {
  service: 'gloss',
  reach: 'endsOut',
  targetLevel: '6',
  naturalLevel: '6',
  endsLevel: '6.5',
  length: 'collarbone',
  reactions: ['none'],
  scalp: 'sound',
  ageBand: 'over',
} as const;

const hotTools = {
  habits: [{ tool: 'flatIron', wetness: 'dry', daysAWeek: '2', forMonths: '12', settingC: '350' }],
  smoke: 'no',
} as const;

const feelHair = {
  nape: 'dry',
  mid: 'dry',
  ends: 'dry',
  porosity: 'normal',
  curl: 'straight',
  breakage: 'no',
  wetStretch: 'springsBack',
} as const;

const answer = (step: 'client' | 'hotTools' | 'feelHair' | 'heatSpray', answers: RawEvent['answers'] = {}) =>
  [
    { type: 'ANSWERED', step, answers },
    { type: 'STEP_CONFIRMED', answers: { step } },
  ] as const;

const ask = (history: readonly string[]): readonly RawEvent[] => [
  ...answer('client', client),
  ...answer('hotTools', { ...hotTools, history }),
  ...answer('feelHair', feelHair),
  ...answer('heatSpray', { finish: 'noHotTool' }),
];

/** On the head and off again, with the plan for home. */
const toTheEnd: readonly StoryStep[] = [
  juno(2 * minute, { type: 'BOWL_WEIGHED', answers: bowl }),
  juno(2 * minute, { type: 'BOWL_APPLIED', answers: { zone, skinFirst: 'calm' } }),
  juno(6 * minute, { type: 'LOOKED', answers: { of: 'head', zone, stinging: 'no', hair: 'sound' } }),
  juno(14 * minute, { type: 'BOWL_RINSED', answers: { zone } }),
  juno(minute, { type: 'FINISHED' }),
  juno(5 * minute, {
    type: 'PLAN_GIVEN',
    answers: {
      settingC: '320',
      passes: '1',
      restH: '48',
      back: 'weeks6',
      skinNow: 'calm',
      toolsNow: 'offCooling',
      lateItching: 'saidItBack',
      cardNow: 'photographed',
    },
  }),
];

const firstVisitAtMs = Date.UTC(2026, 1, 3, 9, 0);

/** L.M. comes for a gloss for the first time: a short strand, for the product's own time. */
export const firstGloss: Story & { readonly startAtMs: number } = {
  title: 'A gloss for the first time',
  settings: glossSalon,
  startAtMs: firstVisitAtMs,
  steps: [
    juno(0, { type: 'OPENED', answers: { ticket, chair: '2' } }),
    ...ask(['salonColour']).map((raw) => juno(10_000, raw)),
    juno(2 * minute, {
      type: 'STRAND_STARTED',
      answers: {
        zone,
        place: 'crown',
        buildUp: 'none',
        hairs: '30',
        ...mix,
        makersLimitMin: '30',
        lookEveryMin: '5',
      },
    }),
    juno(2 * minute, {
      type: 'LOOKED',
      answers: { of: 'strand', zone, level: '6', undertone: 'asExpected', feel: 'sound' },
    }),
    juno(18 * minute, { type: 'STRAND_TAKEN_OFF', answers: { zone, why: 'timeIsUp' } }),
    juno(minute, {
      type: 'OUTCOME_RECORDED',
      answers: {
        zone,
        fibre: 'sound',
        stretch: 'springsBack',
        level: '6',
        wentPast30: 'no',
        evenness: 'even',
      },
    }),
    juno(20_000, { type: 'DECIDED', answers: { decision: 'asPlanned' } }),
    ...toTheEnd,
  ],
};

/**
 * Five weeks later she is back for the same gloss, and nothing is new but the gloss itself. Whoever plays it opens her
 * with the closed record of the first visit as `lastTimeId`.
 */
export const returningGloss: Story & { readonly startAtMs: number } = {
  title: 'The same gloss again, nothing new',
  settings: glossSalon,
  startAtMs: firstVisitAtMs + 5 * week,
  steps: [
    juno(0, { type: 'OPENED', answers: { ticket, chair: '2' } }),
    ...ask(['salonColour', 'gloss']).map((raw) => juno(1_000, raw)),
    juno(1_000, { type: 'OUTCOME_CARRIED' }),
    juno(10_000, { type: 'DECIDED', answers: { decision: 'asPlanned' } }),
    ...toTheEnd,
  ],
};

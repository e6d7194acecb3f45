import type { RawEvent } from '../shared/records/classify';

const second = 1000;
export const minute = 60 * second;
export const hour = 60 * minute;

/** One tap of the invented day: whose consultation, when, by whom. */
export interface DemoTap {
  readonly client: string;
  readonly atMs: number;
  readonly by: string;
  readonly raw: RawEvent;
}

/** So long after the tap before it. */
export type Beat = readonly [afterMs: number, raw: RawEvent];

/** Beats of one client as taps, the first of them so long before now. */
export function layOut(
  client: string,
  by: string,
  nowMs: number,
  beforeMs: number,
  beats: readonly Beat[],
): readonly DemoTap[] {
  let atMs = nowMs - beforeMs;
  return beats.map(([afterMs, raw]) => {
    atMs += afterMs;
    return { client, atMs, by, raw };
  });
}

/** The last beat falls on this moment; the others before it, as far apart as they are. */
export function layOutUntil(
  client: string,
  by: string,
  endAtMs: number,
  beats: readonly Beat[],
): readonly DemoTap[] {
  const lengthMs = beats.reduce((sum, [afterMs]) => sum + afterMs, 0);
  return layOut(client, by, endAtMs, lengthMs, beats);
}

type Said = Readonly<Record<string, unknown>>;

const answered = (step: 'client' | 'hotTools' | 'feelHair' | 'heatSpray', answers: Said): RawEvent =>
  ({ type: 'ANSWERED', step, answers }) as RawEvent;
const confirmed = (step: string): RawEvent => ({ type: 'STEP_CONFIRMED', answers: { step } });

export const opened = (ticket: string, chair: number): Beat => [
  0,
  { type: 'OPENED', answers: { ticket, chair: String(chair) } },
];

const lightening: Said = {
  service: 'lighten',
  reach: 'fullHead',
  targetLevel: '8',
  naturalLevel: '5',
  endsLevel: '6',
  length: 'collarbone',
  reactions: ['none'],
  scalp: 'sound',
  ageBand: 'over',
};

/** What she wants, and a skin test that was put on two days ago and is read today. */
export const client = (nowMs: number, answers: Said = {}): readonly Beat[] => [
  [40 * second, answered('client', { ...lightening, ...answers })],
  [
    10 * second,
    {
      type: 'SKIN_TEST_NOTED',
      answers: { putOnAtMs: nowMs - 54 * hour, seen: 'nothing', site: 'behindEar', method: 'makersMethod' },
    },
  ],
  [3 * second, confirmed('client')],
];

/** The same, with a skin test that was put on just now. */
export const clientToRead = (answers: Said = {}): readonly Beat[] => [
  [40 * second, answered('client', { ...lightening, ...answers })],
];

export const tools = (answers: Said = {}): readonly Beat[] => [
  [
    60 * second,
    answered('hotTools', {
      habits: [{ tool: 'flatIron', wetness: 'dry', daysAWeek: '2', forMonths: '12', settingC: '360' }],
      smoke: 'no',
      history: ['none'],
      ...answers,
    }),
  ],
  [3 * second, confirmed('hotTools')],
];

const felt: Said = {
  nape: 'dry',
  mid: 'dry',
  ends: 'dry',
  porosity: 'normal',
  curl: 'sameAlong',
  breakage: 'no',
  wetStretch: 'springsBack',
};

export const feel = (answers: Said = {}): readonly Beat[] => [
  [50 * second, answered('feelHair', { ...felt, ...answers })],
];

export const spray: readonly Beat[] = [
  [3 * second, confirmed('feelHair')],
  [8 * second, answered('heatSpray', { finish: 'noHotTool' })],
  [3 * second, confirmed('heatSpray')],
];

/** A whole conversation, up to the strand. */
export const talk = (
  nowMs: number,
  answers: { readonly client?: Said; readonly tools?: Said; readonly feel?: Said } = {},
): readonly Beat[] => [
  ...client(nowMs, answers.client),
  ...tools(answers.tools),
  ...feel(answers.feel),
  ...spray,
];

export const powder: Said = {
  line: 'Sandbar powder',
  batch: 'B-17',
  developerPercent: '6',
  ratio: '2',
  heat: 'none',
  minutes: '25',
};

export const cream: Said = {
  line: 'Sandbar cream',
  batch: 'C-04',
  developerPercent: '3',
  ratio: '1',
  heat: 'none',
  minutes: '20',
};

export const strand = (afterMs: number, zone: string, place: string, mix: Said = powder): Beat => [
  afterMs,
  {
    type: 'STRAND_STARTED',
    answers: {
      zone,
      place,
      buildUp: 'washedOff',
      hairs: '30',
      ...mix,
      makersLimitMin: '45',
      lookEveryMin: '3',
    },
  } as RawEvent,
];

export const look = (afterMs: number, zone: string, level: string, feels = 'sound'): Beat => [
  afterMs,
  { type: 'LOOKED', answers: { of: 'strand', zone, level, undertone: 'asExpected', feel: feels } },
];

export const takeOff = (afterMs: number, zone: string, why = 'timeIsUp'): Beat => [
  afterMs,
  { type: 'STRAND_TAKEN_OFF', answers: { zone, why } },
];

export const outcome = (afterMs: number, zone: string, answers: Said = {}): Beat => [
  afterMs,
  {
    type: 'OUTCOME_RECORDED',
    answers: {
      zone,
      fibre: 'sound',
      stretch: 'springsBack',
      level: '8',
      wentPast30: 'no',
      evenness: 'even',
      ...answers,
    },
  } as RawEvent,
];

export const decide = (afterMs: number, decision: string): Beat => [
  afterMs,
  { type: 'DECIDED', answers: { decision } },
];

export const weigh = (afterMs: number, zone: string, mix: Said, shade: string): Beat => [
  afterMs,
  {
    type: 'BOWL_WEIGHED',
    answers: { zone, shades: [{ shade, parts: '1' }], colourG: '40', ...mix },
  } as RawEvent,
];

export const apply = (afterMs: number, zone: string): Beat => [
  afterMs,
  { type: 'BOWL_APPLIED', answers: { zone, skinFirst: 'calm' } },
];

export const lookAtHead = (afterMs: number, zone: string, stinging = 'no'): Beat => [
  afterMs,
  {
    type: 'LOOKED',
    answers: { of: 'head', zone, stinging, ...(stinging === 'no' ? { hair: 'sound' } : {}) },
  },
];

export const rinse = (afterMs: number, zone: string): Beat => [
  afterMs,
  { type: 'BOWL_RINSED', answers: { zone } },
];

export const sendHome = (afterMs: number): readonly Beat[] => [
  [afterMs, { type: 'FINISHED' }],
  [
    9 * minute,
    {
      type: 'PLAN_GIVEN',
      answers: {
        settingC: '320',
        passes: '1',
        restH: '48',
        back: 'weeks6',
        skinNow: 'calm',
        toolsNow: 'offCooling',
        lateItching: 'saidItBack',
        cardNow: 'printed',
      },
    },
  ],
];

export const park = (afterMs: number, untilAtMs: number): Beat => [
  afterMs,
  { type: 'PARKED', answers: { untilAtMs } },
];

import type { RawEvent } from '../shared/records/classify';
import { salon } from './salon';
import type { Story, StoryStep } from './story';

const minute = 60_000;
const hour = 60 * minute;

const wren = (afterMs: number, raw: RawEvent): StoryStep => ({ afterMs, by: 'Wren', raw });

const startAtMs = Date.UTC(2026, 3, 14, 13, 0);
/** The skin test is put on two minutes into the first visit, and read when she is back two days later. */
const putOnAtMs = startAtMs + 2 * minute;
const backAtMs = startAtMs + 51 * hour;

const mix = {
  line: 'Sandbar powder',
  batch: 'B-21',
  developerPercent: '6',
  ratio: '2',
  heat: 'none',
  minutes: '30',
};

const client = {
  service: 'lighten',
  reach: 'fullHead',
  targetLevel: '7',
  naturalLevel: '5',
  endsLevel: '5.5',
  length: 'collarbone',
  reactions: ['none'],
  scalp: 'sound',
  ageBand: 'over',
};

const confirm = (step: string): RawEvent => ({ type: 'STEP_CONFIRMED', answers: { step } });
const skinTest = (seen: string): RawEvent => ({
  type: 'SKIN_TEST_NOTED',
  answers: { method: 'makersMethod', site: 'behindEar', putOnAtMs, seen },
});

/** Talk, skin test on, every question, and away until the day after tomorrow. */
export const firstVisit: Story & { readonly startAtMs: number } = {
  title: 'New full-head lightening, the first visit',
  settings: salon,
  startAtMs,
  steps: [
    wren(0, { type: 'OPENED', answers: { ticket: 'A.B.', chair: '4' } }),
    wren(minute, { type: 'ANSWERED', step: 'client', answers: client }),
    wren(minute, skinTest('notReadYet')),
    wren(2_000, confirm('client')),
    wren(minute, {
      type: 'ANSWERED',
      step: 'hotTools',
      answers: {
        habits: [{ tool: 'flatIron', wetness: 'dry', daysAWeek: '3', forMonths: '24', settingC: '350' }],
        smoke: 'no',
        history: ['none'],
      },
    }),
    wren(2_000, confirm('hotTools')),
    wren(minute, {
      type: 'ANSWERED',
      step: 'feelHair',
      answers: {
        nape: 'dry',
        mid: 'dry',
        ends: 'dry',
        porosity: 'normal',
        curl: 'straight',
        breakage: 'no',
        wetStretch: 'springsBack',
      },
    }),
    wren(2_000, confirm('feelHair')),
    wren(2_000, { type: 'ANSWERED', step: 'heatSpray', answers: { finish: 'noHotTool' } }),
    wren(2_000, confirm('heatSpray')),
    wren(5_000, { type: 'PARKED', answers: { untilAtMs: backAtMs } }),
  ],
};

const strand = (zone: string, place: string): RawEvent => ({
  type: 'STRAND_STARTED',
  answers: {
    zone,
    place,
    buildUp: 'washedOff',
    hairs: '30',
    ...mix,
    makersLimitMin: '45',
    lookEveryMin: '5',
  },
});
const look = (zone: string, level: string): RawEvent => ({
  type: 'LOOKED',
  answers: { of: 'strand', zone, level, undertone: 'asExpected', feel: 'sound' },
});
const outcome = (zone: string): RawEvent => ({
  type: 'OUTCOME_RECORDED',
  answers: {
    zone,
    fibre: 'sound',
    stretch: 'springsBack',
    level: '7',
    wentPast30: 'no',
    evenness: 'even',
  },
});

/** After she has left: the two strands she gave are tested, off the head, and wait with her. */
export const strandsMeanwhile: readonly StoryStep[] = [
  wren(hour, { type: 'RESUMED' }),
  wren(minute, strand('ends', 'whereIroned')),
  wren(minute, strand('lengths', 'crown')),
  wren(2 * minute, look('ends', '5.5')),
  wren(minute, look('lengths', '5.5')),
  wren(10 * minute, look('ends', '6.5')),
  wren(minute, look('lengths', '6.5')),
  wren(15 * minute, { type: 'STRAND_TAKEN_OFF', answers: { zone: 'ends', why: 'timeIsUp' } }),
  wren(minute, { type: 'STRAND_TAKEN_OFF', answers: { zone: 'lengths', why: 'timeIsUp' } }),
  wren(minute, outcome('ends')),
  wren(20_000, outcome('lengths')),
  wren(10_000, { type: 'PARKED', answers: { untilAtMs: backAtMs } }),
];

const weigh = (zone: string): RawEvent => ({
  type: 'BOWL_WEIGHED',
  answers: { zone, shades: [{ shade: 'powder', parts: '1' }], colourG: '40', ...mix },
});

/** What holds for today is asked anew, the rest of the way is as it was told. */
const asBefore: readonly RawEvent[] = [
  { type: 'REOPENED', answers: { step: 'client' } },
  { type: 'ANSWERED', step: 'client', answers: client },
  ...['client', 'hotTools', 'feelHair', 'heatSpray'].map(confirm),
  { type: 'OUTCOME_KEPT' },
];

/** So long after the first visit she is back. */
const strandsTookMs = strandsMeanwhile.reduce((sum, { afterMs }) => sum + afterMs, 0);
const firstTookMs = firstVisit.steps.reduce((sum, { afterMs }) => sum + afterMs, 0);

/** Two days later: the skin test is read, reactions, scalp and age are asked anew, and both bowls come off again. */
export const secondVisit: readonly StoryStep[] = [
  wren(backAtMs - startAtMs - firstTookMs - strandsTookMs, { type: 'RESUMED' }),
  wren(10_000, skinTest('nothing')),
  ...asBefore.map((raw) => wren(1_000, raw)),
  wren(10_000, { type: 'DECIDED', answers: { decision: 'asPlanned' } }),
  wren(2 * minute, weigh('lengths')),
  wren(2 * minute, weigh('ends')),
  wren(minute, { type: 'BOWL_APPLIED', answers: { zone: 'lengths', skinFirst: 'calm' } }),
  wren(4 * minute, { type: 'BOWL_APPLIED', answers: { zone: 'ends', skinFirst: 'calm' } }),
  wren(5 * minute, {
    type: 'LOOKED',
    answers: { of: 'head', zone: 'lengths', stinging: 'no', hair: 'sound' },
  }),
  wren(15 * minute, { type: 'BOWL_RINSED', answers: { zone: 'lengths' } }),
  wren(minute, { type: 'BOWL_RINSED', answers: { zone: 'ends' } }),
];

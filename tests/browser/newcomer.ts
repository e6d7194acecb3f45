import type { StoryStep } from '../../seeds/story';
import type { RawEvent } from '../../shared/records/classify';
import type { Settings } from '../../shared/records/settings';

const minute = 60_000;

/** The morning on which the station is switched on for the first time. */
export const openingDayMs = Date.UTC(2026, 4, 12, 11, 30);

/** What the first user of a new station types into its settings. */
export const newSalon: Pick<Settings, 'staff' | 'shelf'> = {
  staff: ['Maren', 'Tilde'],
  shelf: [
    { name: 'Gravel powder', kind: 'lightener' },
    { name: 'Pier mist', kind: 'spray' },
  ],
};

const maren = (afterMs: number, raw: RawEvent): StoryStep => ({ afterMs, by: 'Maren', raw });

const mix = {
  line: 'Gravel powder',
  batch: 'G-4',
  developerPercent: '6',
  ratio: '2',
  minutes: '30',
  makersLimitMin: '45',
  buildUp: 'washedOff',
};

/** From the first question to the outcome of both strands; one look at the lengths is missed, and the ends break. */
export const upToOutcomes: readonly StoryStep[] = [
  maren(0, { type: 'OPENED', answers: { ticket: 'T.W.', chair: '2' } }),
  maren(20_000, {
    type: 'ANSWERED',
    step: 'client',
    answers: {
      service: 'lighten',
      reach: 'fullHead',
      targetLevel: '7',
      naturalLevel: '5',
      endsLevel: 'unknown',
      greyPercent: '25',
      length: 'collarbone',
      reactions: ['none'],
      scalp: 'sound',
      ageBand: 'over',
    },
  }),
  maren(5_000, {
    type: 'SKIN_TEST_NOTED',
    answers: { method: 'makersMethod', site: 'behindEar', putOnAtMs: '3d', seen: 'nothing' },
  }),
  maren(1_000, { type: 'STEP_CONFIRMED', answers: { step: 'client' } }),
  maren(30_000, {
    type: 'ANSWERED',
    step: 'hotTools',
    answers: {
      habits: [{ tool: 'curlingIron', wetness: 'dry', daysAWeek: '2', forMonths: '12', settingC: '350' }],
      smoke: 'no',
      history: ['none'],
    },
  }),
  maren(1_000, { type: 'STEP_CONFIRMED', answers: { step: 'hotTools' } }),
  maren(40_000, {
    type: 'ANSWERED',
    step: 'feelHair',
    answers: {
      nape: 'dry',
      mid: 'dry',
      ends: 'dry',
      porosity: 'high',
      curl: 'sameAlong',
      breakage: 'no',
      wetStretch: 'springsBack',
    },
  }),
  maren(1_000, { type: 'STEP_CONFIRMED', answers: { step: 'feelHair' } }),
  maren(5_000, {
    type: 'ANSWERED',
    step: 'heatSpray',
    answers: { finish: 'styled', spray: 'Pier mist', tool: 'hotBrush', settingC: '300' },
  }),
  maren(1_000, { type: 'STEP_CONFIRMED', answers: { step: 'heatSpray' } }),
  maren(2 * minute, { type: 'STRAND_STARTED', answers: { zone: 'ends', place: 'fringe', ...mix } }),
  maren(minute, { type: 'STRAND_STARTED', answers: { zone: 'lengths', place: 'crown', ...mix } }),
  maren(2 * minute, {
    type: 'LOOKED',
    answers: { of: 'strand', zone: 'ends', feel: 'rough', level: '5.5', undertone: 'asExpected' },
  }),
  maren(6 * minute, {
    type: 'LOOKED',
    answers: { of: 'strand', zone: 'lengths', feel: 'sound', level: '6', undertone: 'asExpected' },
  }),
  maren(2 * minute, { type: 'STRAND_BROKE', answers: { zone: 'ends' } }),
  maren(11 * minute, { type: 'STRAND_TAKEN_OFF', answers: { zone: 'lengths', why: 'levelReached' } }),
  maren(minute, {
    type: 'OUTCOME_RECORDED',
    answers: {
      zone: 'lengths',
      fibre: 'sound',
      stretch: 'springsBack',
      level: '7',
      wentPast30: 'no',
      evenness: 'even',
    },
  }),
  maren(minute, {
    type: 'OUTCOME_RECORDED',
    answers: {
      zone: 'ends',
      fibre: 'broken',
      stretch: 'snaps',
      wentPast30: 'no',
    },
  }),
];

/** Maren takes more on herself than the table suggests, and says why. */
export const reason: StoryStep = maren(30_000, {
  type: 'OVERRIDDEN',
  answers: {
    rule: 'judgement.freerThanSuggested',
    by: 'Maren',
    code: 'knowsHerHair',
    words: 'Her ends come off today anyway.',
  },
});

export const decision: StoryStep = maren(10_000, { type: 'DECIDED', answers: { decision: 'gentler' } });

/** 40 g of powder at one to two: by hand 80 g of developer and 120 g in all. */
export const bowl: StoryStep = maren(2 * minute, {
  type: 'BOWL_WEIGHED',
  answers: { zone: 'lengths', colourG: '40', minutes: '20' },
});

/** From the bowl on the scale to the plan for home. */
export const ontoTheHead: readonly StoryStep[] = [
  maren(3 * minute, { type: 'BOWL_APPLIED', answers: { zone: 'lengths', skinFirst: 'calm' } }),
  maren(5 * minute, {
    type: 'LOOKED',
    answers: { of: 'head', zone: 'lengths', stinging: 'no', hair: 'sound' },
  }),
  maren(15 * minute, { type: 'BOWL_RINSED', answers: { zone: 'lengths' } }),
  maren(minute, { type: 'FINISHED' }),
];

export const planForHome: StoryStep = maren(10 * minute, {
  type: 'PLAN_GIVEN',
  answers: {
    settingC: '325',
    passes: '1',
    restH: '72',
    back: 'weeks8',
    skinNow: 'calm',
    toolsNow: 'offCooling',
    lateItching: 'saidItBack',
    cardNow: 'byHand',
  },
});

import type { RawEvent } from '../shared/records/classify';
import { salon } from './salon';
import type { Story, StoryStep } from './story';

const minute = 60_000;
const hour = 60 * minute;

const opal = (afterMs: number, raw: RawEvent): StoryStep => ({ afterMs, by: 'Opal', raw });

/** The clock from which the story counts: the skin test was put on so long before she sat down. */
const startAtMs = Date.UTC(2026, 2, 3, 9, 0);

const mix = {
  line: 'Sandbar powder',
  batch: 'B-17',
  developerPercent: '6',
  ratio: '2',
  heat: 'none',
  minutes: '25',
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
    lookEveryMin: '3',
  },
});

const look = (zone: string, level: string, feel: string): RawEvent => ({
  type: 'LOOKED',
  answers: { of: 'strand', zone, level, undertone: 'asExpected', feel },
});

/**
 * Q.F. irons her curls while they are wet, three days a week, for two years. She looks sound and asks to go to
 * level 7. The ends go within nine minutes; the lengths hold. So the ends stay out, and since wet ironing speaks
 * against the lengths too, they get a gentler developer than was tested.
 */
export const endsIronedWet: Story & { readonly startAtMs: number } = {
  title: 'Ends ironed wet for two years',
  settings: salon,
  startAtMs,
  steps: [
    opal(0, { type: 'OPENED', answers: { ticket: 'Q.F.', chair: '3' } }),
    opal(40_000, {
      type: 'ANSWERED',
      step: 'client',
      answers: {
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
    }),
    opal(10_000, {
      type: 'SKIN_TEST_NOTED',
      answers: {
        putOnAtMs: startAtMs - 49 * hour,
        seen: 'nothing',
        site: 'behindEar',
        method: 'makersMethod',
      },
    }),
    opal(2_000, { type: 'STEP_CONFIRMED', answers: { step: 'client' } }),
    opal(minute, {
      type: 'ANSWERED',
      step: 'hotTools',
      answers: {
        habits: [{ tool: 'flatIron', wetness: 'wet', daysAWeek: '3', forMonths: '24', settingC: '400' }],
        smoke: 'no',
        history: ['none'],
      },
    }),
    opal(2_000, { type: 'STEP_CONFIRMED', answers: { step: 'hotTools' } }),
    opal(minute, {
      type: 'ANSWERED',
      step: 'feelHair',
      answers: {
        nape: 'dry',
        mid: 'dry',
        ends: 'dry',
        porosity: 'normal',
        curl: 'sameAlong',
        breakage: 'no',
        wetStretch: 'springsBack',
      },
    }),
    opal(2_000, { type: 'STEP_CONFIRMED', answers: { step: 'feelHair' } }),
    opal(5_000, { type: 'ANSWERED', step: 'heatSpray', answers: { finish: 'noHotTool' } }),
    opal(2_000, { type: 'STEP_CONFIRMED', answers: { step: 'heatSpray' } }),
    opal(3 * minute, strand('ends', 'whereIroned')),
    opal(20_000, strand('lengths', 'crown')),
    opal(2 * minute, look('ends', '5.5', 'sound')),
    opal(3 * minute, look('lengths', '5.5', 'sound')),
    opal(4 * minute, { type: 'STRAND_BROKE', answers: { zone: 'ends' } }),
    opal(4 * minute, look('lengths', '6.5', 'sound')),
    opal(12 * minute, { type: 'STRAND_TAKEN_OFF', answers: { zone: 'lengths', why: 'timeIsUp' } }),
    opal(minute, {
      type: 'OUTCOME_RECORDED',
      answers: {
        zone: 'ends',
        fibre: 'broken',
        stretch: 'snaps',
        wentPast30: 'no',
      },
    }),
    opal(minute, {
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
    opal(30_000, { type: 'DECIDED', answers: { decision: 'endsOut' } }),
    opal(2 * minute, {
      type: 'BOWL_WEIGHED',
      answers: {
        zone: 'lengths',
        shades: [{ shade: 'powder', parts: '1' }],
        colourG: '40',
        ...mix,
        developerPercent: '3',
      },
    }),
    opal(3 * minute, { type: 'BOWL_APPLIED', answers: { zone: 'lengths', skinFirst: 'calm' } }),
    opal(6 * minute, {
      type: 'LOOKED',
      answers: { of: 'head', zone: 'lengths', stinging: 'no', hair: 'sound' },
    }),
    opal(18 * minute, { type: 'BOWL_RINSED', answers: { zone: 'lengths' } }),
    opal(minute, { type: 'FINISHED' }),
    opal(10 * minute, {
      type: 'PLAN_GIVEN',
      answers: {
        settingC: '320',
        passes: '1',
        restH: '48',
        back: 'weeks6',
        skinNow: 'calm',
        toolsNow: 'offCooling',
        lateItching: 'saidItBack',
        cardNow: 'byHand',
      },
    }),
  ],
};

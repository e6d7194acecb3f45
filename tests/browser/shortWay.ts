import type { StoryStep } from '../../seeds/story';
import type { RawEvent } from '../../shared/records/classify';

const minute = 60_000;

const juno = (afterMs: number, raw: RawEvent): StoryStep => ({ afterMs, by: 'Juno', raw });

/** Roots only, so one strand; nothing speaks against this hair but what `history` says. */
export const askAll = (ticket: string, chair: string, history: string): readonly StoryStep[] => [
  juno(1_000, { type: 'OPENED', answers: { ticket, chair } }),
  juno(1_000, {
    type: 'ANSWERED',
    step: 'client',
    answers: {
      service: 'liftAndDeposit',
      reach: 'roots',
      targetLevel: '6',
      naturalLevel: '5',
      endsLevel: '6',
      greyPercent: 'unknown',
      length: 'chin',
      reactions: ['none'],
      scalp: 'sound',
      ageBand: 'over',
    },
  }),
  juno(1_000, {
    type: 'SKIN_TEST_NOTED',
    answers: { method: 'makersMethod', site: 'behindEar', putOnAtMs: '3d', seen: 'nothing' },
  }),
  juno(1_000, { type: 'STEP_CONFIRMED', answers: { step: 'client' } }),
  juno(1_000, {
    type: 'ANSWERED',
    step: 'hotTools',
    answers: { habits: [], smoke: 'no', history: [history] },
  }),
  juno(1_000, { type: 'STEP_CONFIRMED', answers: { step: 'hotTools' } }),
  juno(1_000, {
    type: 'ANSWERED',
    step: 'feelHair',
    answers: {
      nape: 'dry',
      mid: 'dry',
      ends: 'dry',
      porosity: 'low',
      curl: 'straight',
      breakage: 'no',
      wetStretch: 'springsBack',
    },
  }),
  juno(1_000, { type: 'STEP_CONFIRMED', answers: { step: 'feelHair' } }),
  juno(1_000, { type: 'ANSWERED', step: 'heatSpray', answers: { finish: 'noHotTool' } }),
  juno(1_000, { type: 'STEP_CONFIRMED', answers: { step: 'heatSpray' } }),
];

const mix = { line: 'Sandbar cream', developerPercent: '6', ratio: '1' };

/** The strand of the roots is in the mix for so many minutes. */
export const startStrand = (minutes: string): StoryStep =>
  juno(1_000, {
    type: 'STRAND_STARTED',
    answers: { zone: 'roots', place: 'crown', buildUp: 'washedOff', ...mix, minutes, makersLimitMin: '45' },
  });

/** Off after `minutes`, and what it said. */
export const endStrand = (minutes: number): readonly StoryStep[] => [
  juno(minutes * minute, { type: 'STRAND_TAKEN_OFF', answers: { zone: 'roots', why: 'timeIsUp' } }),
  juno(1_000, {
    type: 'OUTCOME_RECORDED',
    answers: {
      zone: 'roots',
      fibre: 'sound',
      stretch: 'springsBack',
      level: '6',
      wentPast30: 'no',
      evenness: 'even',
    },
  }),
];

export const decide = juno(1_000, { type: 'DECIDED', answers: { decision: 'asPlanned' } });

/** Thirty grams of colour at one to one. */
export const weigh = juno(1_000, {
  type: 'BOWL_WEIGHED',
  answers: { zone: 'roots', shades: [{ shade: '6 sand', parts: '1' }], colourG: '30', ...mix, minutes: '20' },
});

export const putOn = juno(1_000, { type: 'BOWL_APPLIED', answers: { zone: 'roots', skinFirst: 'calm' } });

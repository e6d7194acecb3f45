import { salon } from '../../../seeds/salon';
import type { StoryStep } from '../../../seeds/story';
import type { RawForm } from '../../../shared/records/readForm';
import type { ScreenName } from '../../../src/screens/screenOf';
import { answer } from '../typing';
import {
  bothDecided,
  bothOffEarly,
  bothOn,
  bothRinsed,
  bothShort,
  bothSound,
  dayMs,
  endsWaiting,
  event,
  feltStrong,
  feltWeak,
  lengthsOn,
  longestAtHome,
  longSpray,
  looks,
  manyTools,
  minuteMs,
  nowMs,
  outcome,
  say,
  tonerOn,
  tonerWeighed,
  until,
  untilAnswered,
  untilConfirmed,
  warmDecided,
  withManySigns,
} from './clients';
import { refuseClosing, refuseWrites } from './harms';
import { alone, aloneUncalled, among, withSkinTests } from './houses';
import type { Scene, ScenesOf } from './scene';
import { type SceneHand, sayPlan } from './sceneHand';
import { withTaught } from './taughtScenes';

const on = (step: ScreenName) => `main[data-step="${step}"]`;
const open = ({ open }: SceneHand) => open(3);

/** What stands first among the options offered now. */
const tapAnOption = ({ press }: SceneHand) =>
  press('.step-content button[data-option]:not([data-act="absolute"]):not([aria-pressed="true"])');

const asked = {
  client: until('OPENED'),
  hotTools: untilConfirmed('client'),
  feelHair: untilConfirmed('hotTools'),
  heatSpray: untilConfirmed('feelHair'),
};
const offEarly = [event('STRAND_TAKEN_OFF', { zone: 'ends', why: 'levelReached' }, minuteMs)];
/** Both strands came off weak: the ends gummy, the lengths past what springs back. */
const bothFailed = [
  ...until('STRAND_TAKEN_OFF'),
  outcome('ends', { fibre: 'gummy', stretch: 'snaps', evenness: 'banded', level: '5.5' }),
  outcome('lengths', {
    fibre: 'rough',
    stretch: 'staysLong',
    evenness: 'patchy',
    level: '5.5',
    wentPast30: 'yes',
  }),
];
const toCut = event('DECIDED', { decision: 'cutFirst' });
const cutDecided = [...until('OUTCOME_RECORDED', 'lengths'), toCut];
const oneStrand = until('STRAND_STARTED', 'ends');
const allAsked = untilConfirmed('heatSpray');

const client = say('client', {
  service: 'lighten',
  reach: 'fullHead',
  targetLevel: '9.5',
  naturalLevel: '4',
  endsLevel: 'unknown',
  greyPercent: '35',
  texture: 'coarse',
  density: 'thick',
  length: 'waist',
  reactions: ['tingled'],
  scalp: 'tight',
  ageBand: 'over',
});
const tired = say('feelHair', {
  nape: 'dry',
  mid: 'damp',
  ends: 'damp',
  porosity: 'high',
  curl: 'lostAtEnds',
  breakage: 'much',
  wetStretch: 'staysLong',
});
const styledWith = (spray: string, settingC: string) =>
  say('heatSpray', { finish: 'styled', spray, tool: 'flatIron', settingC });
const styled = styledWith(longSpray, '400');

/** A step that asks, where the store takes nothing more. */
const unsaved = (step: ScreenName, steps: readonly StoryStep[]): Scene => ({
  logs: alone(steps),
  go: async (hand) => {
    await open(hand);
    await refuseWrites(hand.page);
    await tapAnOption(hand);
  },
  shows: `${on(step)} .refusal, ${on(step)} .field-refusal`,
});

const still = (step: ScreenName, logs: Scene['logs']): Scene => ({ logs, go: open, shows: on(step) });
const after = (step: ScreenName, logs: Scene['logs'], ...acts: readonly string[]): Scene => ({
  logs,
  go: async (hand) => {
    await open(hand);
    for (const act of acts) await hand.act(act);
  },
  shows: on(step),
});

/** The same, with what opens over the page. */
const opened = (step: ScreenName, logs: Scene['logs'], ...acts: readonly string[]): Scene => ({
  ...after(step, logs, ...acts),
  shows: 'dialog[open]',
});

/** The bowl of the next zone is asked for at once; from all bowls it is one tap. */
/** 3 % of two bottles, as on the shelf of somebody who is out of it. */
async function useTwo(hand: SceneHand): Promise<void> {
  await toBowl(hand);
  await hand.act('thin');
  await hand.press('[data-option="6"]');
  await hand.press('[data-option="1.5"]');
  await hand.act('thin-use');
}

async function toBowl(hand: SceneHand): Promise<void> {
  await open(hand);
  const choice = hand.page.locator('[data-act="mix-lengths"]');
  await choice.or(hand.page.locator('[data-act="weigh"]')).first().waitFor();
  if (await choice.isVisible()) await hand.press(choice);
}

/** Something is typed into the bowl that is not mixed, and its question is looked at. */
const badBowl = (question: string, text: string, shades: readonly RawForm[] | null = null): Scene => ({
  logs: alone(bothDecided),
  go: async (hand) => {
    await toBowl(hand);
    await answer(hand, 'shades', shades);
    await answer(hand, question, text);
    const field = hand.page.locator(`[data-question="${question}"]`);
    if (!(await field.isVisible())) await hand.press(`[data-ledger="${question}"]`);
  },
  shows: `${on('mix')} .field-refusal:not(:empty)`,
});

const ALWAYS_RUNS = 'a clock runs, or this screen is not shown';

/** Every screen of a client, in each of its states. A screen without its line does not compile. */
export const scenesOfClient: Readonly<Record<ScreenName, ScenesOf>> = {
  client: {
    empty: still('client', alone(asked.client)),
    usual: still(
      'client',
      alone([...asked.client, say('client', { service: 'lighten', reach: 'fullHead' })]),
    ),
    full: still('client', among([...asked.client, client])),
    error: unsaved('client', asked.client),
    also: {
      answered: still('client', alone(until('SKIN_TEST_NOTED'))),
      testCameIn: still('client', withSkinTests(alone(asked.client), [['Q.F.', 31.5, 30]])),
      isCut: still('client', alone([...cutDecided, event('PLAN_CHANGED')])),
      otherPlan: still('client', among([...bothFailed, event('PLAN_CHANGED')])),
      pregnant: {
        logs: alone(until('SKIN_TEST_NOTED')),
        go: async (hand) => {
          await open(hand);
          await hand.press('[data-ledger="scalp"]');
          await hand.act('pregnant');
        },
        shows: 'dialog[open] .pregnant-said',
      },
    },
  },
  hotTools: {
    empty: still('hotTools', alone(asked.hotTools)),
    usual: still('hotTools', alone(untilAnswered('hotTools'))),
    full: still('hotTools', among([...asked.hotTools, manyTools])),
    error: unsaved('hotTools', [...asked.hotTools, say('hotTools', { habits: [] })]),
  },
  feelHair: {
    empty: still('feelHair', alone(asked.feelHair)),
    usual: still(
      'feelHair',
      alone([...asked.feelHair, say('feelHair', { nape: 'dry', mid: 'dry', ends: 'damp' })]),
    ),
    full: still('feelHair', among([...asked.feelHair, tired])),
    error: unsaved('feelHair', asked.feelHair),
    also: { answered: still('feelHair', alone(untilAnswered('feelHair'))) },
  },
  heatSpray: {
    empty: still('heatSpray', alone(asked.heatSpray)),
    usual: still('heatSpray', alone(untilAnswered('heatSpray'))),
    full: still('heatSpray', among([...asked.heatSpray, styled])),
    error: unsaved('heatSpray', asked.heatSpray),
    also: {
      sugar: still('heatSpray', among([...asked.heatSpray, styledWith('Cove mist', '400')])),
      ofMaker: still('heatSpray', among([...asked.heatSpray, styledWith('Harbour veil', '400')])),
      noList: still('heatSpray', among([...asked.heatSpray, styledWith('Gravel foam', '480')])),
      hottest: still('heatSpray', among([...asked.heatSpray, styledWith(longSpray, '480')])),
    },
  },
  preparing: {
    empty: still('preparing', alone(allAsked)),
    usual: after('preparing', alone(allAsked), 'test-ends'),
    also: {
      chance: opened('preparing', alone(allAsked), 'explain-chance'),
      chanceLearnt: {
        ...opened('preparing', withTaught(alone(allAsked), 74), 'explain-chance'),
        shows: 'dialog[open] [data-line="by-strands"]',
      },
      chanceMore: {
        ...still('preparing', withTaught(alone(allAsked), 74, salon, 10)),
        shows: '.chance-line[data-chance="high"]',
      },
      manySigns: still('preparing', alone(withManySigns(allAsked))),
      manySignsFull: still('preparing', among(withManySigns(allAsked))),
      noSkinTest: still('preparing', alone(allAsked.filter(({ raw }) => raw.type !== 'SKIN_TEST_NOTED'))),
      glassClear: still(
        'preparing',
        alone([
          ...asked.hotTools.filter(({ raw }) => raw.type !== 'SKIN_TEST_NOTED'),
          say('hotTools', {
            habits: [{ tool: 'flatIron', wetness: 'wet', daysAWeek: '3', forMonths: '24', settingC: '400' }],
            smoke: 'no',
            history: ['compoundHenna'],
          }),
          event('STEP_CONFIRMED', { step: 'hotTools' }),
          ...allAsked.slice(untilConfirmed('hotTools').length),
          event('INCOMPATIBILITY_STARTED'),
          event('INCOMPATIBILITY_READ', { seen: 'nothing' }, 30 * minuteMs),
        ]),
      ),
    },
    full: still(
      'preparing',
      among([
        ...asked.client,
        client,
        event('STEP_CONFIRMED', { step: 'client' }),
        manyTools,
        event('STEP_CONFIRMED', { step: 'hotTools' }),
        say('feelHair', { ...tired.raw.answers, mid: 'dry', ends: 'dry' }),
        event('STEP_CONFIRMED', { step: 'feelHair' }),
        styled,
        event('STEP_CONFIRMED', { step: 'heatSpray' }),
      ]),
    ),
    error: after('preparing', alone(allAsked), 'test-ends', 'start-strand'),
  },
  processing: {
    empty: ALWAYS_RUNS,
    usual: still('processing', alone([...until('LOOKED', 'ends')], 30_000)),
    full: still('processing', among(until('LOOKED', 'lengths'), 26 * minuteMs)),
    error: {
      logs: alone(until('LOOKED', 'ends')),
      go: async (hand) => {
        await open(hand);
        await refuseWrites(hand.page);
        await hand.hold('[data-act="strand-broke"]');
      },
      shows: `${on('processing')} .refusal`,
    },
    also: {
      two: still('processing', alone(until('LOOKED', 'lengths'), minuteMs)),
      lift: still('processing', alone([...oneStrand, ...looks('ends', '5.5', '5.5', '6')], minuteMs)),
      liftSoon: still(
        'processing',
        alone([...oneStrand, ...looks('ends', '5.5', '5.5', '6', '6', '6.5', '6.5')], minuteMs),
      ),
      liftFull: still('processing', among([...oneStrand, ...looks('ends', '5', '5.5', '6.5')], minuteMs)),
      liftMissed: still(
        'processing',
        among([...oneStrand, ...looks('ends', '5', '5.5', '6.5')], 5 * minuteMs),
      ),
      liftSlow: still(
        'processing',
        alone([...oneStrand, ...looks('ends', '5', '5.5', '5.5', '5.5', '6')], minuteMs),
      ),
      liftFalls: still('processing', among([...oneStrand, ...looks('ends', '6.5', '5.5')], minuteMs)),
      look: after('processing', alone(until('STRAND_STARTED', 'lengths'), 3 * minuteMs), 'look'),
      feel: {
        logs: alone(until('STRAND_STARTED', 'lengths'), 3 * minuteMs),
        go: async (hand) => {
          await open(hand);
          await hand.act('look');
          await hand.press('[data-option="5.5"]');
        },
        shows: '[data-question="undertone"] [data-option="asExpected"]',
      },
      feelDarker: {
        logs: among([...until('STRAND_STARTED', 'lengths'), ...looks('ends', '7')], 4 * minuteMs),
        go: async (hand) => {
          await open(hand);
          await hand.act('look');
          await hand.press('[data-option="6.5"]');
        },
        shows: '[data-line="level-heard"]',
      },
      undertone: {
        logs: among(until('STRAND_STARTED', 'lengths'), 3 * minuteMs),
        go: async (hand) => {
          await open(hand);
          await hand.act('look');
          await hand.press('[data-option="unknown"]');
          await hand.act('other-undertone');
        },
        shows: '[data-question="undertone"] [data-option="paleYellow"]',
      },
      another: after('processing', alone(until('STRAND_STARTED', 'ends')), 'another-strand'),
      oneOff: still('processing', among(until('STRAND_BROKE'))),
      outcome: after('processing', among(until('STRAND_BROKE')), 'outcome-ends'),
    },
  },
  outcome: {
    empty: still('outcome', alone(until('STRAND_TAKEN_OFF'))),
    usual: after('outcome', alone(until('STRAND_TAKEN_OFF'))),
    full: still('outcome', among(until('STRAND_TAKEN_OFF'))),
    error: after('outcome', alone(until('STRAND_TAKEN_OFF')), 'record-outcome'),
    also: {
      short: still('outcome', among(bothOffEarly)),
      broke: still(
        'outcome',
        among([
          ...until('STRAND_BROKE'),
          event('STRAND_TAKEN_OFF', { zone: 'lengths', why: 'looksWeak' }),
          outcome('lengths'),
        ]),
      ),
      feltBroken: {
        logs: alone(until('STRAND_TAKEN_OFF')),
        go: async (hand) => {
          await open(hand);
          await hand.press('[data-option="broken"]');
        },
        shows: `${on('outcome')} [data-broke="lengths"]`,
      },
      darker: {
        logs: among([...until('STRAND_STARTED', 'ends'), ...looks('ends', '7.5'), ...offEarly]),
        go: async (hand) => {
          await open(hand);
          for (const option of ['sound', 'springsBack', 'no']) await hand.press(`[data-option="${option}"]`);
          await hand.press('[data-option="6"]');
        },
        shows: '[data-line="level-heard"]',
      },
    },
  },
  decision: {
    empty: 'there is always an outcome to decide on',
    usual: still('decision', alone(until('OUTCOME_RECORDED', 'lengths'))),
    full: still('decision', among(bothFailed)),
    error: {
      logs: alone(until('OUTCOME_RECORDED', 'lengths')),
      go: async (hand) => {
        await open(hand);
        await refuseWrites(hand.page);
        await hand.press('[data-act^="decide-"]');
      },
      shows: `${on('decision')} .refusal`,
    },
    also: {
      whatHappened: opened('decision', alone(until('OUTCOME_RECORDED', 'lengths')), 'what-happened-ends'),
      whatHappenedFull: opened('decision', among(bothFailed), 'what-happened-ends'),
      sound: still('decision', alone(bothSound)),
      short: still('decision', alone(bothShort)),
      shortFull: still('decision', among(bothShort)),
      retract: after('decision', alone(bothSound), 'retract-lengths'),
      override: {
        logs: alone(until('OUTCOME_RECORDED', 'lengths')),
        go: async (hand) => {
          await open(hand);
          await hand.act('show-freer');
          await hand.press('[data-question="decision"] [data-option="gentler"]');
          await hand.act('override-freer');
        },
        shows: '[data-act="override"]',
      },
      manySigns: still('decision', alone(withManySigns(bothSound))),
      manySignsFull: still('decision', among(withManySigns(bothShort))),
      manySignsFailed: still('decision', among(withManySigns(bothFailed))),
      allSigns: opened('decision', alone(withManySigns(bothSound)), 'more-flags'),
      cutFirst: still('decision', alone(cutDecided)),
      cutFirstFull: still('decision', among([...bothFailed, toCut])),
      freer: after('decision', alone(until('OUTCOME_RECORDED', 'lengths')), 'show-freer'),
    },
  },
  mix: {
    empty: still('mix', alone(until('DECIDED'))),
    usual: still('mix', alone(until('BOWL_WEIGHED'))),
    full: still('mix', among([...bothDecided, ...lengthsOn.slice(bothDecided.length, -1)], 4 * minuteMs)),
    error: {
      logs: alone(until('DECIDED')),
      go: async (hand) => {
        await toBowl(hand);
        await answer(hand, 'developerPercent', '9');
      },
      shows: `${on('mix')} [data-act="weigh"]:disabled`,
    },
    also: {
      missing: {
        logs: alone(until('DECIDED')),
        go: async (hand) => {
          await toBowl(hand);
          await hand.act('weigh');
        },
        shows: on('mix'),
      },
      bowl: { logs: alone(bothDecided), go: toBowl, shows: `${on('mix')} [data-act="weigh"]` },
      thinning: {
        logs: among(bothDecided, 4 * minuteMs),
        go: async (hand) => {
          await toBowl(hand);
          await hand.act('thin');
          await hand.press('[data-option="12"]');
          await hand.press('[data-option="1.5"]');
        },
        shows: '[data-panel="thinned"]',
      },
      signScalp: {
        logs: alone(warmDecided),
        go: async (hand) => {
          await toBowl(hand);
          await hand.act('sign-scalp');
        },
        shows: '[data-act="override"]',
      },
      twoWeighed: {
        logs: alone(bothDecided),
        go: async (hand) => {
          await useTwo(hand);
          await hand.act('weigh');
          await hand.act('cancel');
        },
        shows: '[data-panel="say-first"]',
      },
      twoBottles: {
        logs: alone(bothDecided),
        go: useTwo,
        shows: '[data-figure="strong"]',
      },
      weighIn: {
        logs: alone(bothDecided),
        go: async (hand) => {
          await toBowl(hand);
          await hand.act('weigh-in');
        },
        shows: '[data-question="pour0-0"]',
      },
      weighInFull: {
        logs: among(bothDecided, 4 * minuteMs),
        go: async (hand) => {
          await useTwo(hand);
          await hand.act('weigh-in');
          await hand.act('another-number');
          for (const key of ['9', '0']) await hand.press(`[data-key="${key}"]`);
          await hand.act('pad-done');
        },
        shows: '[data-question="pour1-0"]',
      },
      weighInOver: {
        logs: among(bothDecided, 4 * minuteMs),
        go: async (hand) => {
          await toBowl(hand);
          await hand.act('weigh-in');
          await hand.act('another-number');
          for (const key of ['9', '0', '0']) await hand.press(`[data-key="${key}"]`);
        },
        shows: '[data-act="pour-anew"]',
      },
      weighedIn: {
        logs: alone(bothDecided),
        go: async (hand) => {
          await toBowl(hand);
          await hand.act('weigh-in');
          for (const _ of [0, 1]) await hand.press('[data-question^="pour"] [data-option]');
        },
        shows: '[data-panel="weighed-in"]',
      },
      typing: {
        logs: alone(bothDecided),
        go: async (hand) => {
          await toBowl(hand);
          await hand.press('[data-ledger="ratio"]');
          await hand.act('another-number');
          for (const key of ['clear', '1', '.', '2', '.', '3']) await hand.press(`[data-key="${key}"]`);
        },
        shows: `${on('mix')} .field-refusal:not(:empty)`,
      },
      badRatio: badBowl('ratio', '0'),
      tooMuch: badBowl('colourG', '5000'),
      tooStrong: badBowl('developerPercent', '9'),
      coarse: badBowl('colourG', '5', [
        { shade: 'Mist 7', parts: '1' },
        { shade: 'Mist 8', parts: '20' },
      ]),
      two: after('mix', alone(bothDecided), 'cancel'),
      notCalm: after('mix', alone(until('BOWL_WEIGHED')), 'skin-not-calm'),
      rinsed: still('mix', alone(bothRinsed)),
      feel: after('mix', alone(bothRinsed), 'toner-lengths'),
      feltWeak: after('mix', alone(feltWeak), 'toner-lengths'),
      brokeOnHead: after(
        'mix',
        alone([
          ...bothOn,
          event('LOOKED', { of: 'head', zone: 'lengths', stinging: 'no', hair: 'breaking' }, 4 * minuteMs),
          event('BOWL_RINSED', { zone: 'lengths' }, minuteMs),
          event('BOWL_RINSED', { zone: 'ends' }, minuteMs),
        ]),
        'toner-lengths',
      ),
      toldWrongly: after('mix', alone(feltWeak), 'toner-lengths', 'told-wrongly'),
      toner: after('mix', alone(feltStrong), 'toner-lengths'),
      tonerWeighed: still('mix', alone(tonerWeighed)),
      tooOld: still('mix', alone(until('BOWL_WEIGHED'), 65 * minuteMs)),
    },
  },
  colourOn: {
    empty: ALWAYS_RUNS,
    usual: still('colourOn', alone(until('BOWL_APPLIED'), 4 * minuteMs)),
    full: still('colourOn', among(bothOn, 17 * minuteMs)),
    error: {
      logs: alone(until('BOWL_APPLIED'), 4 * minuteMs),
      go: async (hand) => {
        await open(hand);
        await refuseWrites(hand.page);
        await hand.act('look');
        await hand.act('hair-sound');
        await hand.answerWho();
      },
      shows: `${on('colourOn')} .refusal`,
    },
    also: {
      two: still('colourOn', alone(bothOn, 4 * minuteMs)),
      waiting: still('colourOn', alone(endsWaiting, 4 * minuteMs)),
      waitingNotCalm: after('colourOn', alone(endsWaiting, 4 * minuteMs), 'skin-not-calm'),
      look: after('colourOn', alone(until('BOWL_APPLIED'), 4 * minuteMs), 'look'),
      breaking: still(
        'colourOn',
        alone(
          [
            ...bothOn,
            event('LOOKED', { of: 'head', zone: 'lengths', stinging: 'no', hair: 'breaking' }, 4 * minuteMs),
          ],
          2_000,
        ),
      ),
      stretchy: still(
        'colourOn',
        alone(
          [
            ...until('BOWL_APPLIED'),
            event('LOOKED', { of: 'head', zone: 'lengths', stinging: 'no', hair: 'stretchy' }, 5 * minuteMs),
          ],
          minuteMs,
        ),
      ),
      moreTime: after('colourOn', alone(lengthsOn, 14 * minuteMs), 'more-time'),
      tonerOn: still('colourOn', alone(tonerOn, 4 * minuteMs)),
      tonerBeside: still(
        'colourOn',
        alone([...bothOn, event('BOWL_RINSED', { zone: 'lengths' }, 3 * minuteMs)], minuteMs),
      ),
      basin: still('colourOn', alone(until('BOWL_APPLIED'), 24 * minuteMs)),
      stopped: still('colourOn', among([...lengthsOn, say('client', { reactions: ['hives'] })])),
    },
  },
  finish: {
    empty: still('finish', alone(until('FINISHED'))),
    usual: still('finish', alone(until('FINISHED'), 5 * minuteMs)),
    full: still('finish', among(until('FINISHED'))),
    error: after('finish', alone(until('FINISHED')), 'give-plan'),
    also: {
      cardLongest: {
        logs: among(longestAtHome),
        go: async (hand) => {
          await open(hand);
          await sayPlan(hand);
        },
        shows: '.plan-card',
      },
      cardUncalled: {
        logs: aloneUncalled(until('FINISHED')),
        go: async (hand) => {
          await open(hand);
          await sayPlan(hand);
        },
        shows: '.plan-card',
      },
      cardAsked: {
        logs: among(until('FINISHED')),
        go: async (hand) => {
          await open(hand);
          await sayPlan(hand);
          await hand.press('[data-ledger="cardNow"]');
        },
        shows: '[data-question="cardNow"]',
      },
      cardHotter: {
        logs: among(longestAtHome),
        go: async (hand) => {
          await open(hand);
          await hand.press('[data-ledger="settingC"]');
          await hand.press('[data-act="another-number"]');
          for (const digit of ['4', '5', '0']) await hand.press(`[data-key="${digit}"]`);
          await hand.press('[data-act="pad-done"]');
          await sayPlan(hand);
        },
        shows: '.plan-card',
      },
      card: {
        logs: among(until('FINISHED')),
        go: async (hand) => {
          await open(hand);
          await sayPlan(hand);
        },
        shows: '.plan-card',
      },
    },
  },
  stopped: {
    empty: 'there is always a stop to show',
    usual: still('stopped', alone([...asked.client, say('client', { scalp: 'broken' })])),
    full: still(
      'stopped',
      among([
        ...until('LOOKED', 'lengths'),
        say('client', {
          reactions: ['swelling', 'blisters', 'hives', 'tightChest', 'blackTattoo'],
          scalp: 'faceRash',
        }),
      ]),
    ),
    error: {
      logs: alone([...asked.client, say('client', { scalp: 'broken' })]),
      go: async (hand) => {
        await open(hand);
        await hand.act('correction');
        await hand.hold('[data-act="correct"]');
      },
      shows: on('stopped'),
    },
  },
  parked: {
    empty: 'somebody is parked, or this screen is not shown',
    usual: {
      logs: alone([...allAsked, event('PARKED', { untilAtMs: nowMs + 2 * dayMs })]),
      go: openParked,
      shows: on('parked'),
    },
    full: {
      logs: among([...allAsked, event('PARKED', { untilAtMs: nowMs - 30 * minuteMs })], 50 * 60 * minuteMs),
      go: openParked,
      shows: on('parked'),
    },
    error: {
      logs: alone([...allAsked, event('PARKED', { untilAtMs: nowMs + 2 * dayMs })]),
      go: async (hand) => {
        await openParked(hand);
        await refuseWrites(hand.page);
        await hand.act('resume');
      },
      shows: `${on('parked')} .refusal`,
    },
    also: {
      tells: {
        logs: among([...allAsked, event('PARKED', { untilAtMs: nowMs - 30 * minuteMs })], 50 * 60 * minuteMs),
        go: async (hand) => {
          await openParked(hand);
          await hand.act('tells-of');
        },
        shows: 'dialog:modal .tells-of-tiles',
      },
      strands: {
        logs: alone([
          ...until('OUTCOME_RECORDED', 'lengths'),
          event('PARKED', { untilAtMs: nowMs + 2 * dayMs }),
        ]),
        go: openParked,
        shows: `${on('parked')} [data-fact="strands"] [data-zone="ends"]`,
      },
    },
  },
  reaction: {
    empty: 'a reaction is suspected, or this screen is not shown',
    usual: still(
      'reaction',
      alone([...until('BOWL_APPLIED'), event('REACTION_SUSPECTED', {}, 5 * minuteMs)], 20_000),
    ),
    full: still(
      'reaction',
      among([
        ...bothOn,
        event('REACTION_SUSPECTED', {}, 5 * minuteMs),
        event('REACTION_RECORDED', { signs: ['burning', 'blisters', 'swelling', 'hives', 'breath', 'eyes'] }),
        event('BOWL_RINSED', { zone: 'ends' }),
      ]),
    ),
    error: {
      logs: alone(until('BOWL_APPLIED'), 4 * minuteMs),
      go: async (hand) => {
        await open(hand);
        await refuseWrites(hand.page);
        await hand.act('reaction');
      },
      shows: on('reaction'),
    },
    also: {
      signs: after('reaction', among([...bothOn, event('REACTION_SUSPECTED', {}, 5 * minuteMs)]), 'signs'),
      none: after(
        'reaction',
        among([...bothOn, event('REACTION_SUSPECTED', {}, 5 * minuteMs)]),
        'no-reaction',
      ),
      stillOn: after(
        'reaction',
        among([
          ...bothOn,
          event('REACTION_SUSPECTED', {}, 5 * minuteMs),
          event('BOWL_RINSED', { zone: 'lengths' }),
          event('BOWL_RINSED', { zone: 'ends' }),
        ]),
        'no-reaction',
      ),
      water: still(
        'reaction',
        alone(
          [
            ...until('BOWL_APPLIED'),
            event('REACTION_SUSPECTED', {}, 5 * minuteMs),
            event('BOWL_RINSED', { zone: 'lengths' }),
          ],
          30_000,
        ),
      ),
      care: after(
        'reaction',
        among([
          ...bothOn,
          event('REACTION_SUSPECTED', {}, 5 * minuteMs),
          event('REACTION_RECORDED', {
            signs: ['burning', 'blisters', 'swelling', 'hives', 'breath', 'eyes'],
          }),
          event('BOWL_RINSED', { zone: 'lengths' }),
          event('BOWL_RINSED', { zone: 'ends' }),
        ]),
        'care',
      ),
      recorded: still(
        'reaction',
        alone([
          ...until('BOWL_APPLIED'),
          event('REACTION_SUSPECTED', {}, 5 * minuteMs),
          event('REACTION_RECORDED', { signs: ['burning'] }),
        ]),
      ),
    },
  },
  ended: {
    empty: 'a record that is over has always something in it',
    usual: 'what is over and written is said on the bar: see bar, ended',
    full: 'as its usual state',
    error: {
      logs: alone(until('FINISHED')),
      harm: refuseClosing,
      go: async (hand) => {
        await open(hand);
        await sayPlan(hand);
        await hand.act('give-plan');
      },
      shows: on('ended'),
    },
  },
};

async function openParked({ act, press, page, answerWho }: SceneHand): Promise<void> {
  await act('parked');
  await press(page.locator('[data-consultation="client0003"] [data-act="open-parked"]'));
  await answerWho('main[data-consultation]');
}

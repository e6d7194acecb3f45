import { salon } from '../../../seeds/salon';
import type { StoryStep } from '../../../seeds/story';
import { cautionMoments } from '../../../shared/judgement/cautions';
import { settingsSections } from '../../../src/screens/settings/settingsSections';
import { scenesOfBackup } from './backupScenes';
import { scenesOfBench } from './benchScenes';
import { scenesOfCard } from './cardScenes';
import {
  event,
  fullSalon,
  hourMs,
  longName,
  longSpray,
  manyTools,
  minuteMs,
  nowMs,
  say,
  until,
  untilAnswered,
  untilConfirmed,
} from './clients';
import { scenesOfCover } from './coverScenes';
import {
  breakSound,
  holdMonths,
  jumpAhead,
  keepAwake,
  letBuildWait,
  neverOpen,
  offerWays,
  refusePlace,
  refuseRewriting,
  refuseWrites,
  writeElsewhere,
} from './harms';
import {
  alone,
  among,
  emptyHouse,
  fullHouse,
  houseWithRoom,
  newHouse,
  spokenHouse,
  usualHouse,
  withClosed,
  withSkinTests,
  withUnjudged,
} from './houses';
import { scenesOfEarlier, scenesOfLastVisit, toTicket } from './lastVisitScenes';
import { scenesOfOthers } from './othersScenes';
import { scenesOfPin } from './pinScenes';
import {
  scenesOfDebrief,
  scenesOfLesson,
  scenesOfLessons,
  scenesOfOwnLessons,
  scenesOfTrainer,
} from './practiceScenes';
import { scenesOfPress } from './pressScenes';
import { scenesOfRecords } from './recordScenes';
import { scenesOfMeasure, scenesOfSetRuler } from './rulerScenes';
import type { Scene, ScenesOf } from './scene';
import { type SceneHand, sayPlan } from './sceneHand';
import { scenesOfTaught } from './taughtScenes';

/** The screens that are no state of one client. */
export type BesideName =
  | 'bar'
  | 'start'
  | 'lastVisit'
  | 'earlierClients'
  | 'parkedList'
  | 'skinTests'
  | 'skinTestOfClient'
  | 'settings'
  | 'warmthTrial'
  | 'measure'
  | 'strandCard'
  | 'setRuler'
  | 'whyOfSpray'
  | 'whyOfHair'
  | 'day'
  | 'taught'
  | 'press'
  | 'bench'
  | 'recordsKept'
  | 'notices'
  | 'clockDoubt'
  | 'watching'
  | 'starting'
  | 'noStore'
  | 'stillReading'
  | 'who'
  | 'idle'
  | 'pin'
  | 'moreForClient'
  | 'demo'
  | 'lessons'
  | 'lesson'
  | 'debrief'
  | 'trainer'
  | 'ownLessons'
  | 'nothingNew'
  | 'anotherDay';

const bar = 'main.bar';
const dialog = 'dialog[open]';
const toStart = async ({ act, press }: SceneHand) => {
  await act('start');
  await press('[data-act="who-Opal"]');
};
const toSettings = async ({ act, press }: SceneHand) => {
  await act('settings');
  await press('[data-act="who-Opal"]');
};
const saveChairs = async (hand: SceneHand) => {
  await toSettings(hand);
  await hand.act('section-salon');
  await hand.press('[data-question="chairs"] [data-option="6"]');
  await hand.act('save-settings');
};
const toSpray = async (hand: SceneHand, row: number) => {
  await toSettings(hand);
  await hand.act('section-shelf');
  await hand.press(`[data-row="${row}"] [data-act="open-spray"]`);
};
const toTrial = async (hand: SceneHand, row: number) => {
  await toSpray(hand, row);
  await hand.act('warmth-trial');
};
/** A run of the warmth trial, so many seconds after it was started. */
const runFor = async ({ act, page }: SceneHand, seconds: number) => {
  await act('start-run');
  const startedAtMs = await page.evaluate(() => Date.now());
  await page.clock.setFixedTime(startedAtMs + seconds * 1_000);
  const shown = page.locator('.clock-digits', { hasText: String(Math.min(seconds, 30)) });
  await shown.waitFor();
};
const scene = (logs: Scene['logs'], shows: string, go?: Scene['go']): Scene => ({
  logs,
  shows,
  ...(go === undefined ? {} : { go }),
});
/** All that the list of this spray tells, with its sources. */
const whyOf = (spray: string): Scene =>
  scene(
    among([
      ...untilConfirmed('feelHair'),
      say('heatSpray', { finish: 'styled', spray, tool: 'flatIron', settingC: '400' }),
    ]),
    `${dialog} [data-finding]`,
    async (hand) => {
      await hand.open(3);
      await hand.act('explain');
    },
  );
/** Every figure of the strand, the first opened; `steps` lead to the end of the hot tools. */
const whyOfHair = (steps: Parameters<typeof among>[0]): Scene =>
  scene(among(steps), `${dialog} [data-explained][open]`, async (hand) => {
    await hand.open(3);
    await hand.act('explain');
  });
const toDemo = async ({ act, page }: SceneHand) => {
  await act('load-demo');
  await page.locator('.demo-ribbon').waitFor({ timeout: 20_000 });
  await page.locator('.place:not(.place-free)').first().waitFor();
};
const toMore = async (hand: SceneHand, way?: string) => {
  await hand.open(3);
  await hand.act('more-for-client');
  if (way !== undefined) await hand.act(`way-${way}`);
};
/** A cutting stands in its glass. */
const inGlass = [
  ...untilConfirmed('client'),
  say('hotTools', { habits: [], smoke: 'no', history: ['unknownBoxColour'] }),
  event('STEP_CONFIRMED', { step: 'hotTools' }),
  ...untilConfirmed('heatSpray').slice(untilConfirmed('hotTools').length),
  event('INCOMPATIBILITY_STARTED'),
];
/** It stood there clear, and is kept. */
const cuttingKept = [...inGlass, event('INCOMPATIBILITY_READ', { seen: 'nothing' }, hourMs / 2)];
const toSoundCheck = async ({ page, act }: SceneHand) => {
  await page.keyboard.press('Shift');
  await act('sound-check');
};
const toBack = toTicket('LM');
const toHerSkinTest = async (hand: SceneHand) => {
  await hand.open(3);
  await hand.press('[data-ledger="summary"]');
  await hand.act('skin-test');
};
const keptPage = '[data-step="kept"]';
const toKept = async ({ act }: SceneHand) => {
  await act('day');
  await act('kept');
};
const toErase = async (hand: SceneHand) => {
  await toKept(hand);
  await hand.act('erase-by-ticket');
  await hand.answerWho('[data-key="L"]');
};
const toFound = async (hand: SceneHand) => {
  await toErase(hand);
  for (const letter of 'LM') await hand.press(`[data-key="${letter}"]`);
};
const toHers = async (hand: SceneHand) => {
  await toFound(hand);
  await hand.act('look-at-hers');
};
/** She told of hives and was sent home. */
const sentHome = [
  ...until('OPENED'),
  say('client', { reactions: ['hives'] }),
  event('WE_SAID_NO', { reason: 'notSafeToday' }),
];
const keptUsual = withSkinTests(
  withClosed(withClosed(usualHouse, ['L.M.', 'B.D.'], salon, 70), ['L.M.'], salon, 35, sentHome),
  [['L.M.', 24 * 30]],
);
const toSkinTests = ({ act }: SceneHand) => act('skin-tests');
const someTests = [
  ['A.K.', 50],
  ['N.O.', 20],
  ['B.D.', 60 * 24],
] as const;
/** Put on at another station, whose clock is an hour and a half behind. */
const cameIn = [['Q.F.', 31.5, 30]] as const;
const manyTests = [
  ...someTests,
  ['Wamemwom-QW.', 49],
  ['Ommwhelm-W.M', 1],
  ['M.W.', 24 * 20],
  ['Momwegwum-WM', 72],
  ['G.Q.', 30],
  ['Mowgwum-M.W.', 47],
] as const;
const tickets = ['Wamemwom-QW.', 'M.W.', 'Ommwhelm-W.M', 'A.K.', 'R.V.', 'Momwegwum-WM', 'H.J.'];

const keptFull = withSkinTests(
  withClosed(
    withClosed(withClosed(fullHouse, tickets, fullSalon, 1300), tickets, fullSalon, 1200),
    tickets.slice(0, 3),
    fullSalon,
    1160,
    sentHome,
  ),
  manyTests,
  fullSalon,
);

/** Away for two days after her strands were tested, and back at her chair. */
const awayFrom = (steps: readonly StoryStep[]) => [
  ...steps,
  event('PARKED', { untilAtMs: nowMs + hourMs }),
  event('RESUMED', {}, 51 * hourMs),
];
const backToday = awayFrom(until('OUTCOME_RECORDED', 'lengths'));
/** The same with a skin test that nobody has read. */
const backToRead = awayFrom(
  until('OUTCOME_RECORDED', 'lengths').map((step) =>
    step.raw.type === 'SKIN_TEST_NOTED'
      ? { ...step, raw: { ...step.raw, answers: { ...step.raw.answers, seen: 'notReadYet' } } }
      : step,
  ),
);

/** Each page of the settings. */
const sections = Object.keys(settingsSections);

/** Logs that cannot be taken up: no events, and one of a newer station. */
const unreadable = {
  'open-torn00000001': [{ type: 'OPENED' }],
  'open-torn00000002': [{ nothing: true }],
  'settings-old': [1],
};

/** The screens beside a client, each in each of its states. */
export const scenesBeside: Readonly<Record<BesideName, ScenesOf>> = {
  bar: {
    empty: scene(emptyHouse, bar),
    usual: scene(usualHouse, bar),
    full: scene(fullHouse, bar, ({ sayWho }) => sayWho(longName)),
    error: scene(usualHouse, `${bar} .refusal, .notice-bar, .field-refusal`, async (hand) => {
      await hand.open(4);
      await refuseWrites(hand.page);
      await hand.press('.step-content button[data-option]');
      await hand.page.locator('.notice-bar, .refusal').first().waitFor();
      await hand.act('bar');
    }),
    also: {
      new: scene(newHouse, bar),
      update: { ...scene(emptyHouse, '.update-line'), harm: letBuildWait },
      updateNew: { ...scene(newHouse, '.update-line'), harm: letBuildWait },
      soundToTry: scene(usualHouse, '.sound-check', ({ act }) => act('silence')),
      soundCheck: scene(emptyHouse, 'dialog[open] [data-act="sound-later"]', toSoundCheck),
      soundNotHeard: scene(emptyHouse, '.sound-check-parts ul', async (hand) => {
        await toSoundCheck(hand);
        await hand.act('try-sound');
        await hand.act('sound-not-heard');
      }),
      soundNoted: scene(fullHouse, '[data-check="notHeard"]', async (hand) => {
        await hand.page.keyboard.press('Shift');
        if (await hand.page.locator('.silence').isVisible()) await hand.act('silence');
        await toSoundCheck(hand);
        await hand.act('try-sound');
        await hand.act('sound-not-heard');
        await hand.act('close-dialog');
      }),
      soundSilent: scene(emptyHouse, '[data-sounded="no"]', async (hand) => {
        await toSoundCheck(hand);
        await breakSound(hand.page);
        await hand.act('try-sound');
      }),
      noLine: {
        ...scene(spokenHouse, '.tablet-note[data-tablet="ready"]', ({ page }) =>
          page.keyboard.press('Shift'),
        ),
        harm: keepAwake,
      },
      overrun: scene(alone(until('STRAND_STARTED'), 50 * minuteMs), '.strip[data-call="overrun"]'),
      lookDue: scene(alone(until('STRAND_STARTED'), 4 * minuteMs), '.strip[data-call="look"]'),
      ended: scene(alone(until('FINISHED')), '.ended-said', async (hand) => {
        await hand.open(3);
        await sayPlan(hand);
        await hand.act('give-plan');
      }),
    },
  },
  start: {
    empty: scene(emptyHouse, '[data-act="open"]', toStart),
    usual: scene(usualHouse, '[data-act="open"]', toStart),
    full: scene(fullHouse, '[data-act="open"]', toStart),
    error: scene(usualHouse, '.field-refusal, .refusal', async (hand) => {
      await toStart(hand);
      await hand.act('open');
    }),
    also: {
      sameAsLastTime: scene(withClosed(usualHouse, ['LM']), '[data-act="open-same"]', toBack),
      birthDate: scene(usualHouse, '[data-question="ticket"] .field-refusal', async (hand) => {
        await toStart(hand);
        await hand.type('[data-question="ticket"] input', '12.05.1990');
      }),
      stillReading: {
        ...scene(withClosed(usualHouse, ['LM']), '[data-still-reading] ~ p', async (hand) => {
          await toStart(hand);
          await hand.type('[data-question="ticket"] input', 'J.P.');
          await hand.press('[data-question="chair"] [data-option="8"]');
          await hand.act('open');
        }),
        harm: holdMonths,
      },
      taken: scene(usualHouse, '[data-same-ticket]', async (hand) => {
        await toStart(hand);
        await hand.type('[data-question="ticket"] input', 'Q.F.');
      }),
    },
  },
  lastVisit: scenesOfLastVisit,
  idle: scenesOfCover,
  pin: scenesOfPin,
  earlierClients: scenesOfEarlier,
  nothingNew: {
    empty: 'it shows last time, which is never empty',
    usual: scene(withClosed(usualHouse, ['LM']), '[data-act="nothing-new"]', async (hand) => {
      await toBack(hand);
      await hand.act('open-same');
    }),
    full: scene(withClosed(houseWithRoom, ['LM'], fullSalon), '[data-act="nothing-new"]', async (hand) => {
      await toBack(hand);
      await hand.act('open-same');
    }),
    error: scene(withClosed(usualHouse, ['LM']), '.refusal', async (hand) => {
      await toBack(hand);
      await hand.act('open-same');
      await refuseWrites(hand.page);
      await hand.press('[data-question="wetStretch"] [data-option="springsBack"]');
      await hand.act('nothing-new');
    }),
  },
  anotherDay: {
    empty: 'it reads aloud what was told, which is never nothing',
    usual: scene(alone(backToday, 50_000), '[data-act="nothing-new"]', ({ open }) => open(3)),
    full: scene(among(backToday, 50_000), '[data-act="nothing-new"]', ({ open }) => open(3)),
    error: scene(alone(backToday, 50_000), '.refusal', async (hand) => {
      await hand.open(3);
      await refuseWrites(hand.page);
      await hand.act('nothing-new');
    }),
    also: {
      skinTest: scene(alone(backToRead, 50_000), '[data-act="skin-test-nothing"]', ({ open }) => open(3)),
    },
  },
  parkedList: {
    empty: scene(emptyHouse, dialog, ({ act }) => act('parked')),
    usual: scene(usualHouse, dialog, ({ act }) => act('parked')),
    full: scene(fullHouse, dialog, ({ act }) => act('parked')),
    error: 'it shows what is stored and takes nothing',
    also: {
      cutting: scene(
        () => ({ ...usualHouse(), ...alone(cuttingKept, 1_000)() }),
        'dialog[open] [data-cutting]',
        ({ act }) => act('parked'),
      ),
      cuttingDue: scene(
        () => ({ ...usualHouse(), ...alone(cuttingKept, 25 * hourMs)() }),
        'dialog[open] [data-cutting] [data-late]',
        ({ act }) => act('parked'),
      ),
    },
  },
  skinTests: {
    empty: scene(emptyHouse, '[data-act="put-on"]', toSkinTests),
    usual: scene(withSkinTests(usualHouse, someTests), '[data-act="put-on"]', toSkinTests),
    full: scene(withSkinTests(fullHouse, manyTests, fullSalon), '[data-act="put-on"]', toSkinTests),
    error: scene(withSkinTests(usualHouse, someTests), '.refusal', async (hand) => {
      await toSkinTests(hand);
      await hand.press('[data-status="due"]');
      await refuseWrites(hand.page);
      await hand.act('skin-test-nothing');
      await hand.answerWho();
    }),
    also: {
      putOn: scene(emptyHouse, '[data-act="skin-test-keep"]', async (hand) => {
        await toSkinTests(hand);
        await hand.act('put-on');
        await hand.answerWho('[data-act="skin-test-keep"]');
      }),
      due: scene(withSkinTests(usualHouse, someTests), '[data-act="skin-test-nothing"]', async (hand) => {
        await toSkinTests(hand);
        await hand.press('[data-status="due"]');
      }),
      waiting: scene(withSkinTests(usualHouse, someTests), '[data-act="take-back"]', async (hand) => {
        await toSkinTests(hand);
        await hand.press('[data-status="waiting"]');
      }),
      cameIn: scene(withSkinTests(usualHouse, cameIn), '[data-act="take-back"]', async (hand) => {
        await toSkinTests(hand);
        await hand.press('[data-status="waiting"]');
      }),
      listsCameIn: scene(withSkinTests(usualHouse, cameIn), '[data-act="put-on"]', toSkinTests),
      takeBack: scene(withSkinTests(usualHouse, someTests), '.sheet', async (hand) => {
        await toSkinTests(hand);
        await hand.press('[data-status="waiting"]');
        await hand.act('take-back');
      }),
    },
  },
  skinTestOfClient: {
    empty: scene(alone(until('OPENED')), '[data-act="skin-test-keep"]', toHerSkinTest),
    usual: scene(alone(until('SKIN_TEST_NOTED')), '[data-act="skin-test-back"]', toHerSkinTest),
    full: scene(among(until('SKIN_TEST_NOTED')), '[data-act="skin-test-back"]', toHerSkinTest),
    error: scene(alone(until('OPENED')), '.refusal, .field-refusal', async (hand) => {
      await toHerSkinTest(hand);
      await refuseWrites(hand.page);
      await hand.act('skin-test-keep');
    }),
    also: {
      cameIn: scene(
        withSkinTests(alone(until('OPENED')), cameIn),
        '[data-act="skin-test-back"]',
        toHerSkinTest,
      ),
      notHers: scene(alone(until('SKIN_TEST_NOTED')), '.sheet', async (hand) => {
        await toHerSkinTest(hand);
        await hand.act('skin-test-not-hers');
      }),
      wronglyNoted: scene(alone(until('SKIN_TEST_NOTED')), '[data-act="skin-test-leave"]', async (hand) => {
        await toHerSkinTest(hand);
        await hand.act('skin-test-correct');
      }),
      putOn: scene(among(until('OPENED')), '[data-act="skin-test-keep"]', toHerSkinTest),
    },
  },
  settings: {
    empty: scene(newHouse, 'main[data-step="settings"]', async ({ act, type, press }) => {
      await act('settings');
      const name = '[data-question="name"] :is(input, textarea)';
      await type(name, 'Opal');
      await press('[data-act="keep-name"]');
    }),
    usual: scene(emptyHouse, 'main[data-step="settings"]', toSettings),
    full: scene(fullHouse, 'main[data-step="settings"]', toSettings),
    error: scene(emptyHouse, 'main[data-step="settings"]', async (hand) => {
      await toSettings(hand);
      await refuseWrites(hand.page);
      await hand.act('save-settings');
    }),
    also: {
      ...Object.fromEntries(
        [...sections, 'tablet', 'backup', 'practice', 'diagnosis'].map((section) => [
          section,
          scene(fullHouse, 'main[data-step="settings"] [data-act="all-settings"]', async (hand) => {
            await toSettings(hand);
            await hand.act(`section-${section}`);
          }),
        ]),
      ),
      undo: scene(fullHouse, '[data-act="undo-settings"]', saveChairs),
      undone: scene(fullHouse, '[data-act="undo-settings"]', async (hand) => {
        await saveChairs(hand);
        await hand.act('all-settings');
        await hand.act('undo-settings');
      }),
      ...scenesOfBackup,
      ...scenesOfRecords,
      ...scenesOfOthers,
      backupWays: {
        ...scene(emptyHouse, '[data-act="share"]', async (hand) => {
          await toSettings(hand);
          await hand.act('section-backup');
        }),
        harm: offerWays,
      },
      spray: scene(emptyHouse, '.spray-page', (hand) => toSpray(hand, 2)),
      sprayOfMaker: scene(emptyHouse, '.spray-page', (hand) => toSpray(hand, 3)),
      sprayFull: scene(fullHouse, '.spray-page', (hand) => toSpray(hand, 6)),
      sprayEmpty: scene(emptyHouse, '.spray-page', async (hand) => {
        await toSpray(hand, 2);
        await hand.type('.list-box', '');
      }),
      sprayRefused: scene(emptyHouse, '.spray-page', async (hand) => {
        await toSpray(hand, 2);
        await hand.type('.list-box', 'AQUA, '.repeat(8_000));
        await hand.type('[data-question="shelf.2.makerSaysUpToC"] input', '900');
        await hand.act('save-settings');
      }),
    },
  },
  whyOfHair: {
    empty: 'where nothing was told there is no figure to ask why of',
    usual: whyOfHair(untilAnswered('hotTools')),
    full: whyOfHair([...untilConfirmed('client'), manyTools]),
    error: 'it shows what was told and takes nothing',
  },
  whyOfSpray: {
    empty: 'without a list there is nothing to ask why of',
    usual: whyOf('Cove mist'),
    full: whyOf(longSpray),
    error: 'it shows what is kept and takes nothing',
  },
  warmthTrial: {
    empty: scene(emptyHouse, '.trial-rules', (hand) => toTrial(hand, 2)),
    usual: scene(emptyHouse, '.trial-run', async (hand) => {
      await toTrial(hand, 2);
      await runFor(hand, 12);
    }),
    full: scene(fullHouse, '[data-told]', async (hand) => {
      await toTrial(hand, 6);
      await runFor(hand, 12);
      await hand.act('warm');
      await runFor(hand, 30);
      await hand.act('warm');
    }),
    error: scene(fullHouse, '.trial-run[data-tone="over"]', async (hand) => {
      await toTrial(hand, 6);
      await runFor(hand, 31);
    }),
    also: {
      between: scene(emptyHouse, '[data-arm="bare"]', async (hand) => {
        await toTrial(hand, 2);
        await runFor(hand, 12);
        await hand.act('warm');
      }),
    },
  },
  measure: scenesOfMeasure,
  strandCard: scenesOfCard,
  setRuler: scenesOfSetRuler,
  day: {
    empty: scene(emptyHouse, 'main[data-step="day"]', ({ act }) => act('day')),
    usual: scene(withClosed(usualHouse, tickets.slice(3, 5)), 'main[data-step="day"]', ({ act }) =>
      act('day'),
    ),
    full: scene(withClosed(fullHouse, tickets, fullSalon), 'main[data-step="day"]', ({ act }) => act('day')),
    error: {
      ...scene(withClosed(usualHouse, tickets.slice(3, 5)), '[data-hand-over]', async ({ act }) => {
        await act('day');
        await act('into-folder');
      }),
      harm: offerWays,
    },
    also: {
      ways: {
        ...scene(withClosed(usualHouse, tickets.slice(3, 5)), '[data-act="share"]', ({ act }) => act('day')),
        harm: offerWays,
      },
      choose: scene(withClosed(usualHouse, tickets.slice(3, 5)), '.choose-days', async ({ act }) => {
        await act('day');
        await act('day-choose');
      }),
      chooseRefused: scene(withClosed(usualHouse, tickets.slice(3, 5)), '[data-refused]', async ({ act }) => {
        await act('day');
        await act('day-choose');
        await act('day-back');
      }),
      chosen: scene(withClosed(usualHouse, tickets.slice(3, 5)), 'main[data-step="day"]', async ({ act }) => {
        await act('day');
        await act('day-choose');
        for (const _day of ['yesterday', 'the day before']) await act('from-back');
        await act('show-days');
      }),
      goneOn: scene(alone(backToday, 50_000), '[data-panel="gone-on"]', async ({ act }) => {
        await act('day');
        for (const _day of ['yesterday', 'the day of her strands']) await act('day-before');
      }),
    },
  },
  taught: scenesOfTaught,
  press: scenesOfPress,
  bench: scenesOfBench,
  recordsKept: {
    empty: scene(emptyHouse, keptPage, toKept),
    usual: scene(keptUsual, keptPage, toKept),
    full: scene(keptFull, keptPage, toKept),
    error: scene(keptUsual, '[data-unfinished]', async (hand) => {
      await toHers(hand);
      await hand.act('kept-go-on');
      await hand.press('[data-question="code"] [data-option="sheAsked"]');
      await refuseRewriting(hand.page);
      await hand.hold('[data-act="erase-for-good"]');
    }),
    also: {
      find: scene(keptUsual, '[data-found="3"]', toFound),
      findNothing: scene(keptUsual, '[data-found="0"]', async (hand) => {
        await toErase(hand);
        await hand.press('[data-key="X"]');
      }),
      pick: scene(keptUsual, '[data-kept]', toHers),
      pickOfOthers: scene(withUnjudged(keptUsual, 'lm'), '[data-kept="there001"]', toHers),
      pickPast: scene(keptFull, '[data-kept]', async (hand) => {
        await toKept(hand);
        await hand.act('look-at-past');
        await hand.answerWho('[data-kept]');
        await hand.press('[data-kept]');
      }),
      why: scene(keptUsual, '[data-question="code"]', async (hand) => {
        await toHers(hand);
        await hand.act('kept-go-on');
      }),
      erase: scene(keptUsual, '[data-act="erase-for-good"]', async (hand) => {
        await toHers(hand);
        await hand.act('kept-go-on');
        await hand.press('[data-question="code"] [data-option="sheAsked"]');
      }),
      notSaved: scene(keptUsual, '.refusal:not(:empty)', async (hand) => {
        await toHers(hand);
        await hand.act('kept-go-on');
        await hand.press('[data-question="code"] [data-option="sheAsked"]');
        await refuseWrites(hand.page);
        await hand.hold('[data-act="erase-for-good"]');
      }),
      whatStays: scene(keptUsual, dialog, async (hand) => {
        await toKept(hand);
        await hand.press('.explain');
      }),
    },
  },
  notices: {
    empty: 'without a notice there is no list of them',
    usual: scene(
      () => ({ ...usualHouse(), 'open-torn00000001': unreadable['open-torn00000001'] }),
      '.notice-list',
      ({ act }) => act('read-notices'),
    ),
    full: scene(
      () => ({ ...fullHouse(), ...unreadable }),
      '.notice-list',
      ({ act }) => act('read-notices'),
    ),
    error: 'every notice is one',
    also: {
      bar: scene(() => ({ ...usualHouse(), ...unreadable }), '.notice-bar'),
      jumped: {
        ...scene(withSkinTests(usualHouse, [['W.K.', 40]]), '[data-act="clock-put-ahead"]', ({ act }) =>
          act('read-notices'),
        ),
        harm: (page) => jumpAhead(page, nowMs - 5 * minuteMs, 9 * hourMs),
      },
    },
  },
  clockDoubt: {
    empty: 'without a client nobody is asked',
    usual: { ...scene(usualHouse, 'main'), atMs: nowMs - 9 * minuteMs },
    full: { ...scene(fullHouse, 'main'), atMs: nowMs - 26 * hourMs },
    error: {
      ...scene(usualHouse, 'main', async (hand) => {
        await refuseWrites(hand.page);
        await hand.press('main [data-kind="primary"], main .hold-button');
        await hand.press('[data-act="who-Opal"]');
      }),
      atMs: nowMs - 9 * minuteMs,
    },
  },
  watching: {
    empty: { ...scene(emptyHouse, '[data-mode="watching"]'), harm: writeElsewhere },
    usual: { ...scene(usualHouse, '[data-mode="watching"]'), harm: writeElsewhere },
    full: { ...scene(fullHouse, '[data-mode="watching"]'), harm: writeElsewhere },
    error: 'it takes nothing, so nothing is refused',
    also: {
      client: {
        ...scene(fullHouse, 'main[data-step="decision"]', ({ press }) => press('.place[data-chair="3"]')),
        harm: writeElsewhere,
      },
    },
  },
  starting: {
    empty: { ...scene(emptyHouse, '[data-mode="starting"]'), harm: neverOpen },
    usual: 'nothing is read yet, so all of them look alike',
    full: 'as its usual state',
    error: 'that is noStore',
  },
  noStore: {
    empty: 'it is an error',
    usual: 'it is an error',
    full: 'it is an error',
    error: { ...scene(emptyHouse, '[data-mode="noStore"]'), harm: refusePlace },
  },
  stillReading: {
    empty: 'where nothing closed earlier there is nothing to be read',
    usual: {
      ...scene(withClosed(usualHouse, tickets.slice(3, 5)), 'main[data-step="stillReading"]', ({ act }) =>
        act('day'),
      ),
      harm: holdMonths,
    },
    full: {
      ...scene(withClosed(fullHouse, tickets, fullSalon), 'main[data-step="stillReading"]', ({ act }) =>
        act('day'),
      ),
      harm: holdMonths,
    },
    error: 'a month that cannot be read is named among the notices, and the next one is read',
    also: {
      backup: {
        ...scene(withClosed(usualHouse, ['LM']), '.still-reading', async (hand) => {
          await toSettings(hand);
          await hand.act('section-backup');
        }),
        harm: holdMonths,
      },
    },
  },
  who: {
    empty: scene(newHouse, dialog, ({ act }) => act('who')),
    usual: scene(emptyHouse, dialog, ({ act }) => act('who')),
    full: scene(fullHouse, dialog, ({ act }) => act('who')),
    error: scene(newHouse, dialog, async ({ act }) => {
      await act('who');
      await act('keep-name');
    }),
  },
  moreForClient: {
    empty: scene(alone(until('OPENED')), dialog, (hand) => toMore(hand)),
    usual: scene(alone(until('DECIDED')), dialog, (hand) => toMore(hand)),
    full: scene(fullHouse, dialog, (hand) => toMore(hand)),
    error: scene(alone(until('DECIDED')), '[data-question="reason"][data-refused]', async (hand) => {
      await toMore(hand, 'end');
      await hand.hold('[data-act="WE_SAID_NO"]');
    }),
    also: {
      back: scene(alone(until('DECIDED')), '[data-panel="back"]', (hand) => toMore(hand, 'back')),
      park: scene(fullHouse, '[data-panel="park"]', (hand) => toMore(hand, 'park')),
      end: scene(fullHouse, '[data-panel="end"]', (hand) => toMore(hand, 'end')),
      tells: scene(fullHouse, '[data-panel="tells-of"]', (hand) => toMore(hand, 'tells')),
      glass: scene(alone(inGlass), '[data-panel="glass-reacted"]', (hand) => toMore(hand, 'glass')),
      ...Object.fromEntries(
        cautionMoments.map((moment) => [
          `cautions-${moment}`,
          scene(fullHouse, '[data-panel="cautions"] [data-stated]', async (hand) => {
            await toMore(hand, 'cautions');
            await hand.act(`cautions-${moment}`);
          }),
        ]),
      ),
      mistake: scene(alone(until('OPENED')), '[data-panel="mistake"]', (hand) => toMore(hand, 'mistake')),
    },
  },
  lessons: scenesOfLessons,
  lesson: scenesOfLesson,
  debrief: scenesOfDebrief,
  trainer: scenesOfTrainer,
  ownLessons: scenesOfOwnLessons,
  demo: {
    empty: 'an empty station offers it: see bar, new',
    usual: scene(newHouse, '.demo-ribbon', toDemo),
    full: scene(newHouse, 'main[data-consultation]', async (hand) => {
      await toDemo(hand);
      await hand.press('.place:not(.place-free)');
    }),
    error: 'it is there whole or not at all: tests/browser/demo.test.ts',
    also: {
      leaving: scene(newHouse, `${dialog} [data-act="remove-demo"]`, async (hand) => {
        await toDemo(hand);
        await hand.act('leave-demo');
      }),
    },
  },
};

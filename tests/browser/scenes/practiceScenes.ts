import type { Page } from 'playwright-core';
import { advance, type Consultation } from '../../../machines/consultation/consultation';
import { settleLesson } from '../../../machines/practice/practiceRoom';
import { beganAtMs, type Sat, sitThrough as sit } from '../../../machines/practice/sitThrough';
import { lessons } from '../../../seeds/practice/lessons';
import { salon } from '../../../seeds/salon';
import { classify, type RawEvent } from '../../../shared/records/classify';
import { closeRecord } from '../../../shared/records/closedRecord';
import { makePracticeId, nameLessonLog, PRACTICE_LOG } from '../../../shared/records/practiceId';
import type { Settings } from '../../../shared/records/settings';
import { nameClosedLog, nameOpenLog, SETTINGS_LOG } from '../../../src/station/logNames';
import { places } from '../../../src/storage/edition';
import { careless, perfect, type Trainee } from '../../machines/practice/trainee';
import { type Logs, writeLogs } from '../memory';
import { refuseWrites } from './harms';
import { emptyHouse } from './houses';
import type { Scene, ScenesOf } from './scene';
import type { SceneHand } from './sceneHand';

const minuteMs = 60_000;

const findLesson = (id: string) => {
  const found = lessons.find(({ lesson }) => lesson.id === id);
  if (found === undefined) throw new Error(`no lesson ${id}`);
  return found.lesson;
};

/** A sitting of a lesson of this name, as a trainee like this one leaves it. */
const sat = (id: string, trainee: Trainee): Sat => sit(findLesson(id), trainee, 7, salon);

/** One more tap after all that was done, so much later. */
function goOn({ consultation, settings }: Sat, raw: RawEvent, afterMs = 1_000): Consultation {
  const atMs = consultation.record.newestAtMs + afterMs;
  const context = { settings, settingsId: 0, atMs, by: 'Trainee', inheritsStop: false };
  const event = classify(consultation.record, raw, context);
  const next = event.ok ? advance(consultation, event.value) : event;
  if (!next.ok) throw new Error(`${raw.type}: ${JSON.stringify(next.error)}`);
  return next.value;
}

/** Somebody practised alone: her own name, and the clock at the tablet's own pace. */
const keepPractice = (settings: Settings): Logs => ({
  [SETTINGS_LOG]: [{ settings: { ...settings, staff: ['Opal'] }, by: 'Opal', atMs: beganAtMs - 1_000 }],
  [PRACTICE_LOG]: [
    { v: 1, type: 'SPEED_SET', payload: { times: 1 }, atMs: beganAtMs - minuteMs, by: 'Opal' },
  ],
});

/** Whatever was closed of these sittings, and how their logs ended. */
function closedOf(all: readonly (readonly [id: string, sitting: Sat])[]): Logs {
  const logs: Record<string, unknown[]> = {};
  for (const [name, sitting] of all) {
    const id = makePracticeId(name.toLowerCase());
    const isOver = sitting.consultation.record.ended !== null;
    const over = isOver
      ? sitting.consultation
      : goOn(sitting, { type: 'CALLED_OFF', answers: { reason: 'other' } });
    const closed = closeRecord({ ...over.record, id }, over.log);
    if (closed === null) throw new Error(`${name} is not over`);
    const month = nameClosedLog(closed.endedAtMs);
    logs[month] = [...(logs[month] ?? []), closed];
    logs[nameLessonLog(id)] = [...sitting.practiceLog];
  }
  return logs;
}

/** A sitting up to, and without, the first event of this type, or that confirms this step; and when its last one was. */
function upTo(name: string, sitting: Sat, what: string): { readonly logs: Logs; readonly atMs: number } {
  const at = sitting.consultation.log.findIndex(
    (event) => event.type === what || (event.type === 'STEP_CONFIRMED' && event.payload.step === what),
  );
  const log = sitting.consultation.log.slice(0, at === -1 ? undefined : at);
  const id = makePracticeId(name.toLowerCase());
  const begun = sitting.practiceLog.filter(({ type: of }) => of === 'LESSON_BEGUN');
  return {
    logs: { [nameOpenLog(id)]: log, [nameLessonLog(id)]: begun },
    atMs: log.at(-1)?.atMs ?? beganAtMs,
  };
}

/** Practice stands on this tablet, beside a salon that was set up. */
const inPractice =
  (logs: Logs, settings: Settings = salon) =>
  async (page: Page): Promise<void> => {
    await writeLogs(page, { ...keepPractice(settings), ...logs }, undefined, places.practice);
    await page.evaluate(async () => {
      await (await navigator.storage.getDirectory()).getFileHandle('practice-is-on', { create: true });
    });
  };

const scene = (logs: Logs, shows: string, atMs: number, go?: Scene['go'], settings?: Settings): Scene => ({
  logs: emptyHouse,
  harm: inPractice(logs, settings),
  atMs,
  shows,
  ...(go === undefined ? {} : { go }),
});

const later = beganAtMs + 600 * minuteMs;
const home = '[data-step="lessons"] .lesson-tile';

const safe = sat('safeClient', perfect);
const curls = sat('wetIronedCurls', careless);
const tattoo = sat('blackTattoo', perfect);
const three = sat('bleachedThreeTimes', careless);
const done = closedOf([
  ['safeClient', safe],
  ['wetIronedCurls', curls],
  ['blackTattoo', tattoo],
  ['bleachedThreeTimes', three],
]);

const asking = upTo('wetIronedCurls', curls, 'ANSWERED');
const toHint = upTo('wetIronedCurls', curls, 'hotTools');
const toFeel = upTo('wetIronedCurls', curls, 'feelHair');
const toOutcome = upTo('wetIronedCurls', sat('wetIronedCurls', perfect), 'OUTCOME_RECORDED');
const inGlass = upTo('compoundHenna', sat('compoundHenna', perfect), 'INCOMPATIBILITY_READ');
const running = upTo('wetIronedCurls', sat('wetIronedCurls', perfect), 'LOOKED');
const settled = (id: string) => settleLesson(findLesson(id), salon);

/** The lengths of a client whose strands held: weighed and on, and then rinsed. */
function colour(sitting: Sat) {
  const bowl = {
    zone: 'lengths',
    shades: [{ shade: 'Sandbar powder', parts: '1' }],
    ...{
      colourG: '40',
      line: 'Sandbar powder',
      developerPercent: '3',
      ratio: '2',
      heat: 'none',
      minutes: '20',
    },
  };
  const further = (before: Sat, raw: RawEvent, afterMs: number): Sat => ({
    ...before,
    consultation: goOn(before, raw, afterMs),
  });
  const weighed = further(sitting, { type: 'BOWL_WEIGHED', answers: bowl }, minuteMs);
  const applied = { zone: 'lengths', skinFirst: 'calm' };
  const on = further(weighed, { type: 'BOWL_APPLIED', answers: applied }, minuteMs);
  const rinsed = further(on, { type: 'BOWL_RINSED', answers: { zone: 'lengths' } }, 20 * minuteMs);
  return { on: upTo('safeClient', on, 'never'), rinsed: upTo('safeClient', rinsed, 'never') };
}
const head = colour(safe);

const goOnWith = async ({ act, page, answerWho }: SceneHand) => {
  await act('go-on-lesson');
  await answerWho('main[data-consultation]');
  await page.locator('main[data-consultation]').waitFor();
};
const toBegin = async ({ act, page }: SceneHand) => {
  await page.locator(home).first().waitFor();
  await act('lesson-wetIronedCurls');
};
const toDebrief = (id: string) => async (hand: SceneHand) => {
  await hand.page.locator(home).first().waitFor();
  await hand.act(`lesson-${id}`);
  await hand.act('last-debrief');
};

/** The home of practice: its lessons, and what is asked over them. */
export const scenesOfLessons: ScenesOf = {
  empty: scene({}, home, later),
  usual: scene(done, `${home}[data-result="passed"]`, later),
  full: scene(
    { ...done, ...asking.logs },
    '[data-line="under-way"]',
    asking.atMs + minuteMs,
    undefined,
    settled('wetIronedCurls'),
  ),
  error: scene({}, 'dialog[open] .refusal:not(:empty)', later, async (hand) => {
    await toBegin(hand);
    await refuseWrites(hand.page);
    await hand.act('begin-hints');
    await hand.answerWho();
  }),
  also: {
    begin: scene(done, 'dialog[open] [data-act="begin-hints"]', later, toBegin),
    leaveOff: scene(
      asking.logs,
      'dialog[open] [data-act="leave-off-now"]',
      asking.atMs + minuteMs,
      ({ act }) => act('leave-off'),
      settled('wetIronedCurls'),
    ),
    leaving: scene({}, 'dialog[open] [data-act="leave-practice-now"]', later, ({ act }) =>
      act('leave-practice'),
    ),
  },
};

/** A lesson under way, on the screens of the salon. */
export const scenesOfLesson: ScenesOf = {
  empty: 'it is begun from the list: see lessons, begin',
  usual: scene(asking.logs, '.heard', asking.atMs + minuteMs, goOnWith, settled('wetIronedCurls')),
  full: scene(
    running.logs,
    '.strip, [data-step="processing"]',
    running.atMs + 2 * minuteMs,
    goOnWith,
    settled('wetIronedCurls'),
  ),
  error: 'its screens are those of the salon, and so are their refusals',
  also: {
    asked: scene(asking.logs, '.heard', asking.atMs + minuteMs, goOnWith, settled('wetIronedCurls')),
    askedTools: scene(
      toHint.logs,
      'main[data-step="hotTools"]',
      toHint.atMs + minuteMs,
      goOnWith,
      settled('wetIronedCurls'),
    ),
    felt: scene(
      toFeel.logs,
      'main[data-step="feelHair"]',
      toFeel.atMs + minuteMs,
      goOnWith,
      settled('wetIronedCurls'),
    ),
    outcome: scene(
      toOutcome.logs,
      '[data-seen="strand"], [data-broke]',
      toOutcome.atMs + minuteMs,
      goOnWith,
      settled('wetIronedCurls'),
    ),
    glass: scene(
      inGlass.logs,
      '[data-seen="glass"]',
      inGlass.atMs + 12 * minuteMs,
      goOnWith,
      settled('compoundHenna'),
    ),
    skinTest: scene(
      asking.logs,
      '[data-seen="skinTest"]',
      asking.atMs + minuteMs,
      async (hand) => {
        await goOnWith(hand);
        await hand.press('[data-ledger="summary"]');
        await hand.act('skin-test');
      },
      settled('wetIronedCurls'),
    ),
    bar: scene(
      running.logs,
      'main.bar',
      running.atMs + 4 * minuteMs,
      ({ act }) => act('bar'),
      settled('wetIronedCurls'),
    ),
    look: scene(
      running.logs,
      '[data-seen="strand"]',
      running.atMs + 3 * minuteMs,
      async (hand) => {
        await goOnWith(hand);
        await hand.press('[data-act="look"]');
      },
      settled('wetIronedCurls'),
    ),
    headLook: scene(
      head.on.logs,
      '[data-seen="head"]',
      head.on.atMs + 15 * minuteMs,
      async (hand) => {
        await goOnWith(hand);
        await hand.act('look');
      },
      settled('safeClient'),
    ),
    headFelt: scene(
      head.rinsed.logs,
      '[data-act="keep-stretch"]',
      head.rinsed.atMs + 2 * minuteMs,
      async (hand) => {
        await goOnWith(hand);
        await hand.act('toner-lengths');
      },
      settled('safeClient'),
    ),
    hint: scene(
      toHint.logs,
      '[data-panel="passed-over"]',
      toHint.atMs + minuteMs,
      async (hand) => {
        await goOnWith(hand);
        await hand.act('next');
      },
      settled('wetIronedCurls'),
    ),
  },
};

/** How a lesson went. */
export const scenesOfDebrief: ScenesOf = {
  empty: 'what was left off at once has a debrief all the same: its questions are missed',
  usual: scene(done, '[data-step="debrief"] [data-panel="score"]', later, toDebrief('safeClient')),
  full: scene(done, '[data-step="debrief"] [data-how="missed"]', later, toDebrief('bleachedThreeTimes')),
  error: 'it shows what is kept and takes nothing',
};

const toTrainer = async ({ act, page }: SceneHand) => {
  await page.locator(home).first().waitFor();
  await act('trainer');
};
/** Both pages of it: each of these lessons three times. */
const manySat = closedOf(
  ['One', 'Two', 'Three'].flatMap((time) => [
    [`safe${time}`, safe] as const,
    [`curls${time}`, curls] as const,
    [`three${time}`, three] as const,
  ]),
);

/** Who learned what. */
export const scenesOfTrainer: ScenesOf = {
  empty: scene({}, '[data-step="trainer"] [data-line="nobody-yet"]', later, toTrainer),
  usual: scene(done, '[data-step="trainer"] [data-miss]', later, toTrainer),
  full: scene(manySat, '[data-step="trainer"] [data-act="more-trainees"]', later, toTrainer),
  error: 'it shows what is kept and takes nothing; what a file does not get to is said as on the day’s page',
};

const toOwnLessons = async (hand: SceneHand) => {
  await toTrainer(hand);
  await hand.act('own-lessons');
};

/** Lessons of the salon's own. */
export const scenesOfOwnLessons: ScenesOf = {
  empty: 'the lessons that are there from the start always stand in it',
  usual: scene({}, '[data-step="ownLessons"] [data-act="bring-lesson"]', later, toOwnLessons),
  full: scene({}, '[data-step="ownLessons"] [data-act="more-lessons"]', later, async (hand) => {
    await toOwnLessons(hand);
    await hand.act('more-lessons');
  }),
  error: scene({}, '[data-step="ownLessons"] [data-line="refused"]:not(:empty)', later, async (hand) => {
    await toOwnLessons(hand);
    await hand.page.locator('[data-file=bring-lesson]').setInputFiles({
      name: 'lesson.json',
      mimeType: 'application/json',
      buffer: Buffer.from('{"format":'),
    });
  }),
};

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { findQuestion } from '../../../machines/practice/asking';
import { debrief } from '../../../machines/practice/debrief';
import { flagIds, type Lesson } from '../../../machines/practice/lesson';
import { failings } from '../../../machines/practice/passing';
import { checkLesson, readLesson } from '../../../machines/practice/readLesson';
import { readTruth } from '../../../machines/practice/readTruth';
import { sitThrough as sit } from '../../../machines/practice/sitThrough';
import type { LessonStory } from '../../../seeds/practice/lessonSeed';
import { lessons } from '../../../seeds/practice/lessons';
import { listRedFlags } from '../../../shared/judgement/risk';
import { isAbsoluteRule } from '../../../shared/judgement/rules';
import { judgeSkinTest } from '../../../shared/judgement/skinTest';
import { listStops } from '../../../shared/judgement/stops';
import type { Answers } from '../../../shared/records/forms/asked';
import { defaultSettings } from '../../../shared/records/settings';
import { follow } from '../../machines/practice/trainee';
import { listOpenQuestions } from '../../shared/records/openQuestions';

/** Every source that a lesson may call published; each stands in the list of evidence of this project. */
const published: readonly string[] = [
  'Christian, Winsey, Whatmough, Cornwell, J. Cosmet. Sci. 62:15–27, 2011, Table III',
  'Wortmann, Springob, Sendelbach, J. Cosmet. Sci. 53:219–228, 2002, Fig. 4',
  'Wortmann, Springob, Sendelbach, J. Cosmet. Sci. 53:219–228, 2002, Table I',
  'McMullen & Jachowicz, Thermal degradation of hair II, J. Cosmet. Sci. 49:245–256, 1998, pp. 248–249',
  'Loussouarn, El Rawadi, Genain, Int. J. Dermatol. 44(Suppl 1):6–9, 2005, Table 1',
  'IAPWS R7-97(2012) with the U.S. Standard Atmosphere 1976',
  'J. Soc. Cosmet. Chem. 17:769–787, 1966, Table I',
  'Kroh, Food Chem. 51:373–379, 1994',
  'Timpe, Formaldehyde generation from silicone rubber',
  'ECHA registration dossier 14807',
  'OSHA hazard alert 2011; 29 CFR 1910.1048',
  'Reg. (EC) 1223/2009 Annex III label text',
  'Pang & Fiume, Int. J. Toxicol. 20(S3):7–21, 2001',
  'Cosmetics Europe 2023',
  'Coenraads et al., Dermatitis 2018, doi 10.1097/DER.0000000000000405',
  'a table of ethanol–water flash points, publisher not named',
];

/** One mark for each claim of a flag: the first bare, each other after what it is for. */
const listMarks = (mark: string): readonly string[] =>
  mark.split(' · ').map((part, at) => (at === 0 ? part : part.replace(/^[^:]+: /, '')));

/** Stands in the mark of what says where a refused client goes. */
const WHERE_NEXT = ' · where she goes next: ';

const flags = lessons.flatMap(({ lesson }) =>
  lesson.flags.map((flag) => ({ of: lesson.id, ...flag, name: `${lesson.id} ${flag.id}` })),
);

/** A sitting whose draw stays the same. */
const SITTING = 1;

const play = (id: string, story: LessonStory) => {
  const lesson = lessons.find((each) => each.lesson.id === id)?.lesson;
  if (lesson === undefined) throw new Error(id);
  const sat = sit(lesson, follow(story), SITTING);
  const told = debrief(lesson, sat.practiceLog, sat.consultation.log, sat.settings);
  if (told === null) throw new Error(`${id} has no debrief`);
  return { told, sat };
};

describe('the lessons', () => {
  it('are the clients that every new hire has to have met, each but once', () => {
    expect(lessons.length).toBeGreaterThanOrEqual(16);
    const ids = lessons.map(({ lesson }) => lesson.id);
    const titles = lessons.map(({ lesson }) => lesson.title);
    expect(new Set(ids).size).toBe(ids.length);
    expect(new Set(titles).size).toBe(titles.length);
    expect(new Set(lessons.map(({ lesson }) => lesson.seat.ticket)).size).toBe(ids.length);
  });

  it.each(lessons.map(({ lesson }) => lesson))('$id can be played, and read back from JSON', (lesson) => {
    expect(checkLesson(lesson)).toMatchObject({ ok: true });
    expect(readLesson(JSON.stringify(lesson))).toEqual({ ok: true, value: lesson });
    const truth = readTruth(lesson);
    expect(truth.ok && listOpenQuestions(truth.value, defaultSettings)).toEqual([]);
  });

  it('say of each client something that she does not tell of herself', () => {
    for (const { lesson } of lessons) expect(Object.keys(lesson.says).length, lesson.id).toBeGreaterThan(0);
    const unsaid = lessons.filter(({ lesson }) =>
      Object.values(lesson.says).every(({ closer }) => closer === undefined),
    );
    // Her skin test shows it, whatever she says.
    expect(unsaid.map(({ lesson }) => lesson.id)).toEqual(['positiveSkinTest']);
  });
});

describe('a flag of a lesson', () => {
  it.each(flags)(
    '$name carries one of the four marks for each claim, each published one known',
    ({ mark }) => {
      for (const each of listMarks(mark)) {
        expect(each).toMatch(/^(published: .+|common practice, no source.*|from memory: .+|assumed: .+)$/);
        if (each.startsWith('published: ')) expect(published).toContain(each.slice('published: '.length));
      }
    },
  );

  it.each(flags)('$name is known by its name and asks what there is to ask', ({ id, asks }) => {
    expect(flagIds).toContain(id);
    for (const path of asks) expect(findQuestion(path), path).not.toBeNull();
  });

  it('uses every source of the list', () => {
    const used = flags.flatMap(({ mark }) => listMarks(mark)).map((each) => each.replace('published: ', ''));
    expect(published.filter((source) => !used.includes(source))).toEqual([]);
  });
});

describe('what is true of a client', () => {
  const knowTruth = (lesson: Lesson): Answers => {
    const truth = readTruth(lesson);
    if (!truth.ok) throw new Error(lesson.id);
    return truth.value;
  };

  it.each(lessons.map(({ lesson }) => lesson))(
    '$id: each red flag of her hair is one of the lesson',
    (lesson) => {
      const named: readonly string[] = lesson.flags.map(({ id }) => id);
      expect(listRedFlags(knowTruth(lesson)).filter((flag) => !named.includes(flag))).toEqual([]);
    },
  );

  it('is in one lesson a skin test that was put on too long ago to count', () => {
    const lapsesH = defaultSettings.profile.skinTestLapsesDays * 24;
    const lapsed = lessons.filter(({ lesson }) => (lesson.truth.skinTest?.hoursAgo ?? 0) > lapsesH);
    expect(lapsed.map(({ lesson }) => lesson.id)).toEqual(['lapsedSkinTest']);
    const story = lapsed[0]?.passes;
    if (story === undefined) throw new Error('no lesson of a lapsed skin test');
    const { told, sat } = play('lapsedSkinTest', story);
    expect(told.decision.mayMix).toEqual([]);
    const { record } = sat.consultation;
    expect(judgeSkinTest(record, sat.settings.profile, record.newestAtMs)).toBe('lapsed');
  });

  it('has put nothing on the skin of whoever is never to be coloured', () => {
    const tested = lessons.filter(
      ({ lesson }) =>
        lesson.truth.skinTest?.seen === 'nothing' &&
        listStops(knowTruth(lesson), defaultSettings).some(
          (rule) => rule !== 'stop.scalpBroken' && isAbsoluteRule(rule),
        ),
    );
    expect(tested.map(({ lesson }) => lesson.id)).toEqual([]);
  });

  it('is said with each temperature in °C and in °F, whatever this station shows', () => {
    let said = 0;
    for (const { lesson } of lessons)
      for (const { first, closer } of Object.values(lesson.says))
        for (const { words, means } of [first, closer ?? first])
          for (const [, settingC] of JSON.stringify(means).matchAll(/"settingC":"(\d+)"/g)) {
            said += 1;
            expect(words, lesson.id).toContain(`${settingC} °C`);
            expect(words, lesson.id).toContain(`${Math.round(Number(settingC) * 1.8 + 32)} °F`);
          }
    expect(said).toBeGreaterThan(5);
  });

  it('names no figure on sitting down, where nobody could ask in which unit', () => {
    for (const { lesson } of lessons)
      for (const text of [lesson.title, lesson.wants]) expect(text, lesson.id).not.toMatch(/\d/);
  });
});

describe('a story of a lesson', () => {
  it.each(lessons)('$lesson.id: $passes.title', ({ lesson, passes }) => {
    const { told, sat } = play(lesson.id, passes);
    expect(sat.refused).toEqual([]);
    expect(told.isPassed).toBe(true);
    expect(told.flags.filter(({ how }) => how !== 'seen')).toEqual([]);
    expect(told.score).toBe(100);
  });

  it.each(lessons)('$lesson.id: whoever is rightly refused is told where to go', ({ lesson, passes }) => {
    const { told } = play(lesson.id, passes);
    const isTold = lesson.flags.some(({ mark }) => mark.includes(WHERE_NEXT));
    expect(isTold).toBe(told.decision.suggested === 'weSayNo');
  });

  it.each(lessons)('$lesson.id fails: $fails.title', ({ lesson, fails }) => {
    const { told, sat } = play(lesson.id, fails);
    expect(sat.refused).toEqual([]);
    expect(told.isPassed).toBe(false);
    const missed = told.flags.filter(({ how }) => how === 'missed').map(({ flag }) => flag.id);
    if (failings.some((failing) => failing === fails.because)) {
      expect(told.failedBy).toContain(fails.because);
      expect(missed).toEqual([]);
    } else expect(missed).toContain(fails.because);
  });
});

it('the lessons are only data: nothing of the code is in them', () => {
  for (const { lesson } of lessons) expect(JSON.parse(JSON.stringify(lesson))).toEqual(lesson);
  const source = readFileSync(new URL('../../../seeds/practice/lessons.ts', import.meta.url), 'utf8');
  expect(source.match(/^import /gm)?.length).toBe(lessons.length + 1);
});

import type { Answers } from '../records/forms/asked';
import type { HabitAnswers, HotToolsAnswers } from '../records/forms/hotTools';
import type { LastTime } from '../records/lastTime';
import { findOwnChemistry } from '../records/nothingNew';
import { formPlanKey } from '../records/planKey';

/** What can be new since last time, so that what was found then says nothing of today. */
export const newThings = [
  'plan',
  'tool',
  'hotter',
  'wetter',
  'oftener',
  'smoke',
  'chemical',
  'bleach',
  'relaxed',
  'hair',
] as const;
export type NewThing = (typeof newThings)[number];

/** From harmless to harmful; who does not know is never better off than who does. */
const order = {
  wetness: ['dry', 'damp', 'wet', 'unknown'],
  smoke: ['no', 'smellsBurnt', 'smokes', 'unknown'],
  porosity: ['low', 'normal', 'high', 'unknown'],
  breakage: ['no', 'some', 'much', 'unknown'],
} as const;

const isWorse = (rising: readonly string[], today: string | undefined, then: string | undefined): boolean =>
  rising.indexOf(today ?? 'unknown') > rising.indexOf(then ?? 'unknown');

const isMore = (today: number | 'unknown', then: number | 'unknown'): boolean =>
  then !== 'unknown' && (today === 'unknown' || today > then);

/** She had stopped, and has taken it up again since: it was used after she had said so last time. */
const isTakenUp = (today: HabitAnswers, then: HabitAnswers): boolean => {
  const before = then.stoppedMonthsAgo ?? 0;
  const now = today.stoppedMonthsAgo ?? 0;
  return before !== 0 && before !== 'unknown' && (now === 'unknown' || now < before);
};

/** What is new about this tool against one of the same kind? For how long she has done so grows by itself. */
const compareHabit = (today: HabitAnswers, then: HabitAnswers): readonly NewThing[] => [
  ...(isTakenUp(today, then) ? (['oftener'] as const) : []),
  ...(isMore(today.settingC, then.settingC) ? (['hotter'] as const) : []),
  ...(isWorse(order.wetness, today.wetness, then.wetness) ? (['wetter'] as const) : []),
  ...(isMore(today.daysAWeek, then.daysAWeek) || isMore(today.secondsASection, then.secondsASection)
    ? (['oftener'] as const)
    : []),
];

function findNewHeat(last: Answers, today: Answers): readonly NewThing[] {
  const left = [...(last.hotTools?.habits ?? [])];
  return (today.hotTools?.habits ?? []).flatMap((habit): readonly NewThing[] => {
    const same = left
      .filter(({ tool }) => tool === habit.tool)
      .map((then) => ({ then, news: compareHabit(habit, then), spare: compareHabit(then, habit).length }))
      .sort((one, other) => one.news.length - other.news.length || one.spare - other.spare)[0];
    if (same === undefined) return ['tool'];
    left.splice(left.indexOf(same.then), 1);
    return same.news;
  });
}

/** From the narrowest to the widest, and to what nobody knows. */
const widening: readonly string[] = ['band', 'ends', 'roots', 'all', 'unknown'];

/** Was it bleached again, or more widely than was told, though the count stands? What this salon put on is no news. */
function isBleachedSince(last: LastTime, now: Partial<HotToolsAnswers>): boolean {
  const then = last.answers.hotTools ?? {};
  const [before, today] = [then.lastBleachMonthsAgo, now.lastBleachMonthsAgo];
  const isLater =
    before !== undefined &&
    before !== 'unknown' &&
    today !== undefined &&
    (today === 'unknown' || today < before);
  const isWider =
    then.bleachReach !== undefined &&
    widening.indexOf(now.bleachReach ?? 'unknown') > widening.indexOf(then.bleachReach);
  return findOwnChemistry(last) !== 'lightener' && (isLater || isWider);
}

function findNewChemistry(last: LastTime, today: Answers): readonly NewThing[] {
  const then = last.answers.hotTools;
  const now = today.hotTools;
  const known: readonly unknown[] = [...(then?.history ?? []), findOwnChemistry(last), 'none'];
  const isNew = (now?.history ?? ['unknown']).some((item) => !known.includes(item));
  return [
    ...(isNew ? (['chemical'] as const) : []),
    ...(isMore(now?.bleaches ?? 0, then?.bleaches ?? 0) || isBleachedSince(last, now ?? {})
      ? (['bleach'] as const)
      : []),
    ...((now?.relaxedWithinTwoWeeks ?? 'no') === 'no' ? [] : (['relaxed'] as const)),
  ];
}

function isHairWorse(last: Answers, today: Answers): boolean {
  const [then, now] = [last.feelHair, today.feelHair];
  const isCurlWorse =
    now?.curl !== then?.curl && (now?.curl === undefined || ['lostAtEnds', 'unknown'].includes(now.curl));
  return (
    isCurlWorse ||
    isWorse(order.porosity, now?.porosity, then?.porosity) ||
    isWorse(order.breakage, now?.breakage, then?.breakage)
  );
}

/**
 * What is new since last time? Nothing: the plan is the same, heat and hair are as told then or gentler, and nothing has
 * been on it but what this salon put on then. What she does not know today counts as new unless she knew it no better.
 * Checked in tests/shared/judgement/news.test.ts.
 */
export function findNews(last: LastTime, today: Answers): readonly NewThing[] {
  const { answers: then } = last;
  const isSamePlan =
    formPlanKey({ client: then.client ?? {} }) === formPlanKey({ client: today.client ?? {} });
  const found: readonly NewThing[] = [
    ...(isSamePlan ? [] : (['plan'] as const)),
    ...findNewHeat(then, today),
    ...(isWorse(order.smoke, today.hotTools?.smoke, then.hotTools?.smoke) ? (['smoke'] as const) : []),
    ...findNewChemistry(last, today),
    ...(isHairWorse(then, today) ? (['hair'] as const) : []),
  ];
  return newThings.filter((thing) => found.includes(thing));
}

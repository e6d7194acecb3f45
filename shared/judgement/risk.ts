import { isIron } from '../heat/habit';
import type { Answers } from '../records/forms/asked';
import type { ConsultationRecord } from '../records/record';
import { SOFTENING_C } from './chance/covariates';
import { judgeChance } from './chance/judgeChance';

export type Risk = 'low' | 'raised' | 'high';
export const risks = ['low', 'raised', 'high'] as const satisfies readonly Risk[];

/** What makes hair suspect. Which of these count is the trade's practice; none has a published weight. */
export const redFlags = [
  'ironedWet',
  'scorched',
  'bleachedTwice',
  'curlLost',
  'slowStretch',
  'breakage',
  'veryHot',
  'notKnown',
] as const;
export type RedFlag = (typeof redFlags)[number];

/** So many red flags make the risk high. Assumed because one may be chance, and strands have not taught better yet. */
export const ASSUMED_FLAGS_FOR_HIGH = 2;

/** Bleached so often, hair counts as suspect. Assumed because each bleach takes its share and two add up. */
export const ASSUMED_BLEACHES_SUSPECT = 2;

/** The first model that reckons a chance. */
const CHANCE_SINCE = 4;

type Habit = NonNullable<NonNullable<Answers['hotTools']>['habits']>[number];

/** A dryer leaves the cortex as it was: see shared/heat/habit.ts. */
const isHotTool = ({ tool }: Habit): boolean => isIron(tool);

/**
 * About how many of the things that make hair suspect did nobody know? Smoke, the setting of a hot tool, porosity, curl,
 * breakage, wet stretch; wet ironing and bleaching that nobody knows of are flags of their own.
 */
const countNotKnown = ({ hotTools, feelHair }: Answers): number => {
  const isSettingKnown = !(hotTools?.habits ?? []).some(
    (habit) => isHotTool(habit) && habit.settingC === 'unknown',
  );
  const { porosity, curl, breakage, wetStretch } = feelHair ?? {};
  const said = [hotTools?.smoke, porosity, curl, breakage, wetStretch];
  return said.filter((answer) => answer === 'unknown').length + (isSettingKnown ? 0 : 1);
};

/**
 * What speaks against this hair?
 * "Don't know" about wet ironing or bleaching counts as that flag; about smoke, setting, porosity, curl, breakage and
 * wet stretch as "not known": never as zero.
 * Above 400 °F the cortex softens: common practice, no source (shared/heat/thresholds.ts).
 */
export function listRedFlags(answers: Answers): readonly RedFlag[] {
  const { hotTools, feelHair } = answers;
  const ironed = (hotTools?.habits ?? []).filter(isHotTool);
  const bleaches = hotTools?.bleaches ?? 0;
  const found: Readonly<Record<RedFlag, boolean>> = {
    ironedWet: ironed.some(({ wetness }) => wetness !== 'dry'),
    scorched: hotTools?.smoke === 'smokes' || hotTools?.smoke === 'smellsBurnt',
    bleachedTwice: bleaches === 'unknown' || bleaches >= ASSUMED_BLEACHES_SUSPECT,
    curlLost: feelHair?.curl === 'lostAtEnds',
    slowStretch: feelHair?.wetStretch === 'staysLong' || feelHair?.wetStretch === 'snaps',
    breakage: feelHair?.breakage === 'some' || feelHair?.breakage === 'much',
    veryHot: ironed.some(({ settingC }) => settingC !== 'unknown' && settingC > SOFTENING_C),
    notKnown: countNotKnown(answers) > 0,
  };
  return redFlags.filter((flag) => found[flag]);
}

/** How many flags are raised, each thing that is not known by itself. */
function countFlags(answers: Answers): number {
  const known = listRedFlags(answers).filter((flag) => flag !== 'notKnown');
  return known.length + countNotKnown(answers);
}

/**
 * How careful must the test be? The more careful of the red flags' count and the chance that such strands break
 * (chance/judgeChance.ts), which came with model 4: what was weighed before that is judged by the flags alone. An estimate;
 * it never overrules the strand.
 * Each thing that is not known weighs at least as much as if it were bad: nobody is freer for not knowing, and a step
 * answered with "don't know" all over is no way round. Checked in tests/shared/judgement/risk.test.ts.
 */
export function judgeRisk({
  answers,
  modelVersion,
}: Pick<ConsultationRecord, 'answers' | 'modelVersion'>): Risk {
  const count = countFlags(answers);
  const byFlags: Risk = count >= ASSUMED_FLAGS_FOR_HIGH ? 'high' : count === 0 ? 'low' : 'raised';
  if (byFlags === 'high' || modelVersion < CHANCE_SINCE) return byFlags;
  const byChance = judgeChance(answers).word;
  return risks.indexOf(byChance) > risks.indexOf(byFlags) ? byChance : byFlags;
}

/** After how many minutes is a strand looked at again? 3 when the hair is suspect, else 5: common practice, no source. */
export const findLookEveryMin = (risk: Risk): '3' | '5' => (risk === 'low' ? '5' : '3');

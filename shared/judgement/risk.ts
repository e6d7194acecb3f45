import { heatThresholds } from '../heat/thresholds';
import type { Answers } from '../records/forms/asked';

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

const SOFTENING_C = heatThresholds.find(({ id }) => id === 'cortexSoftens')?.from ?? 0;

/** So many red flags make the risk high. Assumed because one may be chance, and strands have not taught better yet. */
export const ASSUMED_FLAGS_FOR_HIGH = 2;

/** Bleached so often, hair counts as suspect. Assumed because each bleach takes its share and two add up. */
export const ASSUMED_BLEACHES_SUSPECT = 2;

/**
 * What speaks against this hair?
 * "Don't know" about wet ironing or bleaching counts as that flag, about anything else as one more: never as zero.
 * Above 400 °F the cortex softens: common practice, no source (shared/heat/thresholds.ts).
 */
export function listRedFlags({ hotTools, feelHair }: Answers): readonly RedFlag[] {
  const isIronedWet = (hotTools?.habits ?? []).some(
    ({ tool, wetness }) => tool !== 'dryer' && wetness !== 'dry',
  );
  const bleaches = hotTools?.bleaches ?? 0;
  const found: Readonly<Record<RedFlag, boolean>> = {
    ironedWet: isIronedWet,
    scorched: hotTools?.smoke === 'smokes' || hotTools?.smoke === 'smellsBurnt',
    bleachedTwice: bleaches === 'unknown' || bleaches >= ASSUMED_BLEACHES_SUSPECT,
    curlLost: feelHair?.curl === 'lostAtEnds',
    slowStretch: feelHair?.wetStretch === 'staysLong' || feelHair?.wetStretch === 'snaps',
    breakage: feelHair?.breakage === 'some' || feelHair?.breakage === 'much',
    veryHot: (hotTools?.habits ?? []).some(
      ({ tool, settingC }) => tool !== 'dryer' && settingC !== 'unknown' && settingC > SOFTENING_C,
    ),
    notKnown: [hotTools?.smoke, feelHair?.curl, feelHair?.breakage, feelHair?.wetStretch].includes('unknown'),
  };
  return redFlags.filter((flag) => found[flag]);
}

/** How careful must the test be? An estimate from the red flags; it never overrules the strand. */
export function judgeRisk(answers: Answers): Risk {
  const count = listRedFlags(answers).length;
  if (count >= ASSUMED_FLAGS_FOR_HIGH) return 'high';
  return count === 0 ? 'low' : 'raised';
}

import { readHistory } from '../../hair/readHistory';
import { placeZone } from '../../hair/zonePlaces';
import { isIron } from '../../heat/habit';
import { computeProfile, type HairAt } from '../../heat/profile';
import { heatThresholds } from '../../heat/thresholds';
import { TRYPTOPHAN_MOST_MEASURED } from '../../heat/tryptophan';
import type { Answers } from '../../records/forms/asked';
import type { Zone } from '../../records/zones';
import type { Range } from '../../units/range';
import { listPlannedZones } from '../plannedZones';

/** What bears on the chance that a strand breaks, in the order of every vector of it. */
export const covariateNames = [
  'helixLost',
  'tryptophanLost',
  'ironedWet',
  'scorched',
  'bleaches',
  'curlLost',
  'slowStretch',
  'porous',
  'breakage',
  'veryHot',
  'smoothing',
  'relaxer',
  'strangeColour',
] as const;
export type CovariateName = (typeof covariateNames)[number];

/** How much of one thing there is, from 0, nothing of it, to 1, the worst that is counted; and how sure that is. */
export interface Covariate {
  readonly value: number;
  /** As a standard deviation; 0 where it was told. */
  readonly spread: number;
  /** More than anybody measured: counted as the most that was, and said so. */
  readonly isBeyond?: true;
}
export type Covariates = Readonly<Record<CovariateName, Covariate>>;

/** So many bleaches are the worst that is counted. Assumed because hair bleached oftener is rarely there to be tested. */
export const ASSUMED_BLEACHES_WORST = 4;

/**
 * "Don't know" stands at the bad answer, this far spread: two of them lead back to the middle. Assumed because nobody
 * may be freer for not knowing, and because the truth lies somewhere from the middle to the bad.
 */
export const ASSUMED_NOT_KNOWN: Covariate = { value: 1, spread: 0.25 };

/** Along the strand the weakest place is sought every so many cm. Assumed because a chance this wide needs no finer one. */
export const ASSUMED_CHANCE_EVERY_CM = 2;

/** A band from least to most counts as so many standard deviations. Assumed because its ends are rare, not impossible. */
export const ASSUMED_BAND_IN_SDS = 4;

/** How much of the worst each answer is. Assumed because no paper weighs them; what matters is their order. */
export const ASSUMED_ANSWER_SHARES = {
  wetness: { dry: 0, damp: 0.7, wet: 1, unknown: 1 },
  smoke: { no: 0, smokes: 1, smellsBurnt: 1 },
  curl: { straight: 0, sameAlong: 0, lostAtEnds: 1 },
  wetStretch: { springsBack: 0, staysLong: 0.6, snaps: 1 },
  porosity: { low: 0, normal: 0, high: 1 },
  breakage: { no: 0, some: 0.5, much: 1 },
  relaxer: { relaxer: 1, perm: 0.6 },
} as const;
const shares = ASSUMED_ANSWER_SHARES;

const nothing: Covariate = { value: 0, spread: 0 };
const told = (value: number): Covariate => ({ value, spread: 0 });
const worse = (one: Covariate, other: Covariate): Covariate => (other.value > one.value ? other : one);

/** Above this setting the cortex softens: shared/heat/thresholds.ts. */
export const SOFTENING_C = heatThresholds.find(({ id }) => id === 'cortexSoftens')?.from ?? 0;

/** One answer by its share. What was not asked yet says nothing; "don't know" is never nothing. */
const share = <K extends string>(
  of: Readonly<Record<K, number>>,
  answer: K | 'unknown' | undefined,
): Covariate =>
  answer === undefined ? nothing : answer === 'unknown' ? ASSUMED_NOT_KNOWN : told(of[answer]);

/** Did nobody know something that the dose hangs on? Passes are left out: they add no time, and are rarely asked. */
export const isDoseNotKnown = ({ hotTools }: Answers): boolean =>
  hotTools?.bleaches === 'unknown' ||
  (hotTools?.history ?? []).includes('unknown') ||
  (hotTools?.habits ?? [])
    .filter(({ tool }) => isIron(tool))
    .some(({ passes: _passes, ...habit }) => Object.values(habit).includes('unknown'));

/**
 * What is lost: the middle of its band; its bad end where the dose is not known. That is where each thing unknown lies at
 * the careful end of what is usual (shared/heat/assumedHabit.ts): never freer than any usual answer. An answer beyond the
 * usual, such as ten minutes a section, may still weigh more than "don't know".
 */
const lost = ({ low, typical, high }: Range, isNotKnown: boolean): Covariate =>
  isNotKnown
    ? { value: 1 - low, spread: (typical - low) / 2 }
    : { value: 1 - typical, spread: (high - low) / ASSUMED_BAND_IN_SDS };

/** As a share of the most that was measured, which is the worst that is counted: beyond it nothing weighs more. */
const shareOfMeasured = ({ value, spread }: Covariate): Covariate => ({
  value: Math.min(1, value / TRYPTOPHAN_MOST_MEASURED),
  spread: spread / TRYPTOPHAN_MOST_MEASURED,
  ...(value > TRYPTOPHAN_MOST_MEASURED ? { isBeyond: true } : {}),
});

/** The hair where the colour goes and least is left, by the careful end of the band. None of no zone. */
export function findWeakestHair(answers: Answers, zones: readonly Zone[]): HairAt | undefined {
  const history = readHistory(answers);
  const lengthCm = history.lengthCm.typical;
  const places = zones.flatMap((zone) => {
    const { fromCm, toCm } = placeZone(zone, lengthCm, answers.hotTools?.regrowthCm);
    const steps = Math.max(1, Math.ceil((toCm - fromCm) / ASSUMED_CHANCE_EVERY_CM));
    return Array.from({ length: steps + 1 }, (_, step) => fromCm + ((toCm - fromCm) * step) / steps);
  });
  const [first, ...more] = computeProfile(history, places);
  if (first === undefined) return undefined;
  return more.reduce((weak, each) => (each.helixLeft.low <= weak.helixLeft.low ? each : weak), first);
}

function readHeat({ hotTools }: Answers): Pick<Covariates, 'ironedWet' | 'scorched' | 'veryHot'> {
  const irons = (hotTools?.habits ?? []).filter(({ tool }) => isIron(tool));
  return {
    ironedWet: irons
      .map(({ wetness }) => (wetness === 'unknown' ? ASSUMED_NOT_KNOWN : told(shares.wetness[wetness])))
      .reduce(worse, nothing),
    scorched: share(shares.smoke, hotTools?.smoke),
    veryHot: irons
      .map(({ settingC }) =>
        settingC === 'unknown' ? ASSUMED_NOT_KNOWN : told(settingC > SOFTENING_C ? 1 : 0),
      )
      .reduce(worse, nothing),
  };
}

type Chemistry = Pick<Covariates, 'bleaches' | 'smoothing' | 'relaxer' | 'strangeColour'>;

function readChemistry({ hotTools }: Answers): Chemistry {
  const history = hotTools?.history ?? [];
  const has = (...kinds: readonly (typeof history)[number][]) => kinds.some((kind) => history.includes(kind));
  const unless = (found: Covariate): Covariate => (has('unknown') ? ASSUMED_NOT_KNOWN : found);
  const { bleaches } = hotTools ?? {};
  return {
    bleaches:
      bleaches === 'unknown' || (bleaches === undefined && has('lightener', 'unknown'))
        ? ASSUMED_NOT_KNOWN
        : told(Math.min(1, (bleaches ?? 0) / ASSUMED_BLEACHES_WORST)),
    smoothing: has('keratin') ? told(1) : unless(nothing),
    relaxer: has('relaxer')
      ? told(shares.relaxer.relaxer)
      : unless(told(has('perm') ? shares.relaxer.perm : 0)),
    strangeColour: has('unknownBoxColour', 'compoundHenna', 'metallicColour') ? told(1) : unless(nothing),
  };
}

/**
 * What do her answers come to, as figures that a chance can be reckoned from?
 * Helix and tryptophan are those lost (tryptophan as a share of the most that was measured) at the weakest place of these zones, which are those of the plan, with the width of their bands.
 * Nothing that a strand said enters. Checked by tests/shared/judgement/chance/covariates.test.ts.
 */
export function readCovariates(
  answers: Answers,
  zones: readonly Zone[] = listPlannedZones(answers.client?.reach),
): Covariates {
  const hair = findWeakestHair(answers, zones);
  const isNotKnown = isDoseNotKnown(answers);
  const { feelHair } = answers;
  return {
    helixLost: hair === undefined ? nothing : lost(hair.helixLeft, isNotKnown),
    tryptophanLost: hair === undefined ? nothing : shareOfMeasured(lost(hair.tryptophanLeft, isNotKnown)),
    ...readHeat(answers),
    ...readChemistry(answers),
    curlLost: share(shares.curl, feelHair?.curl),
    slowStretch: share(shares.wetStretch, feelHair?.wetStretch),
    porous: share(shares.porosity, feelHair?.porosity),
    breakage: share(shares.breakage, feelHair?.breakage),
  };
}

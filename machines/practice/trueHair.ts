import { readCovariates } from '../../shared/judgement/chance/covariates';
import { estimateChance } from '../../shared/judgement/chance/estimate';
import { priorCoefficients } from '../../shared/judgement/chance/prior';
import type { Answers } from '../../shared/records/forms/asked';
import { type ByZone, type Zone, zones } from '../../shared/records/zones';
import type { Lesson } from './lesson';
import { readTruth } from './readTruth';

/** No chance is told from certain beyond this. Assumed because even the worst hair takes some moments to go. */
export const ASSUMED_SUREST = 0.999;

/** One zone of her hair as it truly is. */
interface ZoneOfHair {
  /** That a strand of it breaks in the usual mix: what her true answers come to, or the lesson's own word if that is worse. */
  readonly chance: number;
  /** The lesson says less than her answers come to: it holds, but by luck. */
  readonly isLucky: boolean;
}

/** What is true of her hair. */
export interface TrueHair {
  readonly answers: Answers;
  readonly zones: ByZone<ZoneOfHair>;
}

function findChance({ strand, truth }: Lesson, answers: Answers, zone: Zone): ZoneOfHair {
  if (truth.glass === 'reacted') return { chance: ASSUMED_SUREST, isLucky: false };
  const reckoned = estimateChance(readCovariates(answers, [zone]), priorCoefficients).chance;
  const told = strand.zones?.[zone]?.chance ?? reckoned;
  return { chance: Math.min(Math.max(told, reckoned), ASSUMED_SUREST), isLucky: told < reckoned };
}

/** A lesson is never changed in place, and is looked at with every look: what was reckoned of it once is kept. */
const reckoned = new WeakMap<Lesson, TrueHair>();

/** What is her hair, whatever she says of it? A lesson that is played was checked before: `checkLesson`. */
export function knowHair(lesson: Lesson): TrueHair {
  const known = reckoned.get(lesson);
  if (known !== undefined) return known;
  const truth = readTruth(lesson);
  if (!truth.ok) throw new RangeError(`no lesson to play: ${lesson.id}`);
  const answers = truth.value;
  const byZone = zones.map((zone) => [zone, findChance(lesson, answers, zone)]);
  const hair: TrueHair = { answers, zones: Object.fromEntries(byZone) as ByZone<ZoneOfHair> };
  reckoned.set(lesson, hair);
  return hair;
}

import { readHistory } from '../hair/readHistory';
import { placeZone } from '../hair/zonePlaces';
import type { Answers } from '../records/forms/asked';
import type { ConsultationRecord, StrandRecord } from '../records/record';
import type { Settings } from '../records/settings';
import type { Zone } from '../records/zones';
import type { Limits } from './limits';
import { isSameLine, type Mix } from './mixes';
import { isMixOfLift } from './service';
import { isLifting } from './stops';

/** The strongest developer of a lightener that lies on the scalp, per cent (20 vol): common practice, no source. */
export const ON_SCALP_PERCENT = 6;

/**
 * Hair whose zone begins nearer to the skin than this lies on it, cm. Assumed because a root touch-up, which is laid on the
 * scalp, reaches 4 cm (ASSUMED_TOUCH_UP_CM), and ends that short fall back onto what was brushed.
 */
export const ASSUMED_LIES_WITHIN_CM = 5;

/**
 * Is this line lightener? As the shelf says, however the line is typed. One that is not on the shelf is, where she wants to
 * be lifted or where it stood over 20 vol: powder that is taken for colour goes on without its cautions.
 */
export function isLightener(
  { shelf }: Pick<Settings, 'shelf'>,
  { client }: Answers,
  line: string,
  developerPercent = 0,
): boolean {
  const kinds = shelf.filter(({ name }) => isSameLine(name, line)).map(({ kind }) => kind);
  const isOfLift = isLifting(client?.service ?? '') || isMixOfLift({ line, developerPercent }, { shelf });
  return kinds.includes('lightener') || (isOfLift && !kinds.includes('colour'));
}

/**
 * Does hair of this zone begin on the scalp? Roots do, and lengths (placeZone), and on hair of a few centimetres the ends as
 * well, at the shortest that was told.
 */
const beginsOnScalp = (zone: Zone, answers: Answers): boolean =>
  placeZone(zone, readHistory(answers).lengthCm.low).fromCm < ASSUMED_LIES_WITHIN_CM;

/** Does a bowl of such hair lie on the scalp? Not what is wrapped in foil, which is worked off it: common practice, no source. */
export const isOnScalp = (heat: Mix['heat']): boolean => heat !== 'foil';

/** The limits of a bowl with what the scalp takes off them. */
export interface ScalpLimits extends Limits {
  /** As warm as it was tested; without dry heat on the scalp. */
  readonly maxHeat: Mix['heat'];
  /** The strongest that may lie on the scalp, per cent; null where nothing of it is lightener, or somebody signed for more. */
  readonly scalpPercent: number | null;
  /** The strand would allow more than the scalp does. */
  readonly isLowered: boolean;
}

/** Did a named person answer for more on the scalp? */
const isScalpLifted = ({ overrides }: ConsultationRecord): boolean =>
  overrides.some(({ rule }) => rule === 'judgement.onScalp');

/**
 * What is left of these limits where the bowl is lightener and lies on the scalp? No more than ON_SCALP_PERCENT and no dry
 * heat, whatever the strand held: it has no skin. A named person may answer for more. Since model 5.
 * Checked in tests/shared/judgement/onScalp.test.ts.
 */
export function limitOnScalp(
  record: ConsultationRecord,
  { zone, line, heat, developerPercent }: Pick<StrandRecord, 'zone' | 'line' | 'heat' | 'developerPercent'>,
  settings: Pick<Settings, 'shelf'>,
  limits: Limits,
): ScalpLimits {
  const isGuarded =
    record.modelVersion >= 5 &&
    beginsOnScalp(zone, record.answers) &&
    isLightener(settings, record.answers, line, developerPercent) &&
    !isScalpLifted(record);
  if (!isGuarded) return { ...limits, maxHeat: heat, scalpPercent: null, isLowered: false };
  const scalpPercent = ON_SCALP_PERCENT;
  if (!isOnScalp(heat)) return { ...limits, maxHeat: heat, scalpPercent, isLowered: false };
  return {
    ...limits,
    maxDeveloperPercent: Math.min(limits.maxDeveloperPercent, scalpPercent),
    maxHeat: 'none',
    scalpPercent,
    isLowered: limits.maxDeveloperPercent > scalpPercent || heat !== 'none',
  };
}

import type { Answers } from '../records/forms/asked';
import type { ConsultationRecord, StrandRecord } from '../records/record';
import type { Settings } from '../records/settings';
import type { Zone } from '../records/zones';
import type { Limits } from './limits';
import { isSameLine, type Mix } from './mixes';

/** The strongest developer of a lightener that lies on the scalp, per cent (20 vol): common practice, no source. */
export const ON_SCALP_PERCENT = 6;

/**
 * Is this line lightener? As the shelf says, however the line is typed. One that is not on the shelf is where she wants to
 * be lightened: powder that is taken for colour goes on without its cautions.
 */
export function isLightener({ shelf }: Pick<Settings, 'shelf'>, { client }: Answers, line: string): boolean {
  const kinds = shelf.filter(({ name }) => isSameLine(name, line)).map(({ kind }) => kind);
  return kinds.includes('lightener') || (client?.service === 'lighten' && !kinds.includes('colour'));
}

/**
 * Does this bowl lie on the scalp? Roots do, and lengths, which begin at the scalp (placeZone); ends do not, nor what is
 * wrapped in foil, which is worked off the scalp: common practice, no source.
 */
export const isOnScalp = (zone: Zone, heat: Mix['heat']): boolean => zone !== 'ends' && heat !== 'foil';

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
  { zone, line, heat }: Pick<StrandRecord, 'zone' | 'line' | 'heat'>,
  settings: Pick<Settings, 'shelf'>,
  limits: Limits,
): ScalpLimits {
  const isGuarded =
    record.modelVersion >= 5 &&
    zone !== 'ends' &&
    isLightener(settings, record.answers, line) &&
    !isScalpLifted(record);
  if (!isGuarded) return { ...limits, maxHeat: heat, scalpPercent: null, isLowered: false };
  const scalpPercent = ON_SCALP_PERCENT;
  if (!isOnScalp(zone, heat)) return { ...limits, maxHeat: heat, scalpPercent, isLowered: false };
  return {
    ...limits,
    maxDeveloperPercent: Math.min(limits.maxDeveloperPercent, scalpPercent),
    maxHeat: 'none',
    scalpPercent,
    isLowered: limits.maxDeveloperPercent > scalpPercent || heat !== 'none',
  };
}

import { isSameLine } from '../judgement/mixes';
import { msPerMinute } from '../units/time';
import { MODEL_VERSION } from './event';
import type { BowlRecord } from './record';
import type { Settings } from './settings';

/**
 * A mixed bowl is used within so many minutes where the shelf names no figure of its line. Assumed because
 * makers say from half an hour to an hour (from memory: product labels); where theirs is not known, the short end.
 */
export const ASSUMED_USE_WITHIN_MIN = 30;

/** Models before 4 let it be used within the hour: what stands in their logs was in time. ASSUMED as above. */
const beforeModel4 = { model: 4, minutes: 60 } as const;

/** Within how many minutes after mixing is this line put on? The maker's figure, as kept on the shelf, comes first. */
export const findUseWithinMin = (
  line: string,
  { shelf }: Pick<Settings, 'shelf'>,
  modelVersion = MODEL_VERSION,
): number =>
  shelf.find(({ name }) => isSameLine(name, line))?.useWithinMin ??
  (modelVersion < beforeModel4.model ? beforeModel4.minutes : ASSUMED_USE_WITHIN_MIN);

/**
 * Until when may this bowl be put on? In ms since 1970-01-01 UTC; exact. From when developer met colour, which may be
 * before it was called weighed. What is on by then stays for its own minutes.
 * Checked in tests/shared/records/useWithin.test.ts.
 */
export const findUseByMs = (
  { atMs, line, mixedMinAgo = 0 }: Pick<BowlRecord, 'atMs' | 'line' | 'mixedMinAgo'>,
  settings: Settings,
  modelVersion = MODEL_VERSION,
): number => atMs + (findUseWithinMin(line, settings, modelVersion) - mixedMinAgo) * msPerMinute;

import { isSameLine } from '../judgement/mixes';
import { msPerMinute } from '../units/time';
import type { BowlRecord } from './record';
import type { Settings } from './settings';

/**
 * A mixed bowl is used within so many minutes where the shelf names no figure of its line. Assumed because makers say
 * from half an hour to an hour, and theirs come first.
 */
export const ASSUMED_USE_WITHIN_MIN = 60;

/** Within how many minutes after mixing is this line put on? The maker's figure, as kept on the shelf, comes first. */
export const findUseWithinMin = (line: string, { shelf }: Pick<Settings, 'shelf'>): number =>
  shelf.find(({ name }) => isSameLine(name, line))?.useWithinMin ?? ASSUMED_USE_WITHIN_MIN;

/**
 * Until when may this bowl be put on? In ms since 1970-01-01 UTC; exact. What is on by then stays for its own minutes.
 * Checked in tests/shared/records/useWithin.test.ts.
 */
export const findUseByMs = ({ atMs, line }: Pick<BowlRecord, 'atMs' | 'line'>, settings: Settings): number =>
  atMs + findUseWithinMin(line, settings) * msPerMinute;

import type { Settings } from '../records/settings';
import { isSameLine, type Mix } from './mixes';

/** The strongest developer of a service that does not lift, per cent (20 vol): common practice, no source. */
const NOT_LIFTING_PERCENT = 6;

/** Is this the mix of a lift, whatever the service is called? A lightener of the shelf, or more than 20 vol. */
export const isMixOfLift = (
  { line, developerPercent }: Pick<Mix, 'line' | 'developerPercent'>,
  { shelf }: Pick<Settings, 'shelf'>,
): boolean =>
  developerPercent > NOT_LIFTING_PERCENT ||
  shelf.some(({ kind, name }) => kind === 'lightener' && isSameLine(name, line));

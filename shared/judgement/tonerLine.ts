import type { ConsultationRecord } from '../records/record';
import type { Settings } from '../records/settings';
import { isSameLine, type Mix } from './mixes';
import { isMixOfLift } from './service';

/** Why a line is no toner: it lifts, nobody said on the shelf that it only colours, or it went through a strand today. */
export type TonerLineRefusal = 'tonerLifts' | 'tonerNotOnShelf' | 'tonerTested';

/** Was a strand of this record put into this line? What it was tested for binds it, and what closed it closes it. */
export const isTestedLine = (
  { strands }: Pick<ConsultationRecord, 'strands'>,
  line: string,
  beforeSeq = Number.POSITIVE_INFINITY,
): boolean => strands.some((strand) => strand.seq < beforeSeq && isSameLine(strand.line, line));

/**
 * May this line go on as a toner, without a strand of its own? Only a colour of the shelf that no strand of today was in.
 * Checked in tests/shared/judgement/toner.test.ts.
 */
export function findTonerLineRefusal(
  record: Pick<ConsultationRecord, 'strands'>,
  mix: Pick<Mix, 'line' | 'developerPercent'>,
  settings: Settings,
): TonerLineRefusal | null {
  if (isMixOfLift(mix, settings)) return 'tonerLifts';
  const isColour = settings.shelf.some(({ kind, name }) => kind === 'colour' && isSameLine(name, mix.line));
  if (!isColour) return 'tonerNotOnShelf';
  return isTestedLine(record, mix.line) ? 'tonerTested' : null;
}

import type { LastTime } from '../../../shared/records/lastTime';
import { bringUpToDate } from '../../../shared/records/sinceLastTime';
import type { AskStep } from '../../../shared/records/steps';

/** What is asked anew at every visit, whatever was said last time. */
const askedAnew: Readonly<Record<AskStep, readonly string[]>> = {
  client: ['reactions', 'scalp', 'ageBand'],
  hotTools: ['history', 'relaxedWithinTwoWeeks'],
  feelHair: ['nape', 'mid', 'ends', 'breakage', 'wetStretch'],
  heatSpray: [],
};

/** What stands in the fields of a step before anybody said anything today: last time's answers as of today, but for those. */
export function listAsLastTime(
  last: LastTime | null,
  step: AskStep,
  nowMs: number,
): Readonly<Record<string, unknown>> | undefined {
  const before = last === null ? undefined : bringUpToDate(last, nowMs)[step];
  if (before === undefined) return undefined;
  return Object.fromEntries(Object.entries(before).filter(([name]) => !askedAnew[step].includes(name)));
}

import type { LastTime, LastZone } from '../records/lastTime';
import type { ConsultationRecord } from '../records/record';
import type { Settings } from '../records/settings';
import type { Zone } from '../records/zones';
import { isFeltToday, isTooOldToCarry } from './lapse';
import { findNews, type NewThing } from './news';
import { listPlannedZones } from './plannedZones';
import { isMixOfLift } from './service';
import { isLifting } from './stops';

/** Why an outcome of last time is not carried to today. Each has its words, and what clears it, in src/words. */
export type CarryRefusal =
  | { readonly code: 'new'; readonly news: readonly NewThing[] }
  | {
      readonly code:
        | 'off'
        | 'notSameClient'
        | 'stopStood'
        | 'lifts'
        | 'notDone'
        | 'tooOld'
        | 'strandToday'
        | 'notFeltToday'
        | 'stretchSlow';
    };

const findLast = ({ zones }: LastTime, zone: Zone): LastZone | undefined =>
  zones.find(({ bowl }) => bowl.zone === zone);

/** What of last time is carried: each zone of today's plan that got a bowl then. */
export const listCarried = ({ lastTime, answers }: ConsultationRecord): readonly LastZone[] =>
  listPlannedZones(answers.client?.reach).flatMap((zone) => {
    const last = lastTime === null ? undefined : findLast(lastTime, zone);
    return last === undefined ? [] : [last];
  });

/**
 * Why is the outcome of last time's strand not carried to today? null: it would be taken now, as far as the record goes.
 * Same client, deposit only, the same mix on the same zones, nothing new, the strand no older than twelve weeks, and
 * today's wet stretch springs back. Never for lightening or lift. Checked in tests/shared/judgement/carried.test.ts.
 */
export function findCarryRefusal(
  record: ConsultationRecord,
  settings: Settings,
  nowMs: number,
): CarryRefusal | null {
  const { lastTime, answers } = record;
  if (!settings.carried) return { code: 'off' };
  if (lastTime === null) return { code: 'notSameClient' };
  if (lastTime.hasStandingStop) return { code: 'stopStood' };
  const carried = listCarried(record);
  const isLift = carried.some(({ bowl, strand }) => [bowl, strand].some((mix) => isMixOfLift(mix, settings)));
  if (isLifting(answers.client?.service ?? 'lighten') || isLift) return { code: 'lifts' };
  const planned = listPlannedZones(answers.client?.reach);
  if (!lastTime.isDone || carried.length === 0 || carried.length < planned.length) return { code: 'notDone' };
  if (carried.some(({ strandAtMs }) => isTooOldToCarry(strandAtMs, nowMs))) return { code: 'tooOld' };
  const news = findNews(lastTime, answers);
  if (news.length > 0) return { code: 'new', news };
  if (record.strands.some(({ ended }) => ended?.how !== 'discarded')) return { code: 'strandToday' };
  if (!isFeltToday(record, nowMs)) return { code: 'notFeltToday' };
  return answers.feelHair?.wetStretch === 'springsBack' ? null : { code: 'stretchSlow' };
}

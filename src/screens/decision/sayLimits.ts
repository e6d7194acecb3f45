import { type Decision, isToBeSigned } from '../../../shared/judgement/decisions';
import { type Course, foresee } from '../../../shared/judgement/limits';
import { nameTested } from '../../../shared/judgement/mixes';
import type { ConsultationRecord } from '../../../shared/records/record';
import type { Settings } from '../../../shared/records/settings';
import type { Zone } from '../../../shared/records/zones';
import { formatPercent, formatQuantity } from '../../../shared/units/format';
import type { Words } from '../../words/words';
import { sayVolumes } from '../bottleAndBowl';
import { sayAbout } from '../map/saySizes';
import { isLeftToMix, type ZoneFound } from './viewDecision';

interface OfZone {
  readonly zone: Zone;
  readonly most: string;
  readonly course: Course;
}

/**
 * The record as it is once this decision is taken: what is freer than suggested is taken only by name, and its limits are
 * those of the signature.
 */
export function asSigned(
  record: ConsultationRecord,
  decision: Decision,
  suggested: Decision,
): ConsultationRecord {
  if (!isToBeSigned(decision, suggested)) return record;
  const signature = {
    rule: 'judgement.freerThanSuggested',
    code: '',
    words: '',
    atMs: 0,
    by: '',
    seq: 0,
  } as const;
  return { ...record, overrides: [...record.overrides, signature] };
}

/** Does this decision leave less of a mix that goes on than its strand stood? Then what the strand reached is not its. */
export const isGentlerThanTested = (
  record: ConsultationRecord,
  found: readonly ZoneFound[],
  decision: Decision,
  settings: Settings,
  nowMs: number,
): boolean =>
  found
    .filter((zone) => isLeftToMix(zone, decision))
    .flatMap(({ strand }) => strand ?? [])
    .some((strand) => {
      const left = foresee(record, strand, decision, settings, nowMs);
      const tested = nameTested(strand);
      return left.maxDeveloperPercent < tested.developerPercent || left.maxMinutes < tested.minutes;
    });

/** How strong, how long, with what heat, looked at how often and how far from the tips; nothing where nothing is mixed. */
export function sayLimits(
  record: ConsultationRecord,
  found: readonly ZoneFound[],
  decision: Decision,
  { words, settings, nowMs }: { readonly words: Words; readonly settings: Settings; readonly nowMs: number },
): string {
  const said = words.decision.limits;
  const { units } = settings;
  const sayMost = ({ maxDeveloperPercent, maxMinutes, heat }: Course): string =>
    said.most(
      formatPercent(maxDeveloperPercent, units, words.locale),
      sayVolumes(maxDeveloperPercent, words, units),
      formatQuantity(maxMinutes, 'minutes', units, words.locale),
      words.mix.limitHeat[heat],
    );
  const each = found
    .filter((zone) => isLeftToMix(zone, decision))
    .flatMap(({ zone, strand }): readonly OfZone[] => {
      if (strand === null) return [];
      const course = foresee(record, strand, decision, settings, nowMs);
      return course.maxMinutes > 0 ? [{ zone, course, most: sayMost(course) }] : [];
    });
  const [first, ...more] = each;
  if (first === undefined) return '';
  const { lookEveryMin, fromTipsCm } = first.course;
  return [
    said.all(
      more.every(({ most }) => most === first.most)
        ? [first.most]
        : each.map(({ zone, most }) => said.ofZone(words.general.zones[zone], most)),
    ),
    said.look(formatQuantity(Number(lookEveryMin), 'minutes', units, words.locale)),
    ...(fromTipsCm === null ? [] : [said.fromTips(sayAbout(fromTipsCm, units, words.locale))]),
  ].join(' ');
}

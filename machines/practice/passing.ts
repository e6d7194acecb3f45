import { type RuleId, rules } from '../../shared/judgement/rules';
import { isIncompatibilityDue, listOpenStops, listStops } from '../../shared/judgement/stops';
import type { Answers } from '../../shared/records/forms/asked';
import type { ConsultationRecord } from '../../shared/records/record';
import type { Settings } from '../../shared/records/settings';
import { askSteps } from '../../shared/records/steps';

/**
 * Why a lesson is not passed. `stopMissed`: a stop that truly stands was not told. `stopSigned`: it was told, and signed away.
 * `glassNotRead`: no cutting was read in the glass before the first strand, and one was due. `flagMissed`: not even after a
 * hint. `noLook`: a strand was in its mix until the alarm called, and nobody had looked at it. `decision`, `finish`, `mix`: not what is right here.
 */
export const failings = [
  'stopMissed',
  'stopSigned',
  'glassNotRead',
  'flagMissed',
  'decision',
  'finish',
  'mix',
  'noLook',
] as const;
export type Failing = (typeof failings)[number];

/** Which stops does the record tell of, lifted or not? */
export const listToldStops = (record: ConsultationRecord, settings: Settings): readonly RuleId[] => [
  ...new Set([
    ...listStops(record.answers, settings, record.modelVersion),
    ...listOpenStops(record, settings),
  ]),
];

/** Which of the stops that truly stand were signed away? A new hire is nobody who may answer for them. */
export const listSigned = ({ overrides }: ConsultationRecord, stops: readonly RuleId[]): readonly RuleId[] =>
  stops.filter((stop) => overrides.some(({ rule }) => rule === stop));

/** Which of them does the record not tell of, up to the last step that had to be asked? */
export function listMissedStops(
  record: ConsultationRecord,
  stops: readonly RuleId[],
  settings: Settings,
  lastAsked: number,
): readonly RuleId[] {
  const told = listToldStops(record, settings);
  return stops.filter((rule) => {
    const { step } = rules[rule];
    return !told.includes(rule) && (step === null || askSteps.indexOf(step) <= lastAsked);
  });
}

/**
 * Was a cutting due in the glass that nobody read before the first strand? Where another stop truly stands no strand was due,
 * and no glass.
 */
export function isGlassMissed(
  { incompatibility, strands }: ConsultationRecord,
  truth: Answers,
  stops: readonly RuleId[],
): boolean {
  const isStoppedBefore = stops.some((rule) => rule !== 'stop.incompatibilityReacted');
  if (!isIncompatibilityDue(truth) || (isStoppedBefore && strands.length === 0)) return false;
  const [first] = strands;
  const isRead = incompatibility !== null && incompatibility.seen !== 'running';
  return !isRead || (first !== undefined && first.seq < incompatibility.seq);
}

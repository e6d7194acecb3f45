import type { Consultation } from '../../machines/consultation/consultation';
import type { RawEvent } from '../../shared/records/classify';

const urgentTypes: readonly RawEvent['type'][] = [
  'REACTION_SUSPECTED',
  'BOWL_RINSED',
  'BOWL_THROWN',
  'STRAND_TAKEN_OFF',
  'STRAND_BROKE',
  'ALARM_ACKNOWLEDGED',
];

/**
 * Is this written at once, whoever is there? It says what has just happened to skin or hair, or that the
 * alarm was heard; a question for a name would stand before the rinse. Checked in tests/src/screens/reaction/rinseSteps.test.tsx.
 */
export const isUrgent = (raw: RawEvent): boolean =>
  urgentTypes.includes(raw.type) || (raw.type === 'LOOKED' && raw.answers?.stinging === 'yes');

/** Does chemistry run for her, or a reaction? Then her screen opens before anybody is asked for a name. */
export const isUnderWay = ({ record, state }: Consultation): boolean =>
  state.context.facts.care !== 'calm' ||
  record.clocks.some(({ endedAtMs }) => endedAtMs === null) ||
  record.bowls.some(({ state: bowl }) => bowl === 'weighed' || bowl === 'on');

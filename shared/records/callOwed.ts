import type { ConsultationRecord } from './record';

/** Signs that ask for the emergency number: labels; Pang & Fiume 2001. */
const askForCall: readonly string[] = ['breath', 'faint'];

export const isCallSign = (sign: string): boolean => askForCall.includes(sign);

/**
 * Was throat, breath or faint told, and is this less than the call? That she refused it is said too: it is hers to refuse.
 * Checked in tests/shared/records/callOwed.test.ts.
 */
export const isCallOwed = ({ reaction }: Pick<ConsultationRecord, 'reaction'>, care: string): boolean =>
  reaction?.signs.some(isCallSign) === true && care !== 'emergencyCalled' && care !== 'callRefused';

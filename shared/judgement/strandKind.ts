import type { ClientAnswers } from '../records/forms/client';
import { isLifting } from './stops';

/**
 * Which strand proves this service? A full one for every lightening and lift; a short one, for the product's own time,
 * where colour is only deposited. The proof scales, the gate does not: without an outcome nothing is mixed.
 * common practice, no source. Checked in tests/shared/judgement/strandKind.test.ts.
 */
export const findStrandKind = (service: ClientAnswers['service'] | undefined): 'full' | 'short' =>
  service === undefined || isLifting(service) ? 'full' : 'short';

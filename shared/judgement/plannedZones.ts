import type { Zone } from '../records/zones';

const plannedZones = {
  fullHead: ['lengths', 'ends'],
  endsOut: ['lengths'],
  roots: ['roots'],
} as const satisfies Record<string, readonly Zone[]>;

/** Which zones does the plan colour? Two places for a full head, one of them the ends. */
export const listPlannedZones = (reach: keyof typeof plannedZones | undefined): readonly Zone[] =>
  reach === undefined ? [] : plannedZones[reach];

import type { EventType } from '../../shared/records/event';

const onTheWay: readonly EventType[] = ['BOWL_WEIGHED', 'TONER_WEIGHED', 'BOWL_APPLIED'];

/** Does this tap bring colour to a head? Then her skin test is settled first, and no stop may stand elsewhere. */
export const reachesHead = (type: string): boolean => onTheWay.some((each) => each === type);

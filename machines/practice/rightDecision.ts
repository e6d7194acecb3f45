import type { Decision } from '../../shared/judgement/decisions';
import { listOpenStops } from '../../shared/judgement/stops';
import type { ConsultationEvent } from '../../shared/records/event';
import type { ConsultationRecord } from '../../shared/records/record';
import type { Settings } from '../../shared/records/settings';

/**
 * What is right where the table suggests this? That, or a little more careful, never freer; and no refusal where she need
 * not be refused. Assumed because nobody is wrong who is a little gentler, and who sends a safe client away is.
 */
export const ASSUMED_RIGHT: Readonly<Record<Decision, readonly Decision[]>> = {
  asPlanned: ['asPlanned', 'gentler'],
  gentler: ['gentler', 'smallerLift'],
  smallerLift: ['smallerLift', 'depositOnly', 'severalVisits'],
  depositOnly: ['depositOnly'],
  endsOut: ['endsOut', 'cutFirst'],
  severalVisits: ['severalVisits', 'cutFirst'],
  cutFirst: ['cutFirst'],
  testAgain: ['testAgain'],
  weSayNo: ['weSayNo'],
};

/** Where a strand of hers was seen to fail these are right too, whatever is left of the rest: none of them mixes anything. */
const afterFailing: readonly Decision[] = ['cutFirst', 'severalVisits', 'weSayNo'];

/** What is right where this is suggested, and a strand of hers was seen to fail or not, and stops truly stand or not? */
export const listRight = (
  suggested: Decision,
  hasFailed: boolean,
  isStopped: boolean,
): readonly Decision[] =>
  hasFailed && !isStopped
    ? [...new Set([...ASSUMED_RIGHT[suggested], ...afterFailing])]
    : ASSUMED_RIGHT[suggested];

/** What did the trainee decide in the end? null: nothing, or it was the client who decided. */
export function findDecided(
  record: ConsultationRecord,
  log: readonly ConsultationEvent[],
  settings: Settings,
): Decision | null {
  switch (record.ended?.how) {
    case 'weSaidNo':
      return 'weSayNo';
    case 'calledOff':
      return listOpenStops(record, settings).length > 0 ? 'weSayNo' : null;
    case 'clientSaidNo':
      return null;
    default: {
      const last = log.findLast(({ type }) => type === 'DECIDED');
      return last?.type === 'DECIDED' ? last.payload.decision : null;
    }
  }
}

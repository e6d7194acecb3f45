import { type ClosedRecord, parseClosedLog } from './closedRecord';
import type { Form } from './form';
import { type BowlAnswers, bowlForm } from './forms/bowl';
import { type OutcomeAnswers, outcomeForm, type StrandAnswers, strandForm } from './forms/test';
import { isAtLeastAsBad } from './gradeOutcome';
import type { LastTime, LastZone } from './lastTime';
import type { BowlRecord, ConsultationRecord } from './record';
import { fold } from './reduce';
import { formTicketKey } from './ticket';
import { type Zone, zones } from './zones';

/** What was answered to this form, without who and when. */
const pick = <T>(form: Form, from: object): T =>
  Object.fromEntries(Object.entries(from).filter(([name]) => Object.hasOwn(form, name))) as T;

/** Whatever went wrong with a strand of this zone before, it is rough at best. */
const gradeZone = ({ strands }: ConsultationRecord, zone: Zone): LastZone['grade'] =>
  strands.some(
    (strand) =>
      strand.zone === zone &&
      (strand.ended?.how === 'broke' ||
        (strand.outcome !== null && isAtLeastAsBad(strand.outcome.grade, 'rough')) ||
        (strand.retracted !== null && isAtLeastAsBad(strand.retracted, 'rough'))),
  )
    ? 'rough'
    : 'sound';

function readZone(record: ConsultationRecord, bowl: BowlRecord): readonly LastZone[] {
  const strand = record.strands.find(({ number }) => number === bowl.strand);
  if (strand === undefined || strand.outcome === null || strand.ended === null) return [];
  return [
    {
      bowl: pick<BowlAnswers>(bowlForm, bowl),
      strand: pick<StrandAnswers>(strandForm, strand),
      minutesOn: strand.minutesOn ?? 0,
      outcome: pick<OutcomeAnswers>(outcomeForm, strand.outcome),
      grade: gradeZone(record, bowl.zone),
      strandAtMs: strand.ended.atMs,
    },
  ];
}

const readLastTime = (
  { id, endedAtMs, how, hasStandingStop }: ClosedRecord,
  record: ConsultationRecord,
): LastTime => ({
  id,
  endedAtMs,
  isDone: how === 'done',
  hasStandingStop,
  answers: record.answers,
  zones: zones.flatMap((zone) => {
    const bowl = record.bowls.findLast(
      (each) => each.zone === zone && each.state === 'rinsed' && each.kind === 'tested',
    );
    return bowl === undefined ? [] : readZone(record, bowl);
  }),
});

/**
 * What was last time, under this ticket? The newest closed record in which anything was said; null when there is none.
 * Same ticket is not the same person: it is shown, and a person says whether she is the same client.
 * A log that is not understood any more is not passed over for an older one: then nothing is known of last time.
 * Checked in tests/shared/records/findLastTime.test.ts.
 */
export function findLastTime(closed: readonly ClosedRecord[], ticket: string): LastTime | null {
  const key = formTicketKey(ticket);
  if (key === '') return null;
  for (const each of [...closed].reverse()) {
    if (each.ticketKey !== key) continue;
    const log = parseClosedLog(each);
    if (log === null) return null;
    const record = fold(each.id, log);
    if (Object.keys(record.answers).length > 0) return readLastTime(each, record);
  }
  return null;
}

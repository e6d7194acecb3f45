import type { StretchAnswers } from './forms/bowl';
import { findBreakOnHead } from './headLooks';
import type { BowlRecord, ConsultationRecord, StretchRecord } from './record';
import type { Zone } from './zones';

/** What was known when a toner was weighed: kept with it, whatever is felt later. */
export interface TonerProof {
  /** The worst that was felt since the rinse. */
  readonly stretch: StretchAnswers['stretch'];
  /** The newest of it, by its place in the log. */
  readonly stretchSeq: number;
  /** The rinse before it, by its place in the log. */
  readonly rinsedSeq: number;
}

/** From the best to the worst. */
const stretchOrder: readonly string[] = ['springsBack', 'staysLong', 'snaps'];

/** When was the last bowl of this zone rinsed, by its place in the log? null while one is on or waits, and before any. */
export function findLastRinse({ bowls }: Pick<ConsultationRecord, 'bowls'>, zone: Zone): number | null {
  const last = bowls.findLast(
    (bowl) =>
      bowl.zone === zone && bowl.state !== 'thrown' && !(bowl.kind === 'toner' && bowl.state === 'weighed'),
  );
  return last?.state === 'rinsed' ? last.rinsedSeq : null;
}

/** Hair that broke under a bowl that was rinsed then or since: weak before anybody feels it. */
const listBroken = (bowls: readonly BowlRecord[], zone: Zone, sinceSeq: number): readonly StretchRecord[] =>
  bowls
    .filter((bowl) => bowl.zone === zone && bowl.rinsedSeq !== null && bowl.rinsedSeq >= sinceSeq)
    .flatMap((bowl) => findBreakOnHead(bowl) ?? [])
    .map(({ atMs, by, seq }) => ({ zone, stretch: 'snaps', before: 'stands', atMs, by, seq }));

/** What was felt in this zone since then, between the fingers; what was then said to be a wrong tap, not. */
export const listPulled = (
  { stretches }: Pick<ConsultationRecord, 'stretches'>,
  zone: Zone,
  sinceSeq: number,
): readonly StretchRecord[] =>
  stretches
    .filter((felt) => felt.zone === zone && felt.seq > sinceSeq)
    .reduce<readonly StretchRecord[]>(
      (felt, next) => [...(next.before === 'wrongTap' ? felt.slice(0, -1) : felt), next],
      [],
    );

/**
 * What showed and was felt on the head in this zone since that rinse. A wrong tap takes back what was felt, never a break
 * that was seen at a look: that was held by whoever saw it. Checked in tests/shared/records/headLooks.test.ts.
 */
export const listFelt = (
  { bowls, stretches }: Pick<ConsultationRecord, 'bowls' | 'stretches'>,
  zone: Zone,
  sinceSeq: number,
): readonly StretchRecord[] =>
  [...listBroken(bowls, zone, sinceSeq), ...listPulled({ stretches }, zone, sinceSeq)].sort(
    (one, other) => one.seq - other.seq,
  );

/** Did the hair of this zone break at a look, under the bowl that was rinsed last? */
export function hasBrokenAtLook({ bowls }: Pick<ConsultationRecord, 'bowls'>, zone: Zone): boolean {
  const rinsedSeq = findLastRinse({ bowls }, zone);
  return rinsedSeq !== null && listBroken(bowls, zone, rinsedSeq).length > 0;
}

/**
 * How does this zone feel since its rinse: the worst of it, and when it was felt last? One good pull takes back no bad one.
 * null where nobody has felt it.
 */
export function findFelt(
  record: Pick<ConsultationRecord, 'bowls' | 'stretches'>,
  zone: Zone,
): (TonerProof & { readonly atMs: number }) | null {
  const rinsedSeq = findLastRinse(record, zone);
  if (rinsedSeq === null) return null;
  const felt = listFelt(record, zone, rinsedSeq);
  const newest = felt.at(-1);
  if (newest === undefined) return null;
  const stretch = felt
    .map((each) => each.stretch)
    .reduce((worst, each) => (stretchOrder.indexOf(each) > stretchOrder.indexOf(worst) ? each : worst));
  return { stretch, stretchSeq: newest.seq, rinsedSeq, atMs: newest.atMs };
}

/** What a toner weighed now stands on: null when something is missing. */
export function findTonerProof(
  record: Pick<ConsultationRecord, 'bowls' | 'stretches'>,
  zone: Zone,
): TonerProof | null {
  const felt = findFelt(record, zone);
  if (felt === null) return null;
  const { atMs: _atMs, ...proof } = felt;
  return proof;
}

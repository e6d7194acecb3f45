import { describe, expect, it } from 'vitest';
import { noteMissedLooks } from '../../../shared/records/missedLooks';
import type { ConsultationRecord } from '../../../shared/records/record';
import { fold } from '../../../shared/records/reduce';
import { type Played, playUntil, tap } from '../../src/screens/playStory';

const minute = 60_000;

/** One strand of the lengths is in the mix; it is looked at after 2 min and then every 3, and nobody has looked yet. */
const begun = playUntil('STRAND_STARTED');
const strandOf = ({ strands }: ConsultationRecord) => {
  const [strand] = strands;
  if (strand === undefined) throw new Error('no strand');
  return strand;
};
const { zone } = strandOf(begun.consultation.record);
const everyMs = Number(strandOf(begun.consultation.record).lookEveryMin) * minute;
const minutesMissed = (record: ConsultationRecord) =>
  strandOf(record).missedLooksAtMs.map((atMs) => (atMs - begun.atMs) / minute);
const look = (played: typeof begun, afterMs: number) =>
  tap(played, afterMs, { type: 'LOOKED', answers: { of: 'strand', zone, level: '7', feel: 'sound' } });
const takeOff = (played: typeof begun, afterMs: number) =>
  tap(played, afterMs, { type: 'STRAND_TAKEN_OFF', answers: { zone, why: 'levelReached' } });
const every = everyMs / minute;

describe('missed looks', () => {
  it('are none while the first interval runs', () => {
    const looked = look(begun, 2 * minute);
    expect(minutesMissed(looked.consultation.record)).toEqual([]);
  });

  it('stand in the record of the strand, by the moments they fell due, from the next entry on', () => {
    const looked = look(begun, 2 * minute);
    const late = look(looked, 2.5 * everyMs);
    expect(minutesMissed(late.consultation.record)).toEqual([2 + every]);
  });

  it('stay as they were once the strand is off, whatever is written after that', () => {
    const off = takeOff(begun, 2 * minute + 2.5 * everyMs);
    expect(minutesMissed(off.consultation.record)).toEqual([2, 2 + every]);
    expect(noteMissedLooks(off.consultation.record, off.atMs + 60 * minute)).toBe(off.consultation.record);
  });

  it('are told by the log alone: it says the same when it is read again', () => {
    const off = takeOff(look(begun, 2 * minute + everyMs), 2.5 * everyMs);
    const again = fold(off.consultation.id, off.consultation.log);
    expect(again).toEqual(off.consultation.record);
    expect(minutesMissed(again)).toEqual([2, 2 + 2 * every]);
    expect(off.consultation.log.map(({ type }) => type)).not.toContain('LOOK_MISSED');
  });

  it('of one that still runs are told up to now, and the record is the same while nothing is missed', () => {
    const { record } = begun.consultation;
    expect(noteMissedLooks(record, begun.atMs + 2 * minute + everyMs - 1)).toBe(record);
    expect(minutesMissed(noteMissedLooks(record, begun.atMs + 2 * minute + everyMs))).toEqual([2]);
  });

  it('on the head stand in the record of the bowl', () => {
    const on = playUntil('BOWL_APPLIED');
    const missed = (played: Played, afterMin: number) =>
      noteMissedLooks(played.consultation.record, played.atMs + afterMin * minute).bowls.flatMap(
        ({ missedLooksAtMs }) => missedLooksAtMs.map((atMs) => (atMs - played.atMs) / minute),
      );
    // Her hair is suspect: every 3 min. Common practice, no source.
    expect(missed(on, 6)).toEqual([3]);
    expect(missed(on, 9)).toEqual([3, 6]);
  });
});

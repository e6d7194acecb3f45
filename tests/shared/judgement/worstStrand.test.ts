import { describe, expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import { gatherFindings, listStanding, suggestFor } from '../../../shared/judgement/findings';
import type { RawEvent } from '../../../shared/records/classify';
import type { RawForm } from '../../../shared/records/readForm';
import {
  andThen,
  change,
  day,
  lowRisk,
  minute,
  ofStep,
  ofType,
  type Told,
  tell,
  until,
} from '../records/telling';

const find = (matches: (raw: RawEvent) => boolean) =>
  lowRisk.find(({ raw }) => matches(raw))?.raw as RawEvent;
const changed = (raw: RawEvent, answers: RawForm) =>
  ({ ...raw, answers: { ...raw.answers, ...answers } }) as RawEvent;
const startEnds = find(ofType('STRAND_STARTED', 'ends'));
const sound = find(ofType('OUTCOME_RECORDED', 'ends'));
const rough = { fibre: 'rough', stretch: 'staysLong' };
const failed = { fibre: 'broken', stretch: 'snaps' };

const firstEnds = (answers: RawForm): Told =>
  tell(change(until('DECIDED', lowRisk), ofType('OUTCOME_RECORDED', 'ends'), answers));
const takeOff: RawEvent = { type: 'STRAND_TAKEN_OFF', answers: { zone: 'ends', why: 'levelReached' } };

/** One more strand of the ends, of another mix, taken off after so long, with what was seen. */
const testAgain = (from: Told, mix: RawForm, outcome: RawForm = {}, minutesOn = 25): Told =>
  andThen(
    andThen(andThen(from, changed(startEnds, mix)), takeOff, minutesOn * minute),
    changed(sound, outcome),
  );
const gather = ({ record, atMs }: Told) => gatherFindings(record, salon, atMs);
const ends = (told: Told) => gather(told).zones.ends;

describe('several strands of one zone', () => {
  it('count by the worst of them: a second one from a better place takes nothing back', () => {
    expect(ends(testAgain(firstEnds(rough), { place: 'nape' }))).toBe('rough');
    expect(ends(testAgain(firstEnds({}), {}, rough))).toBe('rough');
    expect(ends(testAgain(firstEnds(failed), {}))).toBe('broken');
    expect(ends(testAgain(testAgain(firstEnds(rough), {}), {}, { fibre: 'gummy' }))).toBe('gummy');
  });

  it('are freed of a failure by a mix gentler by a bottle’s step or three quarters of the time (ASSUMED)', () => {
    // The first strand of the ends failed at 6 % after 25 minutes.
    const broken = firstEnds(failed);
    expect(ends(testAgain(broken, { developerPercent: '3' }))).toBe('sound');
    expect(ends(testAgain(broken, { developerPercent: '3.1' }))).toBe('broken');
    expect(ends(testAgain(broken, { minutes: '18' }))).toBe('sound');
    expect(ends(testAgain(broken, { minutes: '19' }))).toBe('broken');
    expect(ends(testAgain(broken, { line: 'Sandbar cream' }))).toBe('sound');
    expect(ends(testAgain(broken, { line: ' sandbar  POWDER' }))).toBe('broken');
    expect(ends(testAgain(broken, { heat: 'foil' }))).toBe('broken');
  });

  it('are judged by the minutes they were on, not by those they were meant to be', () => {
    expect(ends(testAgain(firstEnds(failed), {}, {}, 18))).toBe('sound');
    expect(ends(testAgain(firstEnds(failed), {}, {}, 19))).toBe('broken');
  });

  it('are as light and as even as the newest of them', () => {
    const first = firstEnds({ level: '5', evenness: 'patchy' });
    expect(gather(first)).toMatchObject({ shortBy: 2, isEven: false });
    expect(gather(testAgain(first, {}))).toMatchObject({ shortBy: 0, isEven: true, strands: 1 });
    const second = testAgain(firstEnds({}), {}, { level: '6', evenness: 'banded' });
    expect(gather(second)).toMatchObject({ shortBy: 1, isEven: false });
  });

  it('are untested again while the newest one runs, was put aside, or had its outcome retracted', () => {
    const running = andThen(firstEnds({}), startEnds);
    const aside: RawEvent = { type: 'STRAND_DISCARDED', answers: { zone: 'ends', why: 'lost' } };
    const retract: RawEvent = {
      type: 'OUTCOME_RETRACTED',
      answers: { zone: 'ends', code: 'wrongTap', words: 'the row above' },
    };
    for (const told of [running, andThen(running, aside), andThen(firstEnds({}), retract)]) {
      expect(ends(told)).toBe('untested');
      expect(suggestFor(told.record, salon, told.atMs)).toBe('endsOut');
    }
  });
});

describe('zones that stand', () => {
  const standing = ({ record, atMs }: Told, nowMs = atMs) => listStanding(record, nowMs);
  const atDecision = firstEnds({});
  const weighed = tell(until('BOWL_APPLIED', lowRisk));
  const target = (targetLevel: string) => changed(find(ofStep('client')), { targetLevel });

  it('have a newest strand with an outcome for this plan, no older than 28 days (ASSUMED)', () => {
    expect(standing(atDecision)).toEqual(['lengths', 'ends']);
    expect(standing(andThen(atDecision, target('8')))).toEqual([]);
    expect(standing(andThen(andThen(atDecision, target('8')), target('7')))).toEqual(['lengths', 'ends']);
    const offAtMs = atDecision.record.strands.map(({ ended }) => (ended?.atMs ?? 0) + 28 * day);
    const [firstMs, lastMs] = [Math.min(...offAtMs), Math.max(...offAtMs)];
    expect(firstMs).toBeLessThan(lastMs);
    expect(standing(atDecision, firstMs)).toHaveLength(2);
    expect(standing(atDecision, firstMs + 1)).toHaveLength(1);
    expect(standing(atDecision, lastMs + 1)).toEqual([]);
    expect(standing(andThen(atDecision, startEnds))).toEqual(['lengths']);
  });

  it('stand no more once their bowl was on a head, and still do while it is only weighed or was thrown', () => {
    expect(standing(weighed)).toEqual(['lengths', 'ends']);
    const zone = { zone: 'lengths' };
    expect(standing(andThen(weighed, { type: 'BOWL_THROWN', answers: zone }))).toEqual(['lengths', 'ends']);
    const on = andThen(weighed, { type: 'BOWL_APPLIED', answers: { ...zone, skinFirst: 'calm' } });
    expect(standing(on)).toEqual(['ends']);
    expect(standing(andThen(on, { type: 'BOWL_RINSED', answers: zone }))).toEqual(['ends']);
  });
});

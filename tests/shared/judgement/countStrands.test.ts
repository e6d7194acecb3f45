import { describe, expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import { findLeastProven, gatherFindings, suggestFor } from '../../../shared/judgement/findings';
import { listWorstPlaces } from '../../../shared/judgement/planSnips';
import type { RawEvent } from '../../../shared/records/classify';
import type { RawForm } from '../../../shared/records/readForm';
import type { ConsultationRecord } from '../../../shared/records/record';
import { andThen, bothHold, change, find, ofStep, ofType, tell, until } from '../records/telling';

const story = change(until('DECIDED', bothHold), ofStep('feelHair'), { breakage: 'some' });
const ends = ofType('STRAND_STARTED', 'ends');
const minute = 60_000;
type Suggesting = { readonly record: ConsultationRecord; readonly atMs: number };
const gather = ({ record, atMs }: Suggesting) => gatherFindings(record, salon, atMs);
const suggest = ({ record, atMs }: Suggesting) => suggestFor(record, salon, atMs);

/** One strand of each, the one of the ends as here; and then a second of the ends, from the hairline, for so long. */
function testTwice(first: RawForm, second: RawForm = {}, onMin = 25): Suggesting {
  const before = tell(change(story, ends, first));
  const started = { ...find(ends).answers, place: 'hairline', ...second };
  const on = andThen(before, { type: 'STRAND_STARTED', answers: started } as RawEvent);
  const why = onMin < 25 ? 'clientLeaves' : 'timeIsUp';
  const off = { type: 'STRAND_TAKEN_OFF', answers: { zone: 'ends', why } } as const;
  const held = bothHold.find(({ raw }) => ofType('OUTCOME_RECORDED', 'ends')(raw));
  if (held === undefined) throw new Error('nothing held');
  return andThen(andThen(on, off, onMin * minute), held.raw);
}

describe('a second strand on hair with more than one sign', () => {
  it('counts where it stood the same mix for as long, from a place of its own, one of them the worst', () => {
    expect(gather(testTwice({}))).toMatchObject({ risk: 'high', strands: 2 });
    expect(suggest(testTwice({}))).toBe('smallerLift');
  });

  it.each<[string, RawForm, RawForm?]>([
    ['weaker', { developerPercent: '3' }],
    ['of another line', { line: 'Sandbar cream' }],
    ['of another ratio', { ratio: '1' }],
    ['cooler', {}, { heat: 'foil' }],
    ['from the same place', {}, { place: 'whereIroned' }],
  ])('says nothing more where one was %s', (_what, first, second) => {
    expect(gather(testTwice(first, second)).strands).toBe(1);
    expect(suggest(testTwice(first, second))).toBe('testAgain');
  });

  it('says nothing more where the other was on for less', () => {
    const [full, short] = [testTwice({}, {}), testTwice({}, { minutes: '25' }, 10)];
    // What went on for ten minutes is what would go on for ten: the longer one stood that.
    expect([gather(full).strands, gather(short).strands]).toEqual([2, 2]);
    const early = testTwice({ minutes: '10' }, {});
    expect(gather(early).strands).toBe(1);
  });

  it.each([
    ['crown', 'hairline'],
    ['nape', 'hairline'],
    ['hairline', 'nape'],
  ])('is one from the worst place by the map, where she irons: not of %s and %s', (one, other) => {
    expect(listWorstPlaces(tell(story).record.answers)).toEqual(['whereIroned']);
    expect(gather(testTwice({ place: one }, { place: other })).strands).toBe(1);
    expect(gather(testTwice({ place: 'whereIroned' }, { place: other })).strands).toBe(2);
  });

  it('is of hair as old: healthier lengths are no witness for the ends, and ends are one for the lengths', () => {
    const { record, atMs } = tell(story);
    expect(gather({ record, atMs }).strands).toBe(1);
    expect(findLeastProven(record, atMs)).toEqual({ zone: 'ends', places: ['whereIroned'], count: 1 });
    expect(findLeastProven({ ...record, modelVersion: 4 }, atMs)?.count).toBe(2);
    const withoutEnds = {
      ...record.answers,
      client: { ...record.answers.client, reach: 'endsOut' as const },
    };
    expect(listWorstPlaces(withoutEnds as typeof record.answers)).toEqual(['whereIroned']);
  });

  it('that failed has spoken, for however long it was on', () => {
    const failed = tell(
      change(story, ofType('OUTCOME_RECORDED', 'ends'), { fibre: 'broken', stretch: 'snaps' }),
    );
    expect(gather(failed)).toMatchObject({ strands: 2, zones: { ends: 'broken' } });
    expect(suggest(failed)).toBe('cutFirst');
  });
});

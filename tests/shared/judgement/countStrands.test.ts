import { describe, expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import type { StoryStep } from '../../../seeds/story';
import { gatherFindings, suggestFor } from '../../../shared/judgement/findings';
import { listWorstPlaces } from '../../../shared/judgement/planSnips';
import type { RawForm } from '../../../shared/records/readForm';
import { bothHold, change, ofStep, ofType, tell, until } from '../records/telling';

const story = change(until('DECIDED', bothHold), ofStep('feelHair'), { breakage: 'some' });
const lengths = ofType('STRAND_STARTED', 'lengths');
/** The same, with the strand of the lengths another one. */
const withLengths = (answers: RawForm): readonly StoryStep[] => change(story, lengths, answers);
const gather = (steps: readonly StoryStep[]) => {
  const { record, atMs } = tell(steps);
  return gatherFindings(record, salon, atMs);
};
const suggest = (steps: readonly StoryStep[]) => {
  const { record, atMs } = tell(steps);
  return suggestFor(record, salon, atMs);
};

describe('a second strand on hair with more than one sign', () => {
  it('counts where it stood the same mix for as long, from a place of its own', () => {
    expect(gather(story)).toMatchObject({ risk: 'high', strands: 2 });
    expect(suggest(story)).toBe('smallerLift');
  });

  it.each<[string, RawForm]>([
    ['weaker', { developerPercent: '3' }],
    ['of another line', { line: 'Sandbar cream' }],
    ['of another ratio', { ratio: '1' }],
    ['hotter', { heat: 'foil' }],
    ['from the same place', { place: 'whereIroned' }],
  ])('says nothing more where it was %s', (_what, answers) => {
    expect(gather(withLengths(answers)).strands).toBe(1);
    expect(suggest(withLengths(answers))).toBe('testAgain');
  });

  it('says nothing more where it was on for less than the other', () => {
    const early = change(story, ofType('STRAND_TAKEN_OFF', 'lengths'), { why: 'clientLeaves' });
    const tenMin = 10 * 60_000;
    const isOff = ofType('STRAND_TAKEN_OFF', 'lengths');
    const shorter = early.map((step) => {
      if (lengths(step.raw)) return { ...step, afterMs: step.afterMs + tenMin };
      return isOff(step.raw) ? { ...step, afterMs: step.afterMs - tenMin } : step;
    });
    expect(gather(shorter).strands).toBe(1);
  });

  it('that failed has spoken, for however long it was on', () => {
    const failed = change(story, ofType('OUTCOME_RECORDED', 'ends'), { fibre: 'broken', stretch: 'snaps' });
    expect(gather(failed)).toMatchObject({ strands: 2, zones: { ends: 'broken' } });
    expect(suggest(failed)).toBe('cutFirst');
  });

  it('is one of two from the worst place by the map, where she irons, of whichever zone', () => {
    expect(listWorstPlaces(tell(story).record.answers)).toEqual(['whereIroned']);
    const from = (ends: string, others: string) =>
      change(withLengths({ place: others }), ofType('STRAND_STARTED', 'ends'), { place: ends });
    expect(gather(from('crown', 'hairline')).strands).toBe(1);
    expect(gather(from('nape', 'hairline')).strands).toBe(1);
    expect(gather(from('whereIroned', 'hairline')).strands).toBe(2);
    expect(gather(from('hairline', 'whereIroned')).strands).toBe(2);
  });
});

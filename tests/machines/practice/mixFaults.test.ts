import { describe, expect, it } from 'vitest';
import { findMixFault } from '../../../machines/practice/mixFaults';
import { readSettled } from '../../../machines/practice/settled';
import { beganAtMs } from '../../../machines/practice/sitThrough';
import type { StrandRecord } from '../../../shared/records/record';
import { findLesson } from './findLesson';
import { minute, openTruly, startStrand, tap } from './openTruly';

type Mixed = Parameters<typeof startStrand>[2];

/** A strand of lightener that was taken off after so many minutes. */
function test(mix: Partial<Mixed>, minutes: number, id = 'safeClient') {
  const lesson = findLesson(id);
  const tested = { zone: 'lengths', place: 'crown', developerPercent: 6, heat: 'none', ...mix } as const;
  const on = startStrand(lesson, openTruly(lesson), tested);
  const answers = { zone: 'lengths', why: 'levelReached' };
  return tap(lesson, on, beganAtMs + minutes * minute, { type: 'STRAND_TAKEN_OFF', answers }).record;
}
const first = ({ strands }: { readonly strands: readonly StrandRecord[] }): StrandRecord => {
  const [strand] = strands;
  if (strand === undefined) throw new Error('no strand');
  return strand;
};

describe('the mix of a test', () => {
  it('proves nothing where it is too weak, or on too short', () => {
    expect(findMixFault(first(test({ developerPercent: 0.5 }, 1)))).toBe('provesNothing');
    expect(findMixFault(first(test({}, 2)))).toBe('provesNothing');
    expect(findMixFault(first(test({}, 3)))).toBeNull();
    expect(findMixFault(first(test({ developerPercent: 1.5 }, 12)))).toBeNull();
  });

  it('has no dry heat on lightener', () => {
    expect(findMixFault(first(test({ heat: 'dryHeat' }, 20)))).toBe('heatOnLightener');
    expect(findMixFault(first(test({ heat: 'foil' }, 20)))).toBeNull();
  });

  it('may be short where it only deposits', () => {
    expect(findMixFault(first(test({ developerPercent: 1.5 }, 5, 'fineGrey')))).toBeNull();
  });

  it('is not the one the truth is judged by where it is at fault', () => {
    expect(readSettled(test({ developerPercent: 0.5 }, 1), {}).findMix('lengths')).toBeNull();
    expect(readSettled(test({ heat: 'dryHeat' }, 20), {}).findMix('lengths')).toBeNull();
    expect(readSettled(test({}, 20), {}).findMix('lengths')).toMatchObject({ minutes: 20 });
  });
});

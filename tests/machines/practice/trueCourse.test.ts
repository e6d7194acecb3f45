import { describe, expect, it } from 'vitest';
import { settleLesson } from '../../../machines/practice/practiceRoom';
import { readSettled, type Settled } from '../../../machines/practice/settled';
import { beganAtMs, sitThrough as sit } from '../../../machines/practice/sitThrough';
import { playTruth } from '../../../machines/practice/trueCourse';
import { beginRecord } from '../../../shared/records/record';
import { defaultSettings } from '../../../shared/records/settings';
import { findLesson } from './findLesson';
import { careless, perfect } from './trainee';

const nothing: Settled = readSettled(beginRecord('practice0nobody'), {});
const play = (id: string, settled = nothing) => {
  const lesson = findLesson(id);
  return playTruth({ lesson, seed: 1 }, settleLesson(lesson, defaultSettings), beganAtMs, settled);
};

describe('the true course', () => {
  it('ends where she is truly stopped, before any strand', () => {
    for (const [id, stop] of [
      ['minor', 'stop.underAge'],
      ['positiveSkinTest', 'stop.skinTestPositive'],
      ['compoundHenna', 'stop.incompatibilityReacted'],
      ['relaxer', 'judgement.relaxerThenLightener'],
    ] as const) {
      const course = play(id);
      expect(course.stops, id).toEqual([stop]);
      expect(course).toMatchObject({ suggested: 'weSayNo', mayMix: [] });
      expect(course.record.strands, id).toEqual([]);
    }
  });

  it('takes a strand of each zone from where the map snips, and tells it as it comes off', () => {
    const { record, suggested, mayMix } = play('longEnds');
    expect(record.strands.map(({ zone, place }) => [zone, place])).toEqual([
      ['lengths', 'hairline'],
      ['ends', 'whereIroned'],
    ]);
    const [lengths, ends] = record.strands.map(({ outcome }) => outcome?.grade);
    expect(['sound', 'rough']).toContain(lengths);
    expect(ends).toBe('broken');
    expect(record.strands[1]?.ended?.how).toBe('broke');
    expect(suggested).toBe('endsOut');
    expect(mayMix).toEqual(['lengths']);
  });

  it('lets everything be mixed of a client with nothing against her', () => {
    expect(play('safeClient')).toMatchObject({
      suggested: 'asPlanned',
      stops: [],
      mayMix: ['lengths', 'ends'],
    });
  });

  it('ends at a judgement stop that truly stands, though the trainee signed it away', () => {
    const { consultation } = sit(findLesson('relaxer'), { ...perfect, lifts: () => true }, 1);
    expect(consultation.record.overrides.map(({ rule }) => rule)).toContain('judgement.relaxerThenLightener');
    expect(play('relaxer', readSettled(consultation.record, {}))).toMatchObject({
      stops: ['judgement.relaxerThenLightener'],
      suggested: 'weSayNo',
      mayMix: [],
    });
  });

  it('tests the trainee’s own mix for as long as it was tested, wherever the strand was snipped', () => {
    const { consultation } = sit(findLesson('neverChemical'), { ...careless, place: 'nape' }, 1);
    const settled = readSettled(consultation.record, {});
    expect(settled.findMix('ends')).toMatchObject({
      line: 'Sandbar powder',
      developerPercent: 6,
      minutes: 30,
    });
    expect(settled.findMix('roots')).toEqual(settled.findMix('ends'));
    const weak = {
      line: 'Sandbar powder',
      developerPercent: 3,
      ratio: 2,
      heat: 'none',
      minutes: 10,
    } as const;
    const { record } = play('neverChemical', { ...nothing, findMix: () => weak });
    expect(record.strands.map(({ minutesOn }) => minutesOn)).toEqual([10, 10]);
    expect(record.strands.map(({ developerPercent }) => developerPercent)).toEqual([3, 3]);
  });

  it('keeps to a plan that was changed', () => {
    const { record } = play('longEnds', { ...nothing, plan: { reach: 'endsOut' } });
    expect(record.strands.map(({ zone }) => zone)).toEqual(['lengths']);
  });
});

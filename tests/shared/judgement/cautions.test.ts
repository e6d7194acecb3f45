import { describe, expect, it } from 'vitest';
import {
  cautionMoments,
  listCautions,
  type StatedCautionId,
  statedCautions,
} from '../../../shared/judgement/cautions';
import { eventForms } from '../../../shared/records/forms/byEvent';
import { findWords } from '../../../src/words/words';
import { allForms } from '../records/goodForms';

const ids = Object.keys(statedCautions) as StatedCautionId[];

describe('the cautions', () => {
  it('are each heeded at one moment, and no moment is without any', () => {
    const listed = cautionMoments.flatMap(listCautions);
    expect([...listed].sort()).toEqual([...ids].sort());
    expect(cautionMoments.filter((when) => listCautions(when).length === 0)).toEqual([]);
  });

  // Nine items or fewer to a pause: published, Degani & Wiener, Human Factors 35:28–43, 1993.
  it('are few at a time', () => {
    for (const when of cautionMoments) expect(listCautions(when).length, when).toBeLessThanOrEqual(5);
  });

  it.each(ids)('%s says in one of the marks where it stands, and each thing but once', (id) => {
    expect(statedCautions[id].source).toMatch(
      /^(published: .{6}|common practice, no source|from memory: |assumed: )/,
    );
    const { all } = findWords('en').cautionList;
    expect(all[id].length).toBeGreaterThan(10);
    expect(ids.filter((other) => all[other] === all[id])).toEqual([id]);
  });
});

// Health-service advice (secondary): advice, never a block, and not stored.
it('pregnancy is asked by no form, so that no log can hold it', () => {
  const asked = JSON.stringify([allForms, eventForms]);
  expect(asked).toContain('reactions');
  expect(asked).not.toMatch(/pregnan/i);
});

import { describe, expect, it } from 'vitest';
import {
  cautionMoments,
  listCautions,
  type StatedCautionId,
  statedCautions,
} from '../../../shared/judgement/cautions';
import { type RuleId, ruleIds, rules } from '../../../shared/judgement/rules';
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

/** What the screens stop for is said on the page of cautions too: EVIDENCE.md §9, its row on the label text and on persulfates. */
const alsoSaid = {
  'stop.reactionEver': 'reactedEver',
  'stop.anyReaction': 'reactedEver',
  'stop.persulfateReaction': 'persulfates',
  'stop.blackTattoo': 'blackTattoo',
  'stop.scalpBroken': 'skinToday',
  'stop.faceRash': 'skinToday',
  'stop.underAge': 'underAge',
  'stop.incompatibilityReacted': 'glassAndGoggles',
} as const satisfies Partial<Record<RuleId, StatedCautionId>>;

it.each(Object.entries(alsoSaid))('%s stands as the caution %s, with the same source', (rule, id) => {
  expect(statedCautions[id].source.split(/[:,;]/)[0]).toBe(rules[rule as RuleId].source.split(/[:,;]/)[0]);
  if (rules[rule as RuleId].source.includes('1223/2009'))
    expect(statedCautions[id].source).toContain('Reg. (EC) 1223/2009 Annex III label text');
});

it('every absolute answer of a form has its caution', () => {
  const asked = ruleIds.filter((id) => rules[id].kind === 'absolute' && rules[id].step !== null);
  expect(asked.filter((id) => !(id in alsoSaid))).toEqual([]);
});

describe('what the hand and the eye need', () => {
  const { all } = findWords('en').cautionList;
  it.each([
    ['powder', /goggles/],
    ['glassAndGoggles', /gloves and goggles/],
    ['poolWater', /pool or well water/i],
    ['keptCutting', /keep the cutting 24 h/i],
    ['skinToday', /rash or burn on the face.*scalp/i],
    ['underAge', /under 16/],
  ] as const)('%s says it', (id, words) => {
    expect(all[id]).toMatch(words);
  });
});

// A citation names its author or regulation and its year; guidance without them is memory or practice.
it('nothing is called published without a year or a numbered law', () => {
  for (const id of ids) {
    const { source } = statedCautions[id];
    if (source.startsWith('published')) expect(source, id).toMatch(/(19|20)\d\d|U\.S\.C\./);
  }
});

// Health-service advice (secondary): advice, never a block, and not stored.
it('pregnancy is asked by no form, so that no log can hold it', () => {
  const asked = JSON.stringify([allForms, eventForms]);
  expect(asked).toContain('reactions');
  expect(asked).not.toMatch(/pregnan/i);
});

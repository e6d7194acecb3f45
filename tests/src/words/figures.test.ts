import { describe, expect, it } from 'vitest';
import { writeFigures } from '../../../src/words/figures';
import { makeMoments } from '../../../src/words/makeMoments';
import { findWords } from '../../../src/words/words';

const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe('a figure inside a sentence', () => {
  it('is the constant that is in force, written in its language', () => {
    expect(Object.values(writeFigures('en')).map(plain)).toEqual([
      '12',
      '20 min',
      '12 %',
      '40 vol',
      '20 s',
      '24',
      '15',
      '20 min',
      '24',
      '2 min',
      '20',
      '30 min',
      '10',
      '36',
      '20 %',
      '30 %',
      '10 s',
      '1',
      '51 %',
      '50',
      '28',
      '48',
      '50 mm',
      '28',
      '100 %',
      '30 min',
      '30 s',
      '3 s',
    ]);
  });

  it('stands in the words', () => {
    const { refusals, strandTest, asked, mix, reaction } = findWords('en');
    expect(plain(refusals.permit.outcomeLapsed.what)).toBe('The outcome is more than 28 days old.');
    expect(plain(refusals.permit.incompatibilityOpen.clears)).toBe(
      'Start that test, and read it after 30 min.',
    );
    expect(plain(strandTest.glass.start)).toBe('Start the glass, 30 min');
    expect(plain(mix.thin.refusals.overCeiling)).toBe('Over 12 % (40 vol) goes on no hair.');
    expect(plain(reaction.rinseGoal)).toBe('Water: a burn 20 min, eyes 15 to 20 min.');
    expect(asked.client.targetLevel.hint).toBe('1 black to 10 lightest blond');
    expect(asked.hotTools.relaxedWithinTwoWeeks.ask).toContain('keratin');
  });
});

it('says moments in the language it is given', () => {
  const atMs = Date.UTC(2026, 2, 5, 12, 0);
  expect(makeMoments('en').dayAndTime(atMs)).toMatch(/^Thursday, March 5, /);
  expect(makeMoments('de').dayAndTime(atMs)).toMatch(/^Donnerstag, 5\. März, /);
});

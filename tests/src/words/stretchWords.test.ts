import { describe, expect, it } from 'vitest';
import { findWords } from '../../../src/words/words';

const { asked, ruler, strandTest } = findWords('en');
const plain = (text: string | undefined) => (text ?? '').replaceAll('\u00a0', ' ');

const felt = asked.feelHair.wetStretch;
const { stretch, wentPast30 } = strandTest.forms.outcome;

describe('the wet stretch', () => {
  it.each([
    ['at the feel', felt],
    ['at the outcome', stretch],
  ])('%s is three taps: springs back, slow and long, snaps or mush', (_where, { options }) => {
    expect(options).toMatchObject({
      springsBack: 'Springs back',
      staysLong: 'Slow, stays long',
      snaps: 'Snaps or mush',
    });
  });

  it.each([
    ['at the feel', felt.hint],
    ['at the outcome', stretch.hint],
    ['on the ruler', `${ruler.steps.rest.how} ${ruler.steps.pulled.ask}`],
  ])('%s pulls curls straight first, then lightly to 20 to 30 %%, never more', (_where, said) => {
    const words = plain(said);
    expect(words.toLowerCase()).toContain('pull the curl straight first');
    expect(words).toContain('20 % to 30 %');
    expect(words).toContain('never more');
    expect(words.indexOf('straight')).toBeLessThan(words.indexOf('20 %'));
  });

  it('that went past 30 % is asked for beside it', () => {
    expect(plain(wentPast30.ask)).toBe('Did a light pull stretch it past 30 %?');
  });

  it('names the answers that need no ruler by their own words', () => {
    const { springsBack, staysLong, snaps } = felt.options;
    for (const option of [springsBack, staysLong, snaps]) {
      expect(ruler.set.notSet.toLowerCase()).toContain(option.toLowerCase());
    }
  });

  it('that was measured is filled in, and nothing else is said of it', () => {
    expect(ruler.fill).toBe('Fill it in');
    expect(ruler.confirm).toContain('filled in');
  });
});

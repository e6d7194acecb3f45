import { afterEach, describe, expect, it } from 'vitest';
import { dropDrafts } from '../../../../src/screens/keptDraft';
import { MixScreen } from '../../../../src/screens/mix/MixScreen';
import { act, choose, hasAct, layOnBench, press, said, seen, type, typed } from '../bench';
import { playUntil } from '../playStory';

afterEach(() => dropDrafts('story'));

const openBowl = () => layOnBench(MixScreen, playUntil('DECIDED'));
const isDisabled = (name: string) => (act(name) as HTMLButtonElement).disabled;

describe('bad input at the bowl', () => {
  it.each([
    ['ratio', '0', 'Too low.'],
    ['ratio', '-2', 'Too low.'],
    ['colourG', '5000', 'Too high.'],
    ['colourG', '-40', 'Too low.'],
    ['developerPercent', '12.1', 'Too high.'],
    ['minutes', 'soon', 'That is not a number.'],
  ])('%s of %s is said there, nothing is weighed and nothing typed is lost', async (question, text, why) => {
    const bench = openBowl();
    await type('batch', 'B-99');
    await type(question, text);
    expect(said(question)).toContain(why);
    if (!isDisabled('weigh')) await press('weigh');
    expect(bench.last()?.type).toBe('DECIDED');
    expect(typed(question)).toBe(text);
    expect(typed('batch')).toBe('B-99');
    expect(seen('[data-panel="grams"]')).toBe('');
  });
});

describe('only other bottles at hand', () => {
  it('are reckoned for what the bowl says, not for the most it may be', async () => {
    openBowl();
    await choose('developerPercent', '1.5');
    document.querySelector<HTMLElement>('[data-ledger="summary"]')?.click();
    await press('thin');
    document.querySelector<HTMLElement>('[data-ledger="summary"]')?.click();
    expect(seen('[data-figure="wanted"]')).toBe('100 g developer of 1.5 %, from two bottles');
    await press('thin-close');
    expect(hasAct('thin')).toBe(true);
  });

  it('say the grams of each on the scale’s step and what they make; over the law’s ceiling nothing', async () => {
    openBowl();
    await press('thin');
    const weighOf = async (strong: string, weak: string) => {
      await type('strongPercent', strong);
      await type('weakPercent', weak);
      document.querySelector<HTMLElement>('[data-ledger="summary"]')?.click();
      return ['strong', 'weak', 'makes'].map((name) => seen(`[data-figure="${name}"]`)).join(' ');
    };
    expect(await weighOf('6', '1.5')).toBe('33 g 67 g 3 %');
    expect((await weighOf('12.1', '1.5')).trim()).toBe('');
    expect(seen('.broke-line')).toBe('Over 12 % (40 vol) goes on no hair.');
    expect((await weighOf('2', '1.5')).trim()).toBe('');
    expect(seen('.broke-line')).toBe('What is wanted does not lie between the two bottles.');
  });
});

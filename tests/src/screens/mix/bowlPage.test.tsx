import { afterEach, describe, expect, it } from 'vitest';
import { dropDrafts } from '../../../../src/screens/keptDraft';
import { MixScreen } from '../../../../src/screens/mix/MixScreen';
import { choose, hasAct, layOnBench, press, said, seen, type, typed } from '../bench';
import { playUntil } from '../playStory';

afterEach(() => dropDrafts('story'));

const openBowl = () => layOnBench(MixScreen, playUntil('DECIDED'));

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

  it('are offered where the bottle in the field is too strong, for the strongest that is allowed', async () => {
    openBowl();
    await choose('developerPercent', '9');
    expect(said('developerPercent')).toContain('Too high');
    expect(hasAct('thin')).toBe(true);
    await press('thin');
    await type('strongPercent', '9');
    await type('weakPercent', '1.5');
    document.querySelector<HTMLElement>('[data-ledger="summary"]')?.click();
    expect(seen('[data-figure="wanted"]')).toContain('developer of 3 %');
    await press('thin-use');
    document.querySelector<HTMLElement>('[data-ledger="summary"]')?.click();
    expect(seen('[data-panel="grams"]')).toContain('9 % bottle');
    expect(typed('developerPercent')).toBe('3');
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
    expect(seen('.broke-line')).toBe('Both bottles are weaker than the bowl asks for.');
  });
});

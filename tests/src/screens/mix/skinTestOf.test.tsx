import { describe, expect, it } from 'vitest';
import { sayNotTested } from '../../../../src/screens/mix/skinTestOf';
import { en } from '../../../../src/words/en/en';

const colour = (line: string) => ({ line, isLightener: false });

describe('what a skin test says nothing of, beside the bowl', () => {
  it('is lightener, whatever was tested', () => {
    for (const line of ['Sandbar powder', 'Sandbar cream', undefined]) {
      const said = sayNotTested(
        line === undefined ? {} : { line },
        { line: 'Sandbar powder', isLightener: true },
        en,
      );
      expect(said).toBe('Lightener: the maker’s directions decide, not a skin test.');
    }
  });

  it('is another product line than the one that was on her skin, or one that nobody noted', () => {
    expect(sayNotTested({ line: 'Gravel gloss' }, colour('Sandbar cream'), en)).toBe(
      'The skin test was of Gravel gloss, not of this line.',
    );
    expect(sayNotTested({ line: '' }, colour('Sandbar cream'), en)).toContain('Nobody noted');
    expect(sayNotTested({}, colour('Sandbar cream'), en)).toContain('Nobody noted');
  });

  it('is nothing where that very line was tested, however it is typed, and where none is asked for', () => {
    expect(sayNotTested({ line: 'sandbar  CREAM' }, colour('Sandbar cream'), en)).toBeNull();
    expect(sayNotTested(null, colour('Sandbar cream'), en)).toBeNull();
    expect(sayNotTested(null, { line: 'Sandbar powder', isLightener: true }, en)).toBeNull();
  });
});

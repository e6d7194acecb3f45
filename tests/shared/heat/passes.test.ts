import { describe, expect, it } from 'vitest';
import { isGliding, isIron, type Tool } from '../../../shared/heat/habit';
import { hasShortPasses } from '../../../shared/heat/passes';
import { computeProfile } from '../../../shared/heat/profile';
import { exactly } from '../../../shared/units/range';
import { allKnown, twoYearsWet as told } from './histories';

const tools: readonly Tool[] = ['flatIron', 'curlingIron', 'wand', 'hotBrush', 'rollers', 'dryer', 'other'];

describe('passes', () => {
  it('never count twice: the seconds of a section are those of all its passes', () => {
    const minutesWith = (passes: number | 'unknown') =>
      computeProfile({ ...allKnown, habits: [{ ...told, passes }] }, [30])[0]?.ironMin;
    expect(minutesWith(1)).toEqual(exactly(312));
    for (const passes of [2, 6, 30, 'unknown'] as const) expect(minutesWith(passes)).toEqual(minutesWith(1));
  });

  it('are short when each takes ten seconds at most, and not known to be where anything is not told', () => {
    expect(hasShortPasses(told)).toBe(true);
    expect(hasShortPasses({ ...told, passes: 5 })).toBe(false);
    expect(hasShortPasses({ ...told, passes: 'unknown' })).toBe(false);
    expect(hasShortPasses({ ...told, secondsASection: 'unknown' })).toBe(false);
    expect(hasShortPasses({ ...told, tool: 'wand' })).toBe(false);
    expect(hasShortPasses({ ...told, secondsASection: 0 })).toBe(false);
  });
});

describe('the tools', () => {
  it('are all irons but the dryer, and only the flat iron glides', () => {
    expect(tools.filter((tool) => !isIron(tool))).toEqual(['dryer']);
    expect(tools.filter(isGliding)).toEqual(['flatIron']);
  });
});

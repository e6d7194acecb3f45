import { afterEach, describe, expect, it } from 'vitest';
import { ColourOn } from '../../../../src/screens/colourOn/ColourOn';
import { dropDrafts } from '../../../../src/screens/keptDraft';
import { MixScreen } from '../../../../src/screens/mix/MixScreen';
import { act, hasAct, layOnBench, press, seen } from '../bench';
import { and, bothOn, endsWaiting, minute, rinse } from '../everyEdge/starts';
import { tap } from '../playStory';

afterEach(() => dropDrafts('story'));

const look = (hair: 'sound' | 'stretchy' | 'breaking') =>
  ({ type: 'LOOKED', answers: { of: 'head', zone: 'lengths', stinging: 'no', hair } }) as const;
const isDisabled = (name: string) => (act(name) as HTMLButtonElement).disabled;

describe('one head', () => {
  it('takes the bowl that waits while its hair holds', async () => {
    const bench = layOnBench(ColourOn, endsWaiting());
    expect(isDisabled('apply')).toBe(false);
    await press('apply');
    expect(bench.last()).toMatchObject({ type: 'BOWL_APPLIED', payload: { zone: 'ends' } });
  });

  it('takes no other bowl once hair broke on it, on the head and at the scale, and says why', () => {
    const broke = and(endsWaiting(), look('breaking'));
    const onHead = layOnBench(ColourOn, broke);
    expect(seen('[data-zone="ends"] .held-up')).toBe('Hair broke on this head today.');
    expect(isDisabled('apply')).toBe(true);
    onHead.unmount();
    layOnBench(MixScreen, rinse(broke));
    expect(seen('.broke-line')).toBe('Hair broke on this head today.');
    expect(isDisabled('apply')).toBe(true);
    expect(hasAct('throw')).toBe(true);
  });

  it('takes none while it was stretchy, and one once it was rinsed and felt to spring back', () => {
    const stretchy = and(endsWaiting(), look('stretchy'));
    const held = layOnBench(MixScreen, rinse(stretchy));
    expect(seen('.broke-line')).toBe('Hair on this head was stretchy.');
    held.unmount();
    layOnBench(
      MixScreen,
      and(rinse(stretchy), {
        type: 'STRETCH_NOTED',
        answers: { zone: 'lengths', stretch: 'springsBack', before: 'stands' },
      }),
    );
    expect(isDisabled('apply')).toBe(false);
  });

  it('keeps the page of a look with its zone, whatever calls for another meanwhile', async () => {
    const bench = layOnBench(ColourOn, tap(bothOn(), 4 * minute, look('sound')));
    await press('look');
    // The lengths are on their way to the basin long before anybody answers.
    bench.pass(10 * minute);
    await press('hair-sound');
    expect(bench.last()).toMatchObject({ type: 'LOOKED', payload: { of: 'head', zone: 'ends' } });
  });
});

import { describe, expect, it } from 'vitest';
import type { StepProps } from '../../../../src/screens/stepProps';
import { Toner } from '../../../../src/screens/toner/Toner';
import { act, choose, hasAct, layOnBench, press, said, seen, title, type, typed } from '../bench';
import { lengthsOn, minute, rinse } from '../everyEdge/starts';
import { tap } from '../playStory';

const TonerOfLengths = (props: StepProps) => <Toner {...props} zone="lengths" onClose={() => undefined} />;
const openToner = () => layOnBench(TonerOfLengths, rinse(lengthsOn()));
describe('towards a toner', () => {
  it('weak hair has no toner today, and the way on is without one', async () => {
    const bench = openToner();
    expect(hasAct('told-wrongly')).toBe(false);
    await choose('stretch', 'staysLong');
    await press('keep-stretch');
    expect(seen('.big-word')).toBe('Slow, stays long');
    expect(seen('.refusal')).toContain('It does not spring back: no toner today, and no second round.');
    expect(act('cancel').dataset.kind).toBe('primary');
    expect(hasAct('keep-stretch')).toBe(false);
    expect(hasAct('weigh-toner')).toBe(false);
    expect(bench.last()).toMatchObject({ type: 'STRETCH_NOTED', payload: { before: 'stands' } });
  });

  it('was told wrongly only by name and reason: that opens the bowl, and what dried is felt again', async () => {
    const bench = openToner();
    await choose('stretch', 'snaps');
    await press('keep-stretch');
    await press('told-wrongly');
    await choose('stretch', 'springsBack');
    await choose('by', 'Juno');
    await press('keep-stretch');
    expect(bench.last()).toMatchObject({ payload: { stretch: 'snaps' } });
    await choose('code', 'otherZone');
    await press('keep-stretch');
    expect(bench.last()).toMatchObject({
      by: 'Juno',
      payload: { stretch: 'springsBack', before: 'wrongTap', code: 'otherZone' },
    });
    expect(title()).toContain('Toner for the lengths');
    bench.pass(31 * minute);
    expect(hasAct('weigh-toner')).toBe(false);
    expect(hasAct('told-wrongly')).toBe(false);
  });

  it('leads back from “told wrongly”, and weak hair stands there again', async () => {
    openToner();
    await choose('stretch', 'staysLong');
    await press('keep-stretch');
    await press('told-wrongly');
    await press('cancel');
    expect(seen('.big-word')).toBe('Slow, stays long');
    expect(act('cancel').dataset.kind).toBe('primary');
  });

  it('takes nothing back of hair that broke with colour on', async () => {
    const look = { of: 'head', zone: 'lengths', stinging: 'no', hair: 'breaking' };
    layOnBench(TonerOfLengths, rinse(tap(lengthsOn(), minute, { type: 'LOOKED', answers: look })));
    expect(seen('.big-word')).toBe('It broke with colour on');
    expect(seen('.caution[data-kind="stop"]')).toContain('Another visit, with a new strand.');
    expect(title()).toBe('Toner for the lengths');
    expect(hasAct('told-wrongly')).toBe(false);
    expect(act('cancel').textContent).toBe('No toner today');
  });

  it('says at the line why it is none, and keeps what was typed', async () => {
    openToner();
    await choose('stretch', 'springsBack');
    await press('keep-stretch');
    await choose('developerPercent', '1.5');
    await choose('minutes', '10');
    await choose('ratio', '2');
    for (const [line, why] of [
      ['Gravel gloss', 'Not on the shelf as a colour.'],
      ['Sandbar powder', 'That lifts.'],
    ] as const) {
      await type('line', line);
      await press('weigh-toner');
      expect(said('line')).toContain(why);
      expect(typed('line')).toBe(line);
    }
  });
});

import { describe, expect, it } from 'vitest';
import type { StepProps } from '../../../../src/screens/stepProps';
import { Toner } from '../../../../src/screens/toner/Toner';
import { choose, hasAct, layOnBench, press, said, seen, title, type, typed } from '../bench';
import { lengthsOn, minute, rinse } from '../everyEdge/starts';

const TonerOfLengths = (props: StepProps) => <Toner {...props} zone="lengths" onClose={() => undefined} />;
const openToner = () => layOnBench(TonerOfLengths, rinse(lengthsOn()));
const isAsked = (question: string) =>
  document.querySelector(`:is([data-field="${question}"], [data-ledger="${question}"])`) !== null;

describe('towards a toner', () => {
  it('weak hair stays weak until whoever feels again says that it was a wrong tap', async () => {
    const bench = openToner();
    expect(isAsked('before')).toBe(false);
    await choose('stretch', 'staysLong');
    await press('keep-stretch');
    expect(seen('.refusal')).toContain('It does not spring back: no toner today.');
    expect(isAsked('before')).toBe(true);
    await choose('stretch', 'springsBack');
    await press('keep-stretch');
    expect(said('before')).not.toBe('');
    expect(bench.last()).toMatchObject({ type: 'STRETCH_NOTED', payload: { stretch: 'staysLong' } });
    await choose('before', 'stands');
    await press('keep-stretch');
    expect(hasAct('weigh-toner')).toBe(false);
    await choose('before', 'wrongTap');
    await choose('stretch', 'springsBack');
    await press('keep-stretch');
    expect(hasAct('weigh-toner')).toBe(false);
  });

  it('a wrong tap that is called one at once opens the bowl, and what dried is felt again', async () => {
    const bench = openToner();
    await choose('stretch', 'snaps');
    await press('keep-stretch');
    await choose('stretch', 'springsBack');
    await choose('before', 'wrongTap');
    await press('keep-stretch');
    expect(title()).toContain('Toner for the lengths');
    bench.pass(31 * minute);
    expect(hasAct('weigh-toner')).toBe(false);
    expect(isAsked('before')).toBe(false);
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

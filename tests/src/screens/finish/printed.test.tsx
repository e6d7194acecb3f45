import { beforeEach, describe, expect, it, onTestFinished } from 'vitest';
import { EverybodyProvider } from '../../../../src/screens/everybody';
import { Finish } from '../../../../src/screens/finish/Finish';
import type { StepProps } from '../../../../src/screens/stepProps';
import { choose, layOnBench, press, seen } from '../bench';
import { planSaid } from '../planSaid';
import { playUntil } from '../playStory';

let prints = 0;
beforeEach(() => {
  prints = 0;
  const before = window.print;
  window.print = () => {
    prints += 1;
  };
  onTestFinished(() => {
    window.print = before;
  });
});

const openCard = () => document.querySelector<HTMLElement>('[data-ledger="cardNow"]')?.click();
const tile = (option: string) => document.querySelector<HTMLButtonElement>(`[data-option="${option}"]`);

describe('how she takes her card along', () => {
  it('is said by hand, by a photo or not at all before anything else is, and "printed" not', () => {
    layOnBench(Finish, playUntil('FINISHED'));
    openCard();
    expect(['printed', 'byHand', 'photographed', 'notWanted'].map((each) => tile(each)?.disabled)).toEqual([
      ...[true, false, false, false],
    ]);
    expect(prints).toBe(0);
  });

  it('is printed by the very tap that says so, and another figure takes that back', async () => {
    const bench = layOnBench(Finish, playUntil('FINISHED'));
    for (const [question, option] of planSaid.slice(1, -1)) await choose(question, option);
    openCard();
    expect(document.querySelector('.paper .hand-out')).not.toBeNull();
    tile('printed')?.click();
    expect(prints).toBe(1);
    expect(seen('.plan-card')).not.toBe('');
    await choose('back', 'weeks8');
    expect(seen('.plan-card')).toBe('');
    await press('give-plan');
    expect(bench.consultation().record.plan).toBeNull();
    await choose('cardNow', 'printed');
    expect(prints).toBe(2);
    await press('give-plan');
    expect(bench.consultation().record.plan).toMatchObject({ back: 'weeks8', cardNow: 'printed' });
  });

  it('is not printed while somebody calls, and the page says who', async () => {
    const other = { ...playUntil('BOWL_APPLIED').consultation, id: 'other' };
    const beside = (props: StepProps) => (
      <EverybodyProvider value={() => [props.consultation, other]}>
        <Finish {...props} />
      </EverybodyProvider>
    );
    const bench = layOnBench(beside, playUntil('FINISHED'));
    for (const [question, option] of planSaid.slice(1, -1)) await choose(question, option);
    expect(tile('printed')?.disabled).toBe(true);
    expect(seen('.closing-line')).toContain('Not now:');
    await choose('cardNow', 'byHand');
    await press('give-plan');
    expect(bench.consultation().record.plan).toMatchObject({ cardNow: 'byHand' });
    expect(prints).toBe(0);
  });
});

import { render } from '@solidjs/testing-library';
import { describe, expect, it, onTestFinished } from 'vitest';
import { findStrand } from '../../../../shared/records/record';
import { refuse } from '../../../../shared/result';
import { StepPage } from '../../../../src/parts/StepPage';
import { createBreaking } from '../../../../src/screens/strandTest/breaking';
import { Processing } from '../../../../src/screens/strandTest/Processing';
import { holdBreaking, layOnBench, press, pressTwice, title } from '../bench';
import { playUntil } from '../playStory';

const howEnded = (bench: ReturnType<typeof layOnBench>, zone: 'ends' | 'lengths') =>
  findStrand(bench.consultation().record, zone)?.ended?.how;

const none = (): void => undefined;
const seenRefusal = () =>
  document.querySelector<HTMLElement>('.above-actions [data-refusal]')?.dataset.refusal;

describe('a strand that breaks', () => {
  it.each(['take-off', 'more-time'])('is held from the page behind %s, which closes', async (act) => {
    const bench = layOnBench(Processing, playUntil('STRAND_STARTED', 'ends'));
    const before = title();
    await press(act);
    expect(title()).not.toBe(before);
    await pressTwice('strand-broke');
    expect(howEnded(bench, 'ends')).toBe('broke');
    expect(title()).not.toBe('Off before its time: why?');
    expect(title()).not.toBe('More time in the mix');
  });

  it('leaves the page of another strand open', async () => {
    const bench = layOnBench(Processing, playUntil('LOOKED', 'ends'));
    await press('take-off');
    const before = title();
    await pressTwice('strand-broke');
    expect(howEnded(bench, 'ends')).toBe('broke');
    expect(title()).toBe(before);
  });

  it.each(['', 'look'])('is held while the other one is the large one%s, each strand once', async (act) => {
    const bench = layOnBench(Processing, playUntil('LOOKED', 'ends'));
    if (act !== '') await press(act);
    const held = [...document.querySelectorAll<HTMLElement>('[data-act="strand-broke"]')];
    expect(held.map(({ dataset }) => dataset.option).sort()).toEqual(['ends', 'lengths']);
    await holdBreaking('lengths');
    expect([howEnded(bench, 'lengths'), howEnded(bench, 'ends')]).toEqual(['broke', undefined]);
  });

  it('that could not be written is said above the actions of whatever page is open', async () => {
    const { consultation } = playUntil('STRAND_STARTED', 'ends');
    const refusal = { kind: 'notNow' } as const;
    const { unmount } = render(() => {
      const breaking = createBreaking({ consultation, submit: async () => refuse(refusal) });
      return (
        <StepPage
          page={{
            ...{ kicker: '', isOnSkin: false, onReaction: none, onMore: none, onBar: none, onBackTo: none },
            breaking: breaking.strands(),
            notBroken: breaking.refusal(),
          }}
          title="Any"
          actions={null}
        >
          {null}
        </StepPage>
      );
    });
    onTestFinished(unmount);
    expect(seenRefusal()).toBeUndefined();
    await pressTwice('strand-broke');
    expect(seenRefusal()).toBe('notNow');
  });
});

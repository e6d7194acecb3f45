import { describe, expect, it } from 'vitest';
import { findStrand } from '../../../../shared/records/record';
import { Processing } from '../../../../src/screens/strandTest/Processing';
import { hasAct, layOnBench, press, pressTwice, title } from '../bench';
import { playUntil } from '../playStory';

const howEnded = (bench: ReturnType<typeof layOnBench>, zone: 'ends' | 'lengths') =>
  findStrand(bench.consultation().record, zone)?.ended?.how;

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

  it('is held while another one is looked at, by the look itself and no second time', async () => {
    layOnBench(Processing, playUntil('LOOKED', 'ends'));
    await press('look');
    expect(hasAct('strand-broke')).toBe(true);
    expect(document.querySelectorAll('[data-act="strand-broke"]')).toHaveLength(1);
  });
});

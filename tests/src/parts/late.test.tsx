import { cleanup, render, screen } from '@solidjs/testing-library';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { ASSUMED_FETCH_AGAIN_MS, late, loadLateParts } from '../../../src/parts/late';
import { WordsProvider } from '../../../src/parts/useWords';
import { en } from '../../../src/words/en/en';

interface Greets {
  readonly name: string;
}

const Page = (props: Greets) => <p>Good morning, {props.name}</p>;

const show = (Part: (props: Greets) => unknown) =>
  render(() => <WordsProvider value={en}>{Part({ name: 'K. L.' }) as never}</WordsProvider>);

let isOver = false;

/** When the network answers is told by the test; what is asked once that is over comes at once, for nobody waits then. */
function makeLine() {
  const asked: { come: () => void; fail: () => void }[] = [];
  const load = () =>
    new Promise<typeof Page>((resolve, reject) => {
      if (isOver) resolve(Page);
      else asked.push({ come: () => resolve(Page), fail: () => reject(new Error('no network')) });
    });
  return { asked, load };
}

describe('a part that comes late', () => {
  beforeEach(() => {
    isOver = false;
    vi.useFakeTimers();
  });
  afterEach(async () => {
    cleanup();
    vi.useRealTimers();
    isOver = true;
    await loadLateParts();
  });

  it('says that it is coming, and then is there with what it was given', async () => {
    const { asked, load } = makeLine();
    show(late(load));
    expect(screen.getByRole('status').textContent).toBe(en.general.stillComing);
    asked[0]?.come();
    await vi.advanceTimersByTimeAsync(0);
    expect(screen.queryByRole('status')).toBeNull();
    expect(screen.getByText('Good morning, K. L.')).toBeTruthy();
  });

  it('is asked for again where it did not come, and for no longer than somebody waits', async () => {
    const { asked, load } = makeLine();
    const { unmount } = show(late(load));
    asked[0]?.fail();
    await vi.advanceTimersByTimeAsync(ASSUMED_FETCH_AGAIN_MS - 1);
    expect(asked).toHaveLength(1);
    await vi.advanceTimersByTimeAsync(1);
    expect(asked).toHaveLength(2);
    expect(screen.queryByText(en.general.loadAnew)).toBeNull();
    asked[1]?.fail();
    await vi.advanceTimersByTimeAsync(0);
    expect(screen.getByText(en.general.loadAnew)).toBeTruthy();
    unmount();
    await vi.advanceTimersByTimeAsync(10 * ASSUMED_FETCH_AGAIN_MS);
    expect(asked).toHaveLength(2);
  });

  it('is fetched once for all who show it, and is there at once for who comes after', async () => {
    const { asked, load } = makeLine();
    const Part = late(load);
    show(Part);
    show(Part);
    expect(asked).toHaveLength(1);
    asked[0]?.come();
    await vi.advanceTimersByTimeAsync(0);
    expect(screen.getAllByText('Good morning, K. L.')).toHaveLength(2);
    show(Part);
    expect(screen.getAllByText('Good morning, K. L.')).toHaveLength(3);
  });

  it('comes by itself once the first screen stands, also after one that did not come', async () => {
    const broken = makeLine();
    const whole = makeLine();
    late(broken.load);
    const Part = late(whole.load);
    const all = loadLateParts();
    await vi.advanceTimersByTimeAsync(0);
    broken.asked[0]?.fail();
    await vi.advanceTimersByTimeAsync(0);
    whole.asked[0]?.come();
    await all;
    show(Part);
    expect(screen.getByText('Good morning, K. L.')).toBeTruthy();
  });
});

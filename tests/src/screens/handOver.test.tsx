import { render } from '@solidjs/testing-library';
import { describe, expect, it, onTestFinished } from 'vitest';
import { accept, refuse } from '../../../shared/result';
import { HandOverWays } from '../../../src/screens/handOver/HandOverWays';
import { HandOverProvider } from '../../../src/screens/handOver/handOverInUse';
import type { HandOver } from '../../../src/tablet/handOver';
import { settle } from './bench';

const file = { name: 'day.csv', type: 'text/csv', text: () => '' };

function show(ways: Partial<HandOver> | undefined) {
  const whole: HandOver | undefined =
    ways === undefined
      ? undefined
      : {
          listShared: () => [],
          share: async () => refuse('notShared'),
          hasFolders: false,
          intoFolder: async () => refuse('notWritten'),
          ...ways,
        };
  const { container, unmount } = render(() => (
    <HandOverProvider value={whole}>
      <HandOverWays files={() => [file]} />
    </HandOverProvider>
  ));
  onTestFinished(unmount);
  return {
    acts: () => [...container.querySelectorAll<HTMLElement>('[data-act]')].map(({ dataset }) => dataset.act),
    text: () => container.textContent ?? '',
    failure: () => container.querySelector<HTMLElement>('[data-hand-over]')?.dataset.handOver,
    tap: async (act: string) => {
      container.querySelector<HTMLElement>(`[data-act=${act}]`)?.click();
      await settle();
    },
  };
}

describe('ways out of the tablet', () => {
  it('are offered only where it has them', () => {
    expect(show(undefined).acts()).toEqual([]);
    expect(show({}).acts()).toEqual([]);
    expect(show({ listShared: (files) => files }).acts()).toEqual(['share']);
    expect(show({ hasFolders: true }).acts()).toEqual(['into-folder']);
  });

  it('say what was written and where, and offer another folder then', async () => {
    const asked: (boolean | undefined)[] = [];
    const page = show({
      hasFolders: true,
      intoFolder: async (_files, anew) => {
        asked.push(anew);
        return accept({ names: ['day.csv'], folder: 'Records' });
      },
    });
    await page.tap('into-folder');
    expect(page.text()).toContain('In “Records”: day.csv');
    expect(page.text()).toContain('Into “Records”');
    await page.tap('another-folder');
    expect(asked).toEqual([false, true]);
  });

  it('say nothing of a window that was closed', async () => {
    const page = show({ listShared: (files) => files, share: async () => accept(null) });
    await page.tap('share');
    expect(page.text()).toBe('Share');
  });

  it('name what failed, and ask for a folder again where it is gone', async () => {
    let isGone = false;
    const page = show({
      hasFolders: true,
      intoFolder: async () =>
        isGone ? refuse('folderGone') : accept({ names: ['day.csv'], folder: 'Records' }),
    });
    await page.tap('into-folder');
    isGone = true;
    await page.tap('into-folder');
    expect(page.failure()).toBe('folderGone');
    expect(page.text()).toContain('That folder is not there any more');
    expect(page.acts()).toEqual(['into-folder']);
  });
});

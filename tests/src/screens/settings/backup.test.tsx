import { render } from '@solidjs/testing-library';
import { describe, expect, it, onTestFinished } from 'vitest';
import { accept, type Result, refuse } from '../../../../shared/result';
import { Backup } from '../../../../src/screens/settings/Backup';
import type { BroughtIn } from '../../../../src/station/bringIn';
import type { SubmitRefusal } from '../../../../src/station/submitRefusal';
import { settle } from '../bench';
import { settings } from '../playStory';

const found: BroughtIn = { closed: 3, gone: 0, isBesideClients: false };

function show(answer: Result<BroughtIn, SubmitRefusal>) {
  const files: string[] = [];
  const { container, unmount } = render(() => (
    <Backup
      backup={{
        backUp: () => ['one\n', 'two\n'],
        bringIn: async (file) => {
          files.push(file);
          return answer;
        },
      }}
      units={settings.units}
      nowMs={Date.UTC(2026, 2, 3, 12)}
    />
  ));
  onTestFinished(unmount);
  const picker = container.querySelector<HTMLInputElement>('input[type=file]');
  if (picker === null) throw new Error('no way to choose a file');
  return {
    files,
    text: () => container.textContent?.replaceAll('\u00a0', ' ') ?? '',
    choose: async (file: Pick<File, 'text'>) => {
      Object.defineProperty(picker, 'files', { value: [file], configurable: true });
      picker.dispatchEvent(new Event('change', { bubbles: true }));
      await settle();
      await settle();
    },
  };
}

describe('bringing a file in', () => {
  it('says when all of it is here', async () => {
    const page = show(accept(found));
    await page.choose(new File(['a backup'], 'backup.txt'));
    expect(page.files).toEqual(['a backup']);
    expect(page.text()).toContain('All of it is here, closed records: 3.');
  });

  it('says why nothing came in, and that nothing was changed', async () => {
    const page = show(refuse({ kind: 'backup', why: 'newer' }));
    await page.choose(new File(['a backup'], 'backup.txt'));
    expect(page.text()).toContain('That backup is of a newer edition of the station.');
    expect(page.text()).toContain('Nothing was changed.');
  });

  it('says when the file is gone', async () => {
    const page = show(accept(found));
    await page.choose({ text: async () => Promise.reject(new Error('gone')) });
    expect(page.files).toEqual([]);
    expect(page.text()).toContain('That file cannot be read.');
  });
});

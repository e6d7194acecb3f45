import { render } from '@solidjs/testing-library';
import type { JSX } from 'solid-js';
import { describe, expect, it, onTestFinished } from 'vitest';
import { accept, type Result, refuse } from '../../../../shared/result';
import { Backup } from '../../../../src/screens/settings/Backup';
import { BringRecords } from '../../../../src/screens/settings/BringRecords';
import type { BroughtIn } from '../../../../src/station/bringIn';
import type { RecordsBrought } from '../../../../src/station/bringInRecords';
import type { SubmitRefusal } from '../../../../src/station/submitRefusal';
import { settle } from '../bench';
import { settings } from '../playStory';

const found: BroughtIn = { closed: 3, gone: 0, beside: null };

/** A page that brings files in, each answered so; how its file is chosen, and what it says. */
function showPage<T>(
  answer: Result<T, SubmitRefusal>,
  renderPage: (bring: (file: string) => Promise<Result<T, SubmitRefusal>>) => JSX.Element,
) {
  const files: string[] = [];
  const bring = async (file: string) => {
    files.push(file);
    return answer;
  };
  const { container, unmount } = render(() => renderPage(bring));
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

const show = (answer: Result<BroughtIn, SubmitRefusal>) =>
  showPage(answer, (bringIn) => (
    <Backup
      backup={{ backUp: () => ['one\n', 'two\n'], bringIn }}
      units={settings.units}
      nowMs={Date.UTC(2026, 2, 3, 12)}
    />
  ));
const showRecords = (answer: Result<RecordsBrought, SubmitRefusal>) =>
  showPage(answer, (bring) => <BringRecords bring={bring} units={settings.units} />);

describe('bringing a file in', () => {
  it('says when all of it is here', async () => {
    const page = show(accept(found));
    await page.choose(new File(['a backup'], 'backup.txt'));
    expect(page.files).toEqual(['a backup']);
    expect(page.text()).toContain('All of it is here, closed records: 3.');
  });

  it('says beside clients what came, what was told twice, who was left there, and what went', async () => {
    const beside = { here: 1, tests: 2, toldTwice: ['Q.F.', 'Q.F.'], open: ['A.K.', 'Z.Z.'] };
    const page = show(accept({ closed: 4, gone: 1, beside }));
    await page.choose(new File(['a backup'], 'backup.txt'));
    expect(page.text()).toContain(
      '4 records came in. 2 skin tests came in or went on. 1 record here already. Q.F.: told otherwise here, both are kept. A.K., Z.Z.: open there, and left there. Erased there, so erased here too: 1.',
    );
  });

  it('says beside clients that nothing was new', async () => {
    const page = show(accept({ closed: 0, gone: 0, beside: { here: 7, tests: 0, toldTwice: [], open: [] } }));
    await page.choose(new File(['a backup'], 'backup.txt'));
    expect(page.text()).toContain('Nothing in it is new here. 7 records here already.');
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

describe('bringing records in', () => {
  const bring = async (records: Result<RecordsBrought, SubmitRefusal>): Promise<string> => {
    const page = showRecords(records);
    await page.choose(new File(['records'], 'day.json'));
    expect(page.files).toEqual(['records']);
    return page.text();
  };

  it('says how many came, how many were here, and who was left out by name', async () => {
    expect(await bring(accept({ came: 4, here: 2, erased: 0, open: ['Q.F.', 'Z.Z.'] }))).toContain(
      '4 records came in. 2 records here already. Still open when it was saved, and left out: Q.F., Z.Z.',
    );
    expect(await bring(accept({ came: 0, here: 0, erased: 0, open: [] }))).toContain(
      'No closed record stands in that file.',
    );
  });

  it.each([
    [{ kind: 'records', why: 'table' }, 'That is the table', 'Nothing was changed.'],
    [
      { kind: 'recordRefused', ticket: 'Q.F.', entry: 7 },
      'Q.F. does not add up: entry 7',
      'Nothing was changed.',
    ],
    [{ kind: 'recordDiffers', ticket: 'Q.F.' }, 'Q.F. is here already', 'What is here stays.'],
    [{ kind: 'recordsNotSaved', came: 3 }, '3 records came in, then', 'choose the same file again'],
    [{ kind: 'recordsNotSaved', came: 0 }, 'None came in, then', 'choose the same file again'],
  ] as const)('says why not: %o', async (refusal, what, clears) => {
    const text = await bring(refuse(refusal));
    expect(text).toContain(what);
    expect(text).toContain(clears);
  });

  it('says when the file is gone', async () => {
    const page = showRecords(accept({ came: 1, here: 0, erased: 0, open: [] }));
    await page.choose({ text: async () => Promise.reject(new Error('gone')) });
    expect(page.text()).toContain('The file of records cannot be read.');
  });
});

import { cleanup } from '@solidjs/testing-library';
import { afterEach, expect, it } from 'vitest';
import { writeLessonFile } from '../../../../machines/practice/lessonFile';
import { lessons } from '../../../../seeds/practice/lessons';
import { makeTablet } from '../../storage/tablet';
import { showPractice } from './inPractice';

afterEach(cleanup);

const base = lessons[0]?.lesson;
if (base === undefined) throw new Error('no lesson');
const own = { ...base, id: 'ourOwn', title: 'One of our own' };

type Shown = Awaited<ReturnType<typeof showPractice>>;

async function bring(shown: Shown, text: string): Promise<void> {
  const picker = shown.find('[data-file=bring-lesson]');
  Object.defineProperty(picker, 'files', { value: [new File([text], 'lesson.json')], configurable: true });
  picker.dispatchEvent(new Event('change', { bubbles: true }));
  await new Promise((resolve) => setTimeout(resolve, 500));
  if (shown.look('[data-act=who-Opal]') !== null) await shown.tap('[data-act=who-Opal]');
  await new Promise((resolve) => setTimeout(resolve, 200));
}

async function toOwn(shown: Shown): Promise<void> {
  await shown.tap('[data-act=trainer]');
  await shown.tap('[data-act=own-lessons]');
}

it('a lesson is brought in, is still there after a restart, deleted, and brought back', async () => {
  const tablet = makeTablet();
  const shown = await showPractice(tablet);
  await toOwn(shown);
  await bring(shown, writeLessonFile(own));
  expect(shown.find('[data-line=told]').textContent).toContain('One of our own');
  expect(shown.look('[data-lesson=ourOwn]')).not.toBeNull();
  await shown.tap('[data-act=delete-ourOwn]');
  expect(shown.look('[data-lesson=ourOwn]')).toBeNull();
  await shown.tap('[data-act=undo-delete]');
  expect(shown.look('[data-lesson=ourOwn]')).not.toBeNull();
  cleanup();
  const again = await showPractice(tablet);
  expect(again.look('[data-act=lesson-ourOwn]')).not.toBeNull();
});

it('one that is refused is not here, and is told why', async () => {
  const shown = await showPractice();
  await toOwn(shown);
  await bring(shown, writeLessonFile(own).slice(0, 90));
  expect(shown.find('[data-line=refused]').textContent).toContain('cut off');
  await bring(shown, writeLessonFile({ ...base, wants: 'Something else.' }));
  expect(shown.find('[data-line=refused]').textContent).toContain(base.title);
  expect(shown.station.readState().practice?.own ?? []).toEqual([]);
});

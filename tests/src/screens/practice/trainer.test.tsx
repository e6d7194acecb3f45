import { cleanup } from '@solidjs/testing-library';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { endsIronedWet } from '../../../../seeds/endsIronedWet';
import { dropDrafts } from '../../../../src/screens/keptDraft';
import type { Shown } from '../stationOnTablet';
import { beginLesson, showPractice } from './inPractice';

const idOf = (shown: Shown): string => [...shown.station.readState().open.keys()][0] ?? '';
const ids: string[] = [];
afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
  for (const id of ids.splice(0)) dropDrafts(id);
});

/** Sits down to the lesson of the tattoo, hears of it, and sends her home for it. */
const sendHome = async (shown: Shown) => {
  ids.push(idOf(shown));
  await shown.goTo('reactions');
  await shown.hold('[data-question=reactions] [data-option=blackTattoo]');
  await shown.tap('[data-act=end]');
  await shown.tap('[data-question=reason] [data-option=notSafeToday]');
  await shown.hold('[data-act=WE_SAID_NO]');
};
const toTrainer = async (shown: Shown) => {
  await shown.tap('[data-act=trainer]');
  await vi.waitFor(() => expect(shown.look('[data-line=reckoning]')).toBeNull());
};
const listRows = (shown: Shown) =>
  [...shown.find('.trainee-list').querySelectorAll<HTMLElement>('[data-trainee]')].map(
    ({ dataset, textContent }) => [dataset.result, textContent] as const,
  );

describe('the trainer', () => {
  it('is told that nobody has sat a lesson, and has nothing to save', async () => {
    const shown = await showPractice();
    await toTrainer(shown);
    expect(shown.find('[data-line=nobody-yet]').textContent).toContain('Nobody');
    expect((shown.find('[data-act=save-trainees]') as HTMLButtonElement).disabled).toBe(true);
    expect(shown.find('[data-step=trainer] .lead').textContent).toContain('Nothing of a client stands in it');
    await shown.tap('[data-act=to-lessons]');
    expect(shown.look('[data-step=lessons]')).not.toBeNull();
  });

  it('is not offered while a lesson is under way', async () => {
    const shown = await beginLesson('blackTattoo', 'exam');
    ids.push(idOf(shown));
    await shown.tap('[data-act=bar]');
    await shown.tap('[data-act=start]');
    expect(shown.look('[data-act=go-on-lesson]')).not.toBeNull();
    expect(shown.look('[data-act=trainer]')).toBeNull();
  });

  it('sees who sat which lesson, how, and how it went, the newest first, and saves it as a table', async () => {
    const shown = await beginLesson('blackTattoo', 'exam');
    await sendHome(shown);
    await shown.turnClock(endsIronedWet.startAtMs + 60_000);
    await shown.tap('[data-act=again]');
    ids.push(idOf(shown));
    await shown.tap('[data-act=bar]');
    await shown.tap('[data-act=start]');
    await shown.tap('[data-act=leave-off]');
    await shown.tap('[data-act=leave-off-now]');
    await toTrainer(shown);
    const rows = listRows(shown);
    expect(rows.map(([result]) => result)).toEqual(['leftOff', 'passed']);
    const [, points = ''] = /Opal · examination · .*Passed · (\d+) of 100/.exec(rows[1]?.[1] ?? '') ?? [];
    expect(Number(points)).toBeGreaterThan(0);
    expect(shown.find('[data-panel=misses]').textContent).toContain('Nothing was missed');

    const saved: Blob[] = [];
    vi.spyOn(URL, 'createObjectURL').mockImplementation((blob) => {
      saved.push(blob as Blob);
      return 'blob:table';
    });
    await shown.tap('[data-act=save-trainees]');
    await vi.waitFor(() =>
      expect(shown.find('[data-line=saved]').textContent).toMatch(
        /strandproof-practice-\d{4}-\d\d-\d\d\.csv/,
      ),
    );
    const lines = ((await saved[0]?.text()) ?? '').trimEnd().split('\r\n');
    expect(lines).toHaveLength(3);
    expect(lines[2]).toMatch(/^blackTattoo,.*,Opal,.*,examination,finished,yes,\d+,,$/);
    expect(lines[2]).toContain(`,yes,${points},`);

    await shown.tap('[data-trainee][data-result=passed]');
    const debrief = shown.find('[data-step=debrief] .debrief-result').textContent;
    expect(debrief).toContain(`Passed ${points} of 100`);
  });
});

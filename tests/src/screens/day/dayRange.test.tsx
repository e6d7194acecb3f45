import { fireEvent, render } from '@solidjs/testing-library';
import { describe, expect, it, onTestFinished } from 'vitest';
import { closeRecord } from '../../../../shared/records/closedRecord';
import { Day } from '../../../../src/screens/day/Day';
import { ASSUMED_MOST_DAYS, countDays, judgeRange, stepBack } from '../../../../src/screens/day/dayRange';
import { playUntil, settings } from '../playStory';

const whole = playUntil('whole');
const closed = closeRecord(whole.consultation.record, whole.consultation.log);
if (closed === null) throw new Error('the story did not close');
const dayMs = 86_400_000;
/** Six days after the story. */
const nowMs = whole.atMs + 6 * dayMs;

describe('days from one to another', () => {
  it('are counted over the hour that is left out in spring', () => {
    expect(countDays({ from: '2026-03-07', day: '2026-03-09' })).toBe(3);
    expect(stepBack('2026-03-09', 2)).toBe('2026-03-07');
    expect(stepBack('2026-03-09', -1)).toBe('2026-03-10');
    expect(stepBack('', 1)).toBe('');
  });

  const last = stepBack('2026-03-09', ASSUMED_MOST_DAYS - 1);
  it.each([
    ['one day', '2026-03-09', '2026-03-09', null],
    ['as many as are shown', last, '2026-03-09', null],
    ['one more', stepBack(last, 1), '2026-03-09', 'tooMany'],
    ['backwards', '2026-03-09', '2026-03-08', 'backwards'],
    ['into tomorrow', '2026-03-09', '2026-03-10', 'ahead'],
    ['without a first one', '', '2026-03-09', 'unsaid'],
    ['without a last one', '2026-03-09', '', 'unsaid'],
  ])('%s', (_what, from, day, verdict) => {
    expect(judgeRange({ from, day }, '2026-03-09')).toBe(verdict);
  });
});

function showDay(isEmpty = false) {
  const { container, unmount } = render(() => (
    <Day
      isDemo={false}
      readSettings={() => () => settings}
      state={{
        mode: 'writing',
        months: { read: 0, all: 0 },
        settings: { id: 0, settings, by: 'Opal' },
        open: new Map(),
        closed: isEmpty || closed === null ? [] : [closed],
        skinTests: [],
        bench: [],
        erasings: { tombstones: [], unfinished: 0 },
        notices: [],
      }}
      nowMs={nowMs}
      onKept={() => undefined}
      onTaught={() => undefined}
      onPressPage={() => undefined}
      onBench={() => undefined}
      onBar={() => undefined}
    />
  ));
  onTestFinished(unmount);
  const find = <T extends HTMLElement>(selector: string) => {
    const found = container.querySelector<T>(selector);
    if (found === null) throw new Error(`no ${selector}`);
    return found;
  };
  const press = (act: string) => find(`[data-act="${act}"]`).click();
  return {
    press,
    find,
    say: (end: 'from' | 'day', value: string) =>
      fireEvent.input(find(`[data-end="${end}"] input`), { target: { value } }),
    typed: (end: 'from' | 'day') => find<HTMLInputElement>(`[data-end="${end}"] input`).value,
    said: () => find('#choose-said').textContent,
    isOpen: () => container.querySelector('.choose-days') !== null,
    rows: () => container.querySelectorAll('[data-panel=closed] [data-record]').length,
    title: () => find('h1').textContent,
  };
}

describe('the days that are shown', () => {
  it('are chosen by date or a day at a time, and stepped through together', () => {
    const day = showDay();
    day.press('day-choose');
    expect([day.typed('from'), day.typed('day'), day.said()]).toEqual(['2026-03-09', '2026-03-09', '1 day.']);
    expect(day.find<HTMLButtonElement>('[data-act="day-on"]').disabled).toBe(true);
    day.say('from', '2026-03-02');
    day.press('day-back');
    expect(day.said()).toBe('7 days.');
    day.press('show-days');
    expect([day.isOpen(), day.rows(), day.title()]).toEqual([false, 1, 'Records, Mon, Mar 2 to Sun, Mar 8']);
    expect(day.find('[data-panel=closed] [data-record]').textContent).toContain('done, Tue, Mar 3, ');
    for (const _day of ['Sunday', 'Saturday']) day.press('day-before');
    expect([day.rows(), day.title()]).toEqual([1, 'Records, Sat, Feb 28 to Fri, Mar 6']);
    day.press('day-week');
    expect(day.title()).toBe('Records, Tue, Mar 3 to Mon, Mar 9');
  });

  it('that cannot be shown are said in a sentence, and stay as they were chosen', () => {
    const day = showDay();
    day.press('day-choose');
    day.say('from', '2026-03-08');
    day.say('day', '2026-03-07');
    expect(day.said()).toBe('The first day comes after the last.');
    fireEvent.submit(day.find('.choose-days'));
    expect([day.isOpen(), day.typed('from'), day.typed('day')]).toEqual([true, '2026-03-08', '2026-03-07']);
    expect(day.find<HTMLButtonElement>('[data-act="show-days"]').disabled).toBe(true);
    day.say('day', '');
    expect(day.said()).toBe('Say both days, the first and the last.');
    day.say('day', '2026-03-12');
    expect(day.said()).toContain('today at the latest');
    day.say('from', '2025-03-08');
    day.say('day', '2026-03-08');
    expect(day.said()).toBe(
      'These are 366 days. At most 31 are shown at once, since the clocks run on this tablet too.',
    );
  });

  it('before anything closed are said to be, and shown all the same', () => {
    const day = showDay();
    day.press('day-choose');
    day.say('from', '2026-02-01');
    day.say('day', '2026-02-02');
    expect(day.said()).toBe('Nothing closed here before Tue, Mar 3.');
    fireEvent.submit(day.find('.choose-days'));
    expect([day.isOpen(), day.rows()]).toEqual([false, 0]);
    const empty = showDay(true);
    empty.press('day-choose');
    expect(empty.said()).toBe('Nothing closed here yet.');
  });
});

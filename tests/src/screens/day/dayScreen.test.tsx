import { render } from '@solidjs/testing-library';
import { createSignal } from 'solid-js';
import { expect, it, onTestFinished } from 'vitest';
import { closeRecord } from '../../../../shared/records/closedRecord';
import { Day } from '../../../../src/screens/day/Day';
import type { StationState } from '../../../../src/station/stationState';
import { playUntil, settings } from '../playStory';

const { consultation, atMs } = playUntil('STRAND_STARTED', 'ends');

/** Today's records over a state that counts how often its closed records are read. */
function showDay(closed: StationState['closed'] = []) {
  const counted = { reads: 0 };
  const state: StationState = {
    mode: 'writing',
    settings: { id: 0, settings, by: 'Opal' },
    open: new Map([[consultation.id, consultation]]),
    get closed() {
      counted.reads += 1;
      return closed;
    },
    months: { read: 0, all: 0 },
    skinTests: [],
    bench: [],
    erasings: { tombstones: [], unfinished: 0 },
    notices: [],
  };
  const [nowMs, setNowMs] = createSignal(atMs);
  const { container, unmount } = render(() => (
    <Day
      isDemo={false}
      readSettings={() => () => settings}
      state={state}
      nowMs={nowMs()}
      onKept={() => undefined}
      onTaught={() => undefined}
      onPressPage={() => undefined}
      onBench={() => undefined}
      onBar={() => undefined}
    />
  ));
  onTestFinished(unmount);
  return {
    counted,
    container,
    setNowMs,
    row: () => container.querySelector('[data-panel=open] [data-record]'),
  };
}

it('leaves each row and its record alone while seconds pass, and reads them anew on another day', () => {
  const shown = showDay();
  const before = shown.row();
  // The day itself, and what is past the time it is kept for.
  expect(shown.counted.reads).toBe(2);
  shown.setNowMs(atMs + 1000);
  shown.setNowMs(atMs + 2000);
  expect(shown.row()).toBe(before);
  expect(before?.textContent).toContain('1 strand · no bowl');
  expect(shown.counted.reads).toBe(2);
  shown.setNowMs(atMs + 24 * 3_600_000);
  expect(shown.counted.reads).toBe(4);
  expect(shown.row()).toBe(before);
});

it('says that a closed record cannot be read any more, and that it is handed out all the same', () => {
  const whole = playUntil('whole').consultation;
  const closed = closeRecord(whole.record, whole.log);
  if (closed === null) throw new Error('the story did not close');
  const { container } = showDay([{ ...closed, id: 'other', endedAtMs: atMs, log: ['no event'] }]);
  expect(container.querySelector('[data-unread]')?.textContent).toContain(
    'Records that cannot be read here: 1.',
  );
});

it('goes back a day and forth again, says which, and to seven days and back', () => {
  const whole = playUntil('whole').consultation;
  const closed = closeRecord(whole.record, whole.log);
  if (closed === null) throw new Error('the story did not close');
  const shown = showDay([{ ...closed, id: 'other', endedAtMs: atMs - 24 * 3_600_000 }]);
  const press = (act: string) => shown.container.querySelector<HTMLElement>(`[data-act="${act}"]`)?.click();
  const closedRows = () => shown.container.querySelectorAll('[data-panel=closed] [data-record]').length;
  const title = () => shown.container.querySelector('h1')?.textContent;
  expect([closedRows(), title()]).toEqual([0, 'Today’s records']);
  expect(shown.container.querySelector<HTMLButtonElement>('[data-act="day-after"]')?.disabled).toBe(true);
  press('day-before');
  expect([closedRows(), shown.row()]).toEqual([1, null]);
  expect(title()).toMatch(/^Records of /);
  press('day-after');
  press('day-week');
  expect(closedRows()).toBe(1);
  expect(title()).toMatch(/^Records, .+ to .+/);
  press('day-week');
  expect([closedRows(), title()]).toEqual([0, 'Today’s records']);
});

it('names on an earlier day who is open still, without what holds today', () => {
  const shown = showDay();
  shown.setNowMs(atMs + 24 * 3_600_000);
  shown.container.querySelector<HTMLElement>('[data-act="day-before"]')?.click();
  const row = shown.container.querySelector('[data-panel="gone-on"] [data-record]');
  expect(row?.textContent).toContain('still open now');
  expect(shown.row()).toBeNull();
});

it('says of each that is open what holds the end of the day', () => {
  expect(showDay().row()?.textContent).toContain('first: take the strand off');
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { initialTransition, transition } from 'xstate';
import { idleMachine } from '../../../machines/station/idleMachine';
import type { IdleTick } from '../../../machines/station/idlePhase';

const minute = 60_000;
const start = 1_794_500_000_000;
type Event = Parameters<typeof transition<typeof idleMachine>>[2];
type State = ReturnType<typeof initialTransition<typeof idleMachine>>[0];

const begin = (): State => initialTransition(idleMachine, { nowMs: start })[0];
const go = (state: State, ...events: readonly Event[]): State =>
  events.reduce((now, event) => transition(idleMachine, now, event)[0], state);
const tick = (atMs: number, more: Partial<IdleTick> = {}): Event => ({
  ...{ type: 'TICKED', nowMs: start + atMs, coverAfterMin: 3, isBeingRead: false },
  ...more,
});
const touch = (atMs: number): Event => ({ type: 'TOUCHED', nowMs: start + atMs });
const stay = (atMs: number): Event => ({ type: 'STAYED', nowMs: start + atMs });

describe('an idle tablet', () => {
  // 20 s: published, WCAG 2.2, 2.2.1.
  it('warns 20 s before it covers, and covers at its minutes', () => {
    expect(go(begin(), tick(3 * minute - 20_001)).value).toBe('awake');
    const warned = go(begin(), tick(3 * minute - 20_000));
    expect(warned.value).toBe('warned');
    expect(go(warned, tick(3 * minute - 1)).value).toBe('warned');
    expect(go(warned, tick(3 * minute)).value).toBe('covered');
  });

  it.each([2, 3, 4, 5])('takes %i minutes where the owner says so', (coverAfterMin) => {
    const due = coverAfterMin * minute;
    expect(go(begin(), tick(due - 1, { coverAfterMin })).value).toBe('warned');
    expect(go(begin(), tick(due, { coverAfterMin })).value).toBe('covered');
  });

  it('counts from the last touch', () => {
    const touched = go(begin(), touch(2 * minute), tick(3 * minute));
    expect(touched.value).toBe('awake');
    expect(go(touched, tick(5 * minute)).value).toBe('covered');
  });

  it('has the whole time again after one tap on the warning', () => {
    const stayed = go(begin(), tick(3 * minute - 5_000), stay(3 * minute - 3_000));
    expect(stayed.value).toBe('awake');
    expect(go(stayed, tick(6 * minute - 23_001)).value).toBe('awake');
    expect(go(stayed, tick(6 * minute - 3_000)).value).toBe('covered');
  });

  it('hears no finger that only comes down while it is warned or covered', () => {
    const warned = go(begin(), tick(3 * minute - 20_000), touch(3 * minute - 19_000));
    expect(warned.value).toBe('warned');
    const covered = go(warned, tick(3 * minute), touch(3 * minute + 1));
    expect(covered.value).toBe('covered');
    expect(go(covered, stay(9 * minute)).value).toBe('awake');
  });

  it('is covered at once when it slept past the warning', () => {
    expect(go(begin(), tick(8 * 60 * minute)).value).toBe('covered');
  });

  it('is never covered where the owner wants none, and begins anew when that changes', () => {
    const open = go(begin(), tick(60 * minute, { coverAfterMin: null }));
    expect(open.value).toBe('awake');
    expect(go(open, tick(62 * minute)).value).toBe('awake');
    expect(go(open, tick(63 * minute)).value).toBe('covered');
  });

  it('stays while somebody reads with busy hands, and counts from then', () => {
    const reading = go(begin(), tick(20 * minute, { isBeingRead: true }));
    expect(reading.value).toBe('awake');
    expect(go(reading, tick(22 * minute)).value).toBe('awake');
    const warned = go(reading, tick(23 * minute - 1));
    expect(go(warned, tick(23 * minute, { isBeingRead: true })).value).toBe('awake');
  });

  it('begins anew when its clock was set back', () => {
    const back = go(begin(), tick(-60 * minute));
    expect(go(back, tick(-58 * minute)).value).toBe('awake');
    expect(go(back, tick(-57 * minute)).value).toBe('covered');
  });

  it('is covered exactly when nothing was touched for its minutes, whatever came before', () => {
    const gaps = fc.array(fc.integer({ min: 1, max: 170_000 }), { maxLength: 20 });
    fc.assert(
      fc.property(gaps, fc.integer({ min: 0, max: 400_000 }), (touches, idleMs) => {
        let atMs = 0;
        let state = begin();
        for (const gap of touches) {
          atMs += gap;
          state = go(state, tick(atMs), state.value === 'awake' ? touch(atMs) : stay(atMs));
        }
        state = go(state, stay(atMs), touch(atMs), tick(atMs + idleMs));
        expect(state.value === 'covered').toBe(idleMs >= 3 * minute);
      }),
    );
  });
});

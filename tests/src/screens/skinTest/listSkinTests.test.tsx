import { expect, it } from 'vitest';
import { salon } from '../../../../seeds/salon';
import type { SkinTest } from '../../../../shared/records/skinTest/skinTest';
import {
  ASSUMED_LAPSED_SHOWN_DAYS,
  countSkinTests,
  listSkinTests,
} from '../../../../src/screens/skinTest/listSkinTests';
import {
  day,
  hour,
  type Kept,
  keep,
  nothing,
  putOn,
  read,
  startAtMs,
  takeBack,
} from '../../../shared/records/skinTest/makeTest';

const nowMs = startAtMs + 60 * hour;

const on = (ticket: string, agoMs: number): Kept =>
  keep(nothing, putOn({ ticket, putOnAtMs: nowMs - agoMs }), nowMs - agoMs, 'Juno', ticket);
const list = (atMs: number, ...kept: readonly Kept[]) =>
  listSkinTests(
    kept.map(({ test }) => test as SkinTest),
    salon.profile,
    atMs,
  ).map(({ test, status }) => `${test.ticket} ${status}`);

const waiting = on('W.A.', 10 * hour);
const waitingLonger = on('W.B.', 40 * hour);
const due = on('D.A.', 50 * hour);
const dueLonger = on('D.B.', 9 * day);
const lapsed = on('L.A.', 29 * day);
const clear = keep(on('C.A.', 50 * hour), read('nothing'), nowMs);
const reacted = keep(on('R.A.', 20 * hour), read('reaction'), nowMs);
const gone = keep(on('G.A.', 20 * hour), takeBack('test', 'cameOff'), nowMs);

it('lists what may be read first, the longest wait before the others, then who waits, by when', () => {
  expect(list(nowMs, clear, waiting, reacted, lapsed, due, gone, waitingLonger, dueLonger)).toEqual([
    'D.B. due',
    'D.A. due',
    'W.B. waiting',
    'W.A. waiting',
    'L.A. lapsedUnread',
    'R.A. reaction',
    'C.A. clear',
  ]);
});

it('forgets what lapsed after it was read, and what lapsed unread once a newer one is there or time went by', () => {
  expect(list(nowMs + 28 * day, clear)).toEqual([]);
  const newer = keep(nothing, putOn({ ticket: 'la', putOnAtMs: nowMs }), nowMs, 'Juno', 'newer');
  expect(list(nowMs, lapsed, newer)).toEqual(['la waiting']);
  const lapsesAtMs = nowMs - 29 * day + 28 * day;
  expect(list(lapsesAtMs + ASSUMED_LAPSED_SHOWN_DAYS * day, lapsed)).toEqual(['L.A. lapsedUnread']);
  expect(list(lapsesAtMs + ASSUMED_LAPSED_SHOWN_DAYS * day + 1, lapsed)).toEqual([]);
});

it('counts those that are on and unread, and those that may be read now', () => {
  const rows = (...kept: readonly Kept[]) =>
    listSkinTests(
      kept.map(({ test }) => test as SkinTest),
      salon.profile,
      nowMs,
    );
  expect(countSkinTests(rows(waiting, due, dueLonger, clear, reacted, lapsed))).toEqual({ on: 3, due: 2 });
  expect(countSkinTests([])).toEqual({ on: 0, due: 0 });
});

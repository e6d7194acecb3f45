import { expect, it } from 'vitest';
import { salon } from '../../../../seeds/salon';
import { beginRecord } from '../../../../shared/records/record';
import { viewTest } from '../../../../src/screens/skinTest/listSkinTests';
import { saySkinTest, sayStatus, sayWhatMixWaitsFor } from '../../../../src/screens/skinTest/skinTestSaid';
import { viewSkinTest } from '../../../../src/screens/skinTest/skinTestView';
import { findWords } from '../../../../src/words/words';
import { hour, type Kept, startAtMs, waiting } from '../../../shared/records/skinTest/makeTest';

const words = findWords('en');
const { shortDayAndTime } = words.moments;
const cameAtMs = startAtMs + 20 * hour;
const { test }: Kept = waiting;
if (test === null) throw new Error('nothing was put on');
const nowMs = startAtMs + 60 * hour;
const there = startAtMs + 48 * hour;
const here = cameAtMs + 48 * hour;
const sayRow = (came: object) => sayStatus(viewTest({ ...test, ...came }, salon.profile, nowMs), words);

it('says that a test of another station waits since it came in, from when it is read here, and from when there', () => {
  expect(sayRow({})).toMatchObject({ what: 'Read it now' });
  expect(sayRow({ cameAtMs })).toEqual({ what: 'Wait', when: `here from ${shortDayAndTime(here)}` });
  // A clock there that is ahead: the later of the two counts.
  expect(sayRow({ cameAtMs: startAtMs - hour })).toMatchObject({ what: 'Read it now' });
});

it('says so to whoever is open for its ticket, and what the mix waits for', () => {
  const { method, site, putOnAtMs, seen, olderByMs } = test;
  const noted = { atMs: cameAtMs, by: 'Juno', seq: 1, readAtMs: cameAtMs };
  const skinTest = { method, site, putOnAtMs, seen, olderByMs, cameAtMs, ...noted };
  const record = { ...beginRecord('client'), skinTest };
  const view = viewSkinTest(record, salon, nowMs);
  expect(view.isReadable).toBe(false);
  expect(saySkinTest(view, words)).toBe(
    `Came in from another station ${shortDayAndTime(cameAtMs)} · readable here from ${shortDayAndTime(here)}, at its own station from ${shortDayAndTime(there)}.`,
  );
  expect(sayWhatMixWaitsFor(view, words)).toBe(
    `Skin test on: no mix before it is read, here from ${shortDayAndTime(here)}, at its own station from ${shortDayAndTime(there)}.`,
  );
  expect(viewSkinTest(record, salon, here)).toMatchObject({ isReadable: true, readableAtMs: here });
});

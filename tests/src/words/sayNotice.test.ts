import { describe, expect, it } from 'vitest';
import { defaultSettings } from '../../../shared/records/settings';
import { type AnyNotice, sayNotice } from '../../../src/words/sayNotice';
import { findWords } from '../../../src/words/words';

const say = (notice: AnyNotice) =>
  sayNotice(notice, findWords('en'), defaultSettings.units, (id) =>
    id === 'k3f9' ? 'Chair 3 · Q.F.' : null,
  );

describe('a notice', () => {
  it.each<[AnyNotice, string]>([
    [
      {
        kind: 'setAside',
        note: { name: 'closed-2026-03', copy: 'index', reason: 'badLine', kept: 'closed-2026-03.badLine' },
      },
      'Set aside, not deleted: the closed records of 2026-03 in the index: a line in it cannot be read. Look there whether anything is missing.',
    ],
    [
      {
        kind: 'refusedLog',
        name: 'open-k3f9',
        ticket: 'Q.F.',
        fault: { seq: 4, code: 'bowlWithoutOutcome' },
      },
      'Not taken up: the consultation of Q.F., entry 5: it claims a mix without an outcome. Start this client anew, strand test included.',
    ],
    [
      { kind: 'refusedEntry', name: 'settings', seq: 0 },
      'Cannot be read: entry 1 of the settings. It was left where it is.',
    ],
    [
      { kind: 'mended', note: { kind: 'wasBehind', name: 'open-k3f9', copy: 'index', entries: 2 } },
      'Caught up: the consultation of Chair 3 · Q.F., behind in the index. Entries from the other copy: 2. Nothing to do.',
    ],
    [
      { kind: 'mended', note: { kind: 'lostTail', name: 'open-k3f9', copy: 'journal', atLeast: 3 } },
      'Lost: the last entries of the consultation of Chair 3 · Q.F., in both copies, at least 3. Ask again what is missing.',
    ],
    [
      { kind: 'trouble', trouble: { copy: 'journal', kind: 'journalUnavailable', name: null } },
      'Nothing can be written: the journal does not answer.',
    ],
    [
      { kind: 'notSaved', failure: { name: 'open-k3f9', kind: 'quotaExceeded', mayBeHeld: false } },
      'Not saved in the consultation of Chair 3 · Q.F.: the store has no room left, the tablet is full. Tap it again.',
    ],
    [
      { kind: 'unread', note: { name: 'odd', copy: 'journal', reason: 'badName' } },
      'Left where it is: something that is not of this station in the journal: its name is none of this station’s.',
    ],
    [
      { kind: 'mended', note: { kind: 'wasMissing', name: 'settings', copy: 'journal', entries: 2 } },
      'Put back: the settings, missing in the journal. Entries from the other copy: 2. Nothing to do.',
    ],
    [
      { kind: 'trouble', trouble: { copy: 'index', kind: 'timedOut', name: 'open-zzzz' } },
      'No entry can be added to the consultation of a client who cannot be named now: the index did not answer in time. Reload the station.',
    ],
  ])('%#: is said in words, with what it is about named', (notice, said) => {
    expect(say(notice)).toBe(said);
  });
});

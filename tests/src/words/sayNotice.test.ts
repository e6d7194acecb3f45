import { describe, expect, it } from 'vitest';
import { defaultSettings } from '../../../shared/records/settings';
import { type AnyNotice, sayNotice } from '../../../src/words/sayNotice';
import { findWords } from '../../../src/words/words';

const say = (notice: AnyNotice) => sayNotice(notice, findWords('en'), defaultSettings.units);

describe('a notice', () => {
  it.each<[AnyNotice, string]>([
    [
      {
        kind: 'setAside',
        note: { name: 'closed-2026-03', copy: 'index', reason: 'badLine', kept: 'closed-2026-03.badLine' },
      },
      'Set aside, not deleted: the closed records of 2026-03 in the index: a line in it cannot be read. It is kept as closed-2026-03.badLine.',
    ],
    [
      {
        kind: 'refusedLog',
        name: 'open-k3f9',
        ticket: 'Q.F.',
        fault: { seq: 4, code: 'bowlWithoutOutcome' },
      },
      'Not taken up: the consultation of Q.F. (k3f9). Entry 5: it claims a mix without an outcome. Start this client anew, strand test included.',
    ],
    [
      { kind: 'refusedEntry', name: 'settings', seq: 0 },
      'Entry 1 of the settings cannot be read. It was left where it is.',
    ],
    [
      { kind: 'mended', note: { kind: 'wasBehind', name: 'open-k3f9', copy: 'index', entries: 2 } },
      'Caught up: the open consultation k3f9 was behind in the index. Entries from the other copy: 2.',
    ],
    [
      { kind: 'mended', note: { kind: 'lostTail', name: 'open-k3f9', copy: 'journal', atLeast: 3 } },
      'Lost: neither copy of the open consultation k3f9 has its last entries any more, at least 3. Ask again what is missing.',
    ],
    [
      { kind: 'trouble', trouble: { copy: 'journal', kind: 'journalUnavailable', name: null } },
      'Nothing can be written: the journal does not answer.',
    ],
    [
      { kind: 'notSaved', failure: { name: 'open-k3f9', kind: 'quotaExceeded', mayBeHeld: false } },
      'Not saved in the open consultation k3f9: the store has no room left, the tablet is full. Tap it again.',
    ],
    [
      { kind: 'unread', note: { name: 'odd', copy: 'journal', reason: 'badName' } },
      'Left where it is: “odd” in the journal: its name is none of this station’s.',
    ],
  ])('%#: is said in words, with what it is about named', (notice, said) => {
    expect(say(notice)).toBe(said);
  });
});

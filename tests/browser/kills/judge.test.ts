import { describe, expect, it } from 'vitest';
import { fold } from '../../../shared/records/reduce';
import { encodeLine } from '../../../src/storage/line';
import { sayNotice } from '../../../src/words/sayNotice';
import { findWords } from '../../../src/words/words';
import { settings, tap } from '../../src/screens/playStory';
import { type Harm, judgeKill, type Kill } from './judge';
import type { ReadBack, Told } from './readBack';
import { nameConsultation, type Place, places, tellUpTo } from './salonDay';

const nowMs = Date.UTC(2026, 2, 5, 12, 0);
const head = nameConsultation('head');
const look = { type: 'LOOKED', answers: { of: 'head', zone: 'lengths', stinging: 'no' } } as const;

const tell = (log: Told['log'], id: string): Told => ({
  isClosed: false,
  log,
  record: JSON.parse(JSON.stringify(fold(id, log))),
});
const day = (): Map<string, Told> =>
  new Map(
    places.map((place) => {
      const id = nameConsultation(place);
      return [id, tell(tellUpTo(place, nowMs).consultation.log, id)];
    }),
  );
const lookedAt = tap(tellUpTo('head', nowMs), 1000, look).consultation.log;
const showing = (change: (told: Map<string, Told>) => void, notices: readonly string[] = []): ReadBack => {
  const told = day();
  change(told);
  return { told, notices };
};
const change = (told: Map<string, Told>, place: Place, turn: (before: Told) => Told): void => {
  const id = nameConsultation(place);
  told.set(id, turn(told.get(id) as Told));
};
const withLook = (told: Map<string, Told>): void => change(told, 'head', () => tell(lookedAt, head));

/** A look at a head, acknowledged or not, and a journal that has it, or has lost its last line. */
const kill = (isAcknowledged: boolean, harm: Harm = 'none'): Kill => {
  const isCut = harm === 'journalCut' || harm === 'both';
  return {
    place: 'head',
    before: { notices: [], told: day() },
    taps: [{ at: { x: 0, y: 0 }, makes: 'LOOKED', isThis: ({ type }) => type === 'LOOKED' }],
    acknowledged: lookedAt.length - (isAcknowledged ? 0 : 1),
    harm,
    cut: isCut ? `open-${head}` : null,
    disk: [...day()].map(([id, { log }]) => ({
      name: `open-${id}`,
      path: '',
      writtenAtMs: 0,
      tail: new TextEncoder().encode(isCut && id === head ? '0000' : ''),
      lines: (id === head && !isCut ? lookedAt : log).map((event, seq) =>
        encodeLine(seq, JSON.stringify(event)),
      ),
    })),
  };
};
const say = (note: object): string =>
  sayNotice(
    { kind: 'mended', note } as Parameters<typeof sayNotice>[0],
    findWords('en'),
    settings.units,
    (id) => `open-${id}`,
  );
const missing = (whole: Kill) =>
  whole.disk.map(({ name, lines }) =>
    say({ name, copy: 'index', kind: 'wasMissing', entries: lines.length }),
  );
const cut = say({ name: `open-${head}`, copy: 'journal', kind: 'tailCut' });
const lost = say({ name: `open-${head}`, copy: 'journal', kind: 'lostTail', atLeast: 1 });

describe('the judge of the kills', () => {
  it('finds nothing wrong when all is there, acknowledged or in flight', () => {
    expect(judgeKill(kill(true), showing(withLook)).faults).toEqual([]);
    expect(judgeKill(kill(false), showing(withLook))).toMatchObject({
      faults: [],
      lost: 0,
      found: lookedAt.length,
    });
  });

  it.each<[string, string, Kill, ReadBack]>([
    ['an acknowledged entry is gone', 'were acknowledged', kill(true), showing(() => undefined)],
    [
      'the journal had an entry that is not shown',
      'but the journal had',
      kill(false),
      showing(() => undefined),
    ],
    [
      'there is more than can have been made',
      'can have been made',
      kill(true),
      showing((told) => {
        change(told, 'head', () => tell([...lookedAt, ...lookedAt.slice(-1)], head));
      }),
    ],
    [
      'an entry is none that was tapped',
      'is no LOOKED',
      kill(true),
      showing((told) => {
        change(told, 'head', () => tell([...lookedAt.slice(0, -1), ...lookedAt.slice(0, 1)], head));
      }),
    ],
    [
      'another client has lost an entry',
      'seatedplan was changed',
      kill(true),
      showing((told) => {
        withLook(told);
        change(told, 'plan', ({ log }) => tell(log.slice(0, -1), nameConsultation('plan')));
      }),
    ],
    [
      'another client is gone',
      'seatedclient is gone',
      kill(true),
      showing((told) => {
        withLook(told);
        told.delete(nameConsultation('client'));
      }),
    ],
    [
      'a deadline has moved',
      'was due at',
      kill(true),
      showing((told) => {
        withLook(told);
        change(told, 'strands', (before) => ({
          ...before,
          record: {
            ...before.record,
            clocks: before.record.clocks.map((clock) => ({ ...clock, dueAtMs: clock.dueAtMs + 1 })),
          },
        }));
      }),
    ],
    ['something is said that is not so', 'said, but not so: Lost', kill(true), showing(withLook, [lost])],
    ['a missing index is not said', 'not said: Put back', kill(true, 'indexDeleted'), showing(withLook)],
    ['a torn journal is not said', 'not said: A power cut', kill(false, 'journalCut'), showing(withLook)],
    [
      'a loss is not said',
      'not said: Lost',
      kill(true, 'both'),
      showing(() => undefined, [...missing(kill(true, 'both')), cut]),
    ],
  ])('sees when %s', (_what, fault, killed, shown) => {
    expect(judgeKill(killed, shown).faults.join('\n')).toContain(fault);
  });

  it('lets a loss pass that neither copy could prevent and that is said', () => {
    const killed = kill(true, 'both');
    const shown = showing(() => undefined, [...missing(killed), cut, lost]);
    expect(judgeKill(killed, shown)).toMatchObject({ faults: [], lost: 1 });
  });
});

import { describe, expect, it } from 'vitest';
import { salon } from '../../../../seeds/salon';
import { judgeSkinTest } from '../../../../shared/judgement/skinTest';
import { classify } from '../../../../shared/records/classify';
import { beginRecord, type ConsultationRecord } from '../../../../shared/records/record';
import { reduce } from '../../../../shared/records/reduce';
import { findCitation, findPutOnRefusal } from '../../../../shared/records/skinTest/citation';
import type { SkinTest } from '../../../../shared/records/skinTest/skinTest';
import {
  clear,
  day,
  hour,
  type Kept,
  keep,
  nothing,
  putOn,
  read,
  startAtMs,
  takeBack,
  waiting,
} from './makeTest';

const nowMs = startAtMs + 60 * hour;

/** One more event of the consultation, in its own name; a refused one breaks the test off. */
function add(
  record: ConsultationRecord,
  raw: Parameters<typeof classify>[1],
  isStation = true,
  atMs = nowMs,
) {
  const context = { settings: salon, settingsId: 0, atMs, by: 'Opal', inheritsStop: false, isStation };
  const event = classify(record, raw, context);
  if (!event.ok) throw new Error(JSON.stringify(event.error));
  return reduce(record, event.value);
}

const opened = add(beginRecord('client'), { type: 'OPENED', answers: { ticket: 'q.f', chair: '1' } });
const testsOf = (...kept: readonly Kept[]): readonly SkinTest[] =>
  kept.flatMap(({ test }) => (test === null ? [] : [test]));
const citationOf = (record: ConsultationRecord, ...kept: readonly Kept[]) =>
  findCitation(record, testsOf(...kept), salon.profile);

/** All that is still to be said is said; what it then says again has to be nothing. */
function settle(record: ConsultationRecord, ...kept: readonly Kept[]): ConsultationRecord {
  let said = record;
  for (let turn = 0; turn < 5; turn += 1) {
    const citation = citationOf(said, ...kept);
    if (citation === null) return said;
    said = add(said, citation.raw);
  }
  throw new Error('there is always something still to be said');
}

const other = (raw: ReturnType<typeof putOn>, atMs: number) => keep(nothing, raw, atMs, 'Juno', 'test2');
const reacted = keep(clear, read('reaction'), startAtMs + 55 * hour, 'Wren');

describe('what a consultation is told of the skin tests of its ticket', () => {
  it('is all of it: method, site, line, when it was put on and read, and in whose name', () => {
    expect(citationOf(opened, clear)).toEqual({
      by: 'Juno',
      raw: {
        type: 'SKIN_TEST_NOTED',
        answers: {
          method: 'makersMethod',
          site: 'behindEar',
          line: 'Sandbar cream',
          putOnAtMs: startAtMs,
          seen: 'nothing',
          readAtMs: startAtMs + 49 * hour,
          skinTestId: 'test1',
          olderByMs: '0',
        },
      },
    });
  });

  it('is nothing of another ticket, and nothing once it says so already', () => {
    const others = keep(nothing, putOn({ ticket: 'K.L.' }), startAtMs);
    expect(citationOf(opened, others)).toBeNull();
    expect(citationOf(settle(opened, clear), clear)).toBeNull();
  });

  it('is nothing before it is opened and after it ended', () => {
    expect(citationOf(beginRecord('client'), clear)).toBeNull();
    const ended = {
      ...opened,
      ended: { atMs: nowMs, by: 'Opal', seq: 1, how: 'done', reason: null },
    } as const;
    expect(citationOf(ended, clear)).toBeNull();
  });

  it('is the one put on last, whatever its line, and of several a reaction first', () => {
    const later = other(putOn({ line: 'Cove cream', putOnAtMs: startAtMs + day }), startAtMs + day);
    expect(settle(opened, clear, later).skinTest?.skinTestId).toBe('test2');
    expect(settle(opened, reacted, later).skinTest).toMatchObject({ skinTestId: 'test1', seen: 'reaction' });
  });

  it('counts when it was really read, not when it was told', () => {
    const record = settle(opened, clear);
    const longer = { ...salon.profile, skinTestWaitH: 50 };
    expect(judgeSkinTest(record, salon.profile, nowMs)).toBe('clear');
    expect(judgeSkinTest(record, longer, nowMs)).toBe('waiting');
  });

  it('follows a reaction, its correction, and what stands then', () => {
    const later = other(putOn({ line: 'Cove cream', putOnAtMs: startAtMs + day }), startAtMs + day);
    const stopped = settle(settle(opened, clear), reacted, later);
    expect(stopped.skinTest?.seen).toBe('reaction');
    const back = keep(reacted, takeBack('reading'), nowMs, 'Wren');
    const freed = settle(stopped, back, later);
    expect(freed.corrections).toMatchObject([{ answer: 'skinTest', code: 'wrongTap' }]);
    expect(freed.skinTest?.skinTestId).toBe('test2');
    const gone = settle(stopped, keep(reacted, takeBack('test', 'cameOff'), nowMs));
    expect(gone.skinTest).toBeNull();
    expect(gone.corrections.map(({ code }) => code)).toEqual(['hasChanged', 'hasChanged']);
  });

  it('is a reaction of another test before anything that is taken back, since who is away takes no correction', () => {
    const noted = settle(opened, waiting);
    const gone = keep(waiting, takeBack('test', 'cameOff'), nowMs);
    const bad = keep(
      other(putOn({ line: 'Cove cream' }), startAtMs + hour),
      read('reaction'),
      nowMs,
      'Wren',
      'test2',
    );
    expect(citationOf(noted, gone, bad)?.raw.answers).toMatchObject({
      skinTestId: 'test2',
      seen: 'reaction',
    });
  });

  it('is never again what a person named as another client’s', () => {
    const correction = { answer: 'skinTest', code: 'wrongClient', words: 'not her test' };
    const disowned = add(settle(opened, reacted), { type: 'CORRECTED', answers: correction });
    expect(disowned).toMatchObject({ skinTest: null, notHerSkinTests: ['test1'] });
    expect(citationOf(disowned, reacted)).toBeNull();
    expect(settle(disowned, reacted, other(putOn(), startAtMs)).skinTest?.skinTestId).toBe('test2');
  });

  it('is not taken from a screen', () => {
    const answers = {
      putOnAtMs: startAtMs,
      seen: 'nothing',
      skinTestId: 'test1',
      readAtMs: startAtMs,
      olderByMs: '5',
    };
    const typed = add(opened, { type: 'SKIN_TEST_NOTED', answers }, false);
    expect(typed.skinTest).toMatchObject({ readAtMs: nowMs, olderByMs: 0 });
    expect(typed.skinTest?.skinTestId).toBeUndefined();
  });

  it('cannot claim a reading before its time, or one still to come', () => {
    const answers = { putOnAtMs: startAtMs, seen: 'nothing', skinTestId: 'test1' };
    for (const readAtMs of [startAtMs + 48 * hour - 1, nowMs + 1]) {
      const raw = { type: 'SKIN_TEST_NOTED', answers: { ...answers, readAtMs } } as const;
      expect(() => add(opened, raw)).toThrow('readTooEarly');
    }
  });
});

describe('putting a skin test on beside others of the ticket', () => {
  const refusalOf = (line: string, seen: SkinTest['seen'], ...kept: readonly Kept[]) =>
    findPutOnRefusal(testsOf(...kept), { line, seen }, salon.profile, nowMs)?.kind ?? null;

  it('is refused while one of the line is on, and not for another line or once it was read', () => {
    expect(refusalOf('sandbar CREAM', 'notReadYet', waiting)).toBe('skinTestOn');
    expect(refusalOf('Cove cream', 'notReadYet', waiting)).toBeNull();
    expect(refusalOf('Sandbar cream', 'notReadYet', clear)).toBeNull();
  });

  it('is refused where one reacted, but a reaction that is told of is taken', () => {
    expect(refusalOf('Cove cream', 'notReadYet', reacted)).toBe('skinTestReacted');
    expect(refusalOf('Cove cream', 'reaction', reacted, waiting)).toBeNull();
  });

  it('is free once the one before lapsed unread', () => {
    const tests = testsOf(waiting);
    const put = { line: 'Sandbar cream', seen: 'notReadYet' } as const;
    expect(findPutOnRefusal(tests, put, salon.profile, startAtMs + 28 * day)?.kind).toBe('skinTestOn');
    expect(findPutOnRefusal(tests, put, salon.profile, startAtMs + 28 * day + 1)).toBeNull();
  });
});

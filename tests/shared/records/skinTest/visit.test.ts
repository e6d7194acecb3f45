import { describe, expect, it } from 'vitest';
import { salon } from '../../../../seeds/salon';
import type { ClosedRecord } from '../../../../shared/records/closedRecord';
import { beginRecord } from '../../../../shared/records/record';
import { findCitation } from '../../../../shared/records/skinTest/citation';
import { replaySkinTest } from '../../../../shared/records/skinTest/replay';
import type { SkinTest } from '../../../../shared/records/skinTest/skinTest';
import { isOfVisit, isToForget } from '../../../../shared/records/skinTest/visit';
import { clear, day, judge, nothing, putOn, startAtMs, waiting } from './makeTest';

const made = (kept: { readonly test: SkinTest | null }, more: Partial<SkinTest> = {}): SkinTest => {
  if (kept.test === null) throw new Error('no test');
  return { ...kept.test, ...more };
};
const ofVisit = (more: Partial<SkinTest> = {}): SkinTest =>
  made(waiting, { id: 'test2', consent: 'thisVisit', forVisit: 'visit1', ...more });
const older = made(clear, { id: 'test1', putOnAtMs: startAtMs - 3 * day });
const closedWith = (log: readonly unknown[]): ClosedRecord => ({
  v: 1,
  id: 'visit1',
  ticketKey: 'QF',
  endedAtMs: startAtMs,
  how: 'done',
  hasStandingStop: false,
  hasClearedStop: false,
  log,
});
const over = [closedWith([])];

describe('a skin test that she did not agree to have kept', () => {
  it('is put on within a visit alone, and says which', () => {
    const raw = putOn({ consent: 'thisVisit' });
    expect(judge(nothing, raw, startAtMs)).toEqual({ ok: false, error: { kind: 'notNow' } });
    const put = judge(nothing, raw, startAtMs, 'Opal', 'visit1');
    expect(put.ok && put.value.payload).toMatchObject({ consent: 'thisVisit', forVisit: 'visit1' });
  });

  it('names no visit where she agreed, or was not asked, whatever a screen sends', () => {
    for (const consent of ['kept', undefined]) {
      const put = judge(nothing, putOn({ consent, forVisit: 'visit9' }), startAtMs, 'Opal', 'visit1');
      expect(put.ok && put.value.payload).not.toHaveProperty('forVisit');
      expect(put.ok && put.value.payload).toMatchObject({ consent: consent ?? 'notAsked' });
    }
  });

  it('counts in its own visit and in no other', () => {
    expect(isOfVisit(ofVisit(), 'visit1', [])).toBe(true);
    expect(isOfVisit(ofVisit(), 'visit2', [])).toBe(false);
    expect(isOfVisit(made(waiting), 'visit2', [])).toBe(true);
  });

  it('is not cited for another visit of the same ticket, until it reacts', () => {
    const record = { ...beginRecord('visit2'), ticket: 'Q.F.', opened: { atMs: 0, by: 'Opal', seq: 0 } };
    const cite = (test: SkinTest) => findCitation(record, [test], salon.profile);
    expect(cite(ofVisit())).toBeNull();
    expect(cite(ofVisit({ forVisit: 'visit2' }))).not.toBeNull();
    expect(cite(ofVisit({ seen: 'reaction' }))?.raw.answers).toMatchObject({ seen: 'reaction' });
  });

  it('holds an older test back everywhere while nobody has read it', () => {
    expect(isOfVisit(ofVisit(), 'visit2', [older])).toBe(true);
    expect(isOfVisit(ofVisit({ seen: 'nothing' }), 'visit2', [older])).toBe(false);
    expect(isOfVisit(ofVisit(), 'visit2', [made(clear, { ticketKey: 'KL', putOnAtMs: 0 })])).toBe(false);
  });
});

it('a test that was stored before anybody was asked is taken up, kept and never forgotten', () => {
  const [entry] = waiting.log;
  const { consent: _asked, ...payload } = (entry?.payload ?? {}) as Record<string, unknown>;
  const before = replaySkinTest('test1', [{ ...entry, payload }], () => salon);
  expect(before.ok && before.value).toMatchObject({ id: 'test1', seen: 'notReadYet' });
  if (!before.ok) return;
  expect(before.value.consent).toBeUndefined();
  expect(isOfVisit(before.value, 'visit2', [])).toBe(true);
  expect(isToForget(before.value, [], over)).toBe(false);
});

describe('what is forgotten', () => {
  it('is a test whose visit is over, never one she agreed to or whose visit nobody can find', () => {
    expect(isToForget(ofVisit(), [], over)).toBe(true);
    expect(isToForget(ofVisit(), [], [])).toBe(false);
    expect(isToForget(made(waiting), [], over)).toBe(false);
  });

  it('is no unread test that an older one of the ticket would take the place of', () => {
    expect(isToForget(ofVisit(), [older], over)).toBe(false);
    expect(isToForget(ofVisit({ seen: 'nothing' }), [older], over)).toBe(true);
  });

  it('is no reaction that the log of the visit does not say', () => {
    expect(isToForget(ofVisit({ seen: 'reaction' }), [], over)).toBe(false);
    expect(isToForget(ofVisit({ seen: 'reaction' }), [], [closedWith([{ v: 99 }])])).toBe(false);
  });
});

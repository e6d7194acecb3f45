import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { salon } from '../../../../seeds/salon';
import { judgeTest, type SkinTestStatus } from '../../../../shared/judgement/skinTest';
import { replaySkinTest } from '../../../../shared/records/skinTest/replay';
import type { SkinTest } from '../../../../shared/records/skinTest/skinTest';
import { joinTellings } from '../../../../shared/records/skinTest/tellings';
import { holds } from '../../seeded';
import {
  clear,
  correctClock,
  day,
  hour,
  type Kept,
  keep,
  putAhead,
  read,
  startAtMs,
  takeBack,
  waiting,
} from './makeTest';

const testOf = ({ test }: Kept): SkinTest => {
  if (test === null) throw new Error('nothing was put on');
  return test;
};
const at = (hours: number): number => startAtMs + hours * hour;
const reacted = keep(waiting, read('reaction'), at(50));
const told = {
  waiting,
  clear,
  clearLater: keep(waiting, read('nothing'), at(80)),
  reacted,
  corrected: keep(reacted, takeBack('reading'), at(51)),
  cameOff: keep(waiting, takeBack('test', 'cameOff'), at(10)),
  ahead: keep(waiting, putAhead(5 * hour), at(20)),
  behind: keep(waiting, correctClock(-3 * hour), at(20)),
  readAgain: keep(
    keep(keep(waiting, putAhead(5 * hour), at(20)), read('nothing'), at(60)),
    takeBack('reading'),
    at(61),
  ),
};
const tests: readonly SkinTest[] = Object.values(told).map(testOf);
const some = fc.array(fc.constantFrom(...tests), { minLength: 1, maxLength: 5 }) as fc.Arbitrary<[SkinTest]>;

/** How free is a ticket whose newest test stands so? None taken back counts for nothing, as if it had not been. */
const freedom = (test: SkinTest, nowMs: number): number => {
  if (test.takenBack !== null) return 1;
  const status = judgeTest({ ...test, readAtMs: test.read?.atMs ?? null }, salon.profile, nowMs);
  const free: Readonly<Record<SkinTestStatus, number>> = {
    reaction: 0,
    waiting: 1,
    due: 1,
    lapsed: 1,
    lapsedUnread: 1,
    clear: 2,
  };
  return free[status];
};

describe('a skin test that several stations tell otherwise', () => {
  it('is never freer than any of them, at any time', () => {
    holds(
      fc.property(some, fc.integer({ min: 0, max: 40 * 24 }), (tellings, hours) => {
        const joined = joinTellings(tellings);
        for (const each of tellings) {
          expect(freedom(joined, at(hours))).toBeLessThanOrEqual(freedom(each, at(hours)));
        }
      }),
    );
  });

  it('stands the same whatever came first, and however often', () => {
    holds(
      fc.property(some, fc.infiniteStream(fc.nat()), (tellings, chance) => {
        const joined = joinTellings(tellings);
        const order = [...tellings, ...tellings].sort(() => (Number(chance.next().value) % 3) - 1);
        expect(joinTellings(order as [SkinTest])).toEqual(joined);
      }),
    );
  });

  const joined = (...kept: readonly Kept[]) => joinTellings(kept.map(testOf) as [SkinTest]);

  it('has reacted where one saw it, unless whoever took it back had seen it', () => {
    expect(joined(told.reacted, told.clear, told.cameOff).seen).toBe('reaction');
    expect(joined(told.corrected, told.clear)).toMatchObject({ seen: 'notReadYet', takenBack: null });
  });

  it('is not read while one has not read it, and holds an older test back', () =>
    expect(joined(told.clear, told.waiting, told.cameOff)).toMatchObject({
      seen: 'notReadYet',
      takenBack: null,
    }));

  it('came off where one says so and the other saw nothing', () =>
    expect(joined(told.clear, told.cameOff).takenBack).toMatchObject({ code: 'cameOff' }));

  it('waits from the latest time it was put on, and lapses with the first', () =>
    expect(joined(told.waiting, told.ahead, told.behind)).toMatchObject({
      putOnAtMs: startAtMs + 5 * hour,
      olderByMs: 8 * hour,
    }));
});

describe('what came in of a skin test', () => {
  it('is judged under the rules of its own house, and what is written after it under those of this one', () => {
    const shorter = { ...salon.profile, skinTestWaitH: 24 };
    const early = keep(waiting, read('reaction'), at(30)).log;
    const [putOn] = waiting.log;
    const nothing = { ...early[1], payload: { seen: 'nothing' } };
    const piece = (profile: object) => ({ told: [putOn, nothing].map((entry) => ({ entry, profile })) });
    const verdict = (log: readonly unknown[]) => {
      const test = replaySkinTest('test1', log, () => salon);
      return test.ok ? test.value.seen : test.error.code;
    };
    expect(verdict([piece(shorter)])).toBe('nothing');
    expect(verdict([piece(salon.profile)])).toBe('saysOtherwise');
    expect(verdict([putOn, nothing])).toBe('saysOtherwise');
    const late = keep(clear, read('reaction'), startAtMs + 4 * day).log.at(-1);
    expect(verdict([piece(shorter), late])).toBe('reaction');
  });
});

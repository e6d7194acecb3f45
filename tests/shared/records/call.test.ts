import { describe, expect, it } from 'vitest';
import { ASSUMED_SILENT_OVER_MS, findCall, findCallKind, isHeard } from '../../../shared/records/call';
import type { Clock } from '../../../shared/records/clock';
import { makeStrandClock } from './strandClock';

const minute = 60_000;
const startedAtMs = Date.UTC(2026, 2, 3, 12);
const strand = makeStrandClock(startedAtMs);
const head: Clock = { ...strand, id: 'head-ends-1', kind: 'head', looks: null };
const at = (min: number): number => startedAtMs + min * minute;
const call = (clock: Clock, min: number) => {
  const found = findCall(clock, at(min));
  return found && [found.why, (found.sinceMs - startedAtMs) / minute];
};

describe('a clock calls somebody', () => {
  it.each([
    ['for a look, from its moment on', strand, 2, ['look', 2]],
    ['not before', strand, 1.99, null],
    ['for each look anew that is missed', strand, 7, ['look', 7]],
    ['for a head two minutes before its rinse', head, 23, ['basin', 23]],
    ['not sooner', head, 22.99, null],
    ['at the end', strand, 25, ['end', 25]],
    ['as its end until a moment before it calls again', strand, 27.99, ['end', 25]],
    ['again after some minutes over', strand, 25 + ASSUMED_SILENT_OVER_MS / minute, ['overrun', 28]],
    ['as that one overrun for as long as nobody hears it', head, 32, ['overrun', 28]],
    [
      'for a look of a strand in its last two minutes too',
      { ...strand, dueAtMs: at(23.5), lookedAtMs: [at(18)] },
      22.5,
      ['look', 22],
    ],
    ['never once it is off', { ...strand, endedAtMs: at(20) }, 40, null],
    ['never for hair that dries', { ...head, kind: 'dry' }, 40, null],
  ] as const)('%s', (_title, clock, min, expected) => {
    expect(call(clock, min)).toEqual(expected);
  });

  it('until it is silenced, and again for what comes after that', () => {
    const silenced = (min: number): Clock => ({ ...head, acknowledgedAtMs: at(min) });
    const isHeardAt = (clock: Clock, min: number) => {
      const found = findCall(clock, at(min));
      return found === null ? null : isHeard(found);
    };
    expect(isHeardAt(head, 24)).toBe(false);
    expect(isHeardAt(silenced(24), 24.5)).toBe(true);
    expect(isHeardAt(silenced(24), 25)).toBe(false);
    expect(isHeardAt(silenced(25), 27.99)).toBe(true);
    expect(isHeardAt(silenced(25), 28)).toBe(false);
  });

  it.each([25, 25.1, 27.9, 28, 29.5, 61])(
    'is as long silent over its end when it is silenced at %d min',
    (min) => {
      const silenced: Clock = { ...head, acknowledgedAtMs: at(min) };
      const silentMin = ASSUMED_SILENT_OVER_MS / minute;
      for (const [after, isSilent] of [
        [0, true],
        [silentMin - 0.01, true],
        [silentMin, false],
        [silentMin + 40, false],
      ] as const) {
        const found = findCall(silenced, at(min + after));
        expect(found && isHeard(found), `${after} min after`).toBe(isSilent);
      }
    },
  );

  it('says that it is an overrun from its minute on, silenced or not', () => {
    const silenced: Clock = { ...head, acknowledgedAtMs: at(27.9) };
    expect([27.99, 28, 30].map((min) => findCall(silenced, at(min))?.why)).toEqual([
      'end',
      'overrun',
      'overrun',
    ]);
  });

  it('is silenced by this tablet too, where nothing can be written', () => {
    const isHeardAt = (min: number, silencedMin: number) => {
      const found = findCall(head, at(min), at(silencedMin));
      return found && isHeard(found, at(silencedMin));
    };
    expect([isHeardAt(24, 22), isHeardAt(24, 23)]).toEqual([false, true]);
    expect([isHeardAt(30.8, 27.9), isHeardAt(30.9, 27.9)]).toEqual([true, false]);
  });

  it.each([
    ['a look from the first that nobody made', { ...strand, lookedAtMs: [at(3)] }, 13, 7],
    ['a head from when it was to go to the basin', head, 24, 23],
    ['what is over from its end', { ...strand, acknowledgedAtMs: at(27) }, 33, 25],
  ] as const)('has somebody wait for %s', (_title, clock, min, sinceMin) => {
    expect(findCall(clock, at(min))?.waitsSinceMs).toBe(at(sinceMin));
  });

  it('is heard as one of three', () => {
    const kinds = [
      [strand, 2] as const,
      [head, 23] as const,
      [strand, 25] as const,
      [strand, 28] as const,
    ].map(([clock, min]) => {
      const found = findCall(clock, at(min));
      return found && findCallKind(found);
    });
    expect(kinds).toEqual(['look', 'due', 'due', 'overrun']);
  });
});

import { describe, expect, it } from 'vitest';
import {
  ASSUMED_SILENT_OVER_MS,
  findCall,
  findCallKind,
  findGravest,
  isHeard,
} from '../../../shared/records/call';
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
    ['with the newest call of those', head, 32, ['overrun', 31]],
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

  it('is silenced by this tablet too, where nothing can be written', () => {
    const found = findCall(head, at(24));
    expect(found && [isHeard(found, at(22)), isHeard(found, at(23))]).toEqual([false, true]);
  });
});

describe('of several calls', () => {
  const callOf = (clock: Clock, min: number) => {
    const found = findCall(clock, at(min));
    if (found === null) throw new Error(`${clock.id} does not call at ${min} min`);
    return found;
  };
  const look = callOf(strand, 2);
  const basin = callOf(head, 23);
  const end = callOf({ ...strand, id: 'strand-ends-2' }, 25);
  const overrun = callOf({ ...strand, id: 'strand-ends-3' }, 28);

  it('each is heard as one of three', () => {
    expect([look, basin, end, overrun].map(findCallKind)).toEqual(['look', 'due', 'due', 'overrun']);
  });

  it.each([
    ['nobody where nobody is called', [], undefined],
    ['what is due before a look', [look, end], end],
    ['an overrun of a strand before a head that is to go to the basin', [basin, overrun, look], overrun],
    ['a head before a strand that is due as well', [end, basin], basin],
  ] as const)('is heard: %s', (_title, calls, expected) => {
    expect(findGravest(calls)).toBe(expected);
    expect(findGravest([...calls].reverse())).toBe(expected);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  formMixKey,
  isHotter,
  isNoGentler,
  isSameLine,
  listClosedMixes,
  type Mix,
  nameMix,
} from '../../../shared/judgement/mixes';
import type { RawEvent } from '../../../shared/records/classify';
import { mixQuestions } from '../../../shared/records/forms/test';
import { andThen, hour, minute, ofType, story, type Told, tell, until } from '../records/telling';
import { holds } from '../seeded';

const heats = mixQuestions.heat.options;
const mix: Mix = { line: 'Sandbar powder', developerPercent: 6, ratio: 2, heat: 'none', minutes: 25 };

const anyMix = fc.record<Mix>({
  line: fc.constantFrom('Sandbar powder', ' sandbar POWDER', 'Sandbar cream'),
  developerPercent: fc.integer({ min: 1, max: 24 }).map((half) => half / 2),
  ratio: fc.constantFrom(0.5, 1, 2),
  heat: fc.constantFrom(...heats),
  minutes: fc.integer({ min: 1, max: 60 }),
});

describe('the name of a mix', () => {
  it('is the same however the line is typed, and holds neither batch nor grams', () => {
    for (const line of ['  sandbar POWDER ', 'Sandbar  powder', 'Sandbar\u200b powder', 'Ｓandbar powder']) {
      expect(formMixKey({ ...mix, line }), line).toBe(formMixKey(mix));
      expect(isSameLine(line, mix.line), line).toBe(true);
    }
    expect(isSameLine('Sandbarpowder', mix.line)).toBe(false);
    expect(nameMix({ ...mix, batch: 'B-17', testG: 6 } as Mix)).toEqual(mix);
  });

  it('differs when anything a permit binds to differs', () => {
    const others: readonly Partial<Mix>[] = [
      { line: 'Sandbar cream' },
      { developerPercent: 6.5 },
      { ratio: 1.5 },
      { heat: 'foil' },
      { minutes: 26 },
    ];
    const keys = others.map((other) => formMixKey({ ...mix, ...other }));
    expect(new Set([...keys, formMixKey(mix)]).size).toBe(others.length + 1);
  });
});

describe('heat', () => {
  it('rises from none over foil to dry heat (ASSUMED order of the form)', () => {
    for (const [index, one] of heats.entries()) {
      for (const [place, other] of heats.entries()) expect(isHotter(one, other)).toBe(index > place);
    }
  });
});

describe('a mix that is no gentler than another', () => {
  it('is less than a bottle’s step weaker and more than three quarters as long (ASSUMED), as hot, of the same line', () => {
    expect(isNoGentler(mix, mix)).toBe(true);
    expect(isNoGentler({ ...mix, developerPercent: 5.9 }, mix)).toBe(true);
    expect(isNoGentler({ ...mix, developerPercent: 3.1 }, mix)).toBe(true);
    expect(isNoGentler({ ...mix, developerPercent: 3 }, mix)).toBe(false);
    expect(isNoGentler({ ...mix, minutes: 18.8 }, mix)).toBe(true);
    expect(isNoGentler({ ...mix, minutes: 18.75 }, mix)).toBe(false);
    expect(isNoGentler(mix, { ...mix, heat: 'foil' })).toBe(false);
    expect(isNoGentler({ ...mix, heat: 'foil' }, mix)).toBe(true);
    expect(isNoGentler({ ...mix, line: 'Sandbar cream' }, mix)).toBe(false);
    expect(isNoGentler({ ...mix, ratio: 0.25 }, mix)).toBe(true);
  });

  it('stays so when it is made stronger, longer or hotter', () =>
    holds(
      fc.property(anyMix, anyMix, (one, two) => {
        expect(isNoGentler(one, one)).toBe(true);
        if (!isNoGentler(one, two)) return;
        const stronger = { ...one, developerPercent: one.developerPercent + 0.5 };
        const longer = { ...one, minutes: one.minutes + 1 };
        const hotter = { ...one, heat: 'dryHeat' as const };
        for (const worse of [stronger, longer, hotter]) expect(isNoGentler(worse, two)).toBe(true);
      }),
      2000,
    ));
});

describe('what a failed strand closes', () => {
  const start = story.find(({ raw }) => ofType('STRAND_STARTED', 'ends')(raw))?.raw as RawEvent;
  const ready = tell(until('STRAND_STARTED'));
  const ends = (change: Partial<Mix> = {}) => ({ ...mix, zone: 'ends' as const, ...change });
  const broke: RawEvent = { type: 'STRAND_BROKE', answers: { zone: 'ends' } };
  const outcome = (fibre: string): RawEvent => ({
    type: 'OUTCOME_RECORDED',
    answers: { zone: 'ends', fibre, stretch: 'springsBack', level: '6', wentPast30: 'no', evenness: 'even' },
  });
  const closed = ({ record }: Told, change: Partial<Mix> = {}) => listClosedMixes(record, ends(change));
  const brokenAfter = (onMs: number) => andThen(andThen(ready, start), broke, onMs);

  it('is the mix for the time it really lasted, in whole minutes', () => {
    const told = brokenAfter(9 * minute + 59_999);
    expect(closed(told)).toEqual([formMixKey(mix)]);
    expect(closed(told, { minutes: 9 })).toHaveLength(1);
    expect(closed(told, { minutes: 6.8 })).toHaveLength(1);
    expect(closed(told, { minutes: 6.75 })).toEqual([]);
    expect(closed(told, { developerPercent: 3 })).toEqual([]);
    expect(closed(told, { line: 'Sandbar cream' })).toEqual([]);
    expect(listClosedMixes(told.record, { ...ends(), zone: 'lengths' })).toEqual([]);
  });

  it('is every time when it broke within the first minute, and no less than its own when it hung on longer', () => {
    expect(closed(brokenAfter(59_000), { minutes: 1 })).toHaveLength(1);
    const late = brokenAfter(40 * minute);
    expect(closed(late, { minutes: 25 })).toHaveLength(1);
    expect(closed(late, { minutes: 18.75 })).toEqual([]);
  });

  it('is counted by its own clock when the tablet’s was set back meanwhile', () => {
    const shift: RawEvent = { type: 'CLOCK_CORRECTED', answers: { shiftMs: String(-hour) } };
    const shifted = andThen(andThen(ready, start), shift, 5 * minute - hour);
    const told = andThen(shifted, broke, 4 * minute);
    expect(closed(told, { minutes: 6.8 })).toHaveLength(1);
    expect(closed(told, { minutes: 6.75 })).toEqual([]);
  });

  it('is nothing after a sound or rough outcome, and the mix after a gummy or broken one', () => {
    const off = andThen(
      andThen(ready, start),
      { type: 'STRAND_TAKEN_OFF', answers: { zone: 'ends', why: 'levelReached' } },
      25 * minute,
    );
    const counts = ['sound', 'rough', 'gummy', 'broken'].map(
      (fibre) => closed(andThen(off, outcome(fibre))).length,
    );
    expect(counts).toEqual([0, 0, 1, 1]);
    expect(closed(off)).toEqual([]);
  });

  it('is open again when a gummy outcome was a wrong tap, and stays closed when the strand broke in the mix', () => {
    const off = andThen(
      andThen(ready, start),
      { type: 'STRAND_TAKEN_OFF', answers: { zone: 'ends', why: 'levelReached' } },
      25 * minute,
    );
    const retract: RawEvent = {
      type: 'OUTCOME_RETRACTED',
      answers: { zone: 'ends', code: 'wrongTap', words: 'the row above' },
    };
    expect(closed(andThen(andThen(off, outcome('gummy')), retract))).toEqual([]);
    const told = andThen(brokenAfter(25 * minute), outcome('sound'));
    expect(closed(told)).toHaveLength(1);
    expect(closed(andThen(told, retract))).toHaveLength(1);
  });

  it('stays closed whatever plan or correction follows', () => {
    const correction = { answer: 'client', code: 'misheard', words: 'not a wish of hers' };
    const corrected = andThen(brokenAfter(9 * minute), { type: 'CORRECTED', answers: correction });
    expect(closed(corrected)).toHaveLength(1);
  });
});

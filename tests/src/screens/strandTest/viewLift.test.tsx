import { describe, expect, it } from 'vitest';
import type { LiftForecast } from '../../../../shared/chemistry/liftForecast';
import { sayForecast } from '../../../../src/screens/strandTest/sayForecast';
import { viewLevels } from '../../../../src/screens/strandTest/viewLevels';
import { viewLift } from '../../../../src/screens/strandTest/viewLift';
import { findWords } from '../../../../src/words/words';
import { type Played, playUntil, settings, tap } from '../playStory';

const minute = 60_000;
const started = playUntil('STRAND_STARTED', 'ends');

/** Looks at the ends, the first after two minutes, then every three; the last one feels like this. */
const look = (levels: readonly string[], feel = 'sound'): Played =>
  levels.reduce(
    (played, level, index) =>
      tap(played, (index === 0 ? 2 : 3) * minute, {
        type: 'LOOKED',
        answers: {
          of: 'strand',
          zone: 'ends',
          level,
          feel: index === levels.length - 1 ? feel : 'sound',
        },
      }),
    started,
  );

const viewOf = ({ consultation: { record } }: Played, isOver = false) => {
  const [strand] = record.strands;
  const clock = record.clocks.find(({ id }) => id === strand?.clock);
  if (strand === undefined || clock === undefined) throw new Error('no strand');
  return viewLift(viewLevels(record, strand), strand, clock, isOver);
};

describe('the lift of a strand', () => {
  it('is drawn to the last look, and dotted with its band to the end of its own time', () => {
    const { fitted, ahead, forecast } = viewOf(look(['5.5', '5.5', '6']));
    expect([fitted[0]?.atMin, fitted.at(-1)?.atMin]).toEqual([0, 8]);
    expect([ahead[0]?.atMin, ahead.at(-1)?.atMin]).toEqual([8, 25]);
    expect(fitted.at(-1)?.level).toBeCloseTo(ahead[0]?.level ?? 0, 9);
    for (const { low, level, high } of ahead) {
      expect(low).toBeLessThanOrEqual(level);
      expect(level).toBeLessThanOrEqual(high);
    }
    expect(forecast).toEqual({ kind: 'perhapsNot', earliestMin: 11 });
  });

  it('ends with a longer time, which a person gave', () => {
    const longer = tap(look(['5.5', '5.5', '6']), minute, {
      type: 'CLOCK_EXTENDED',
      answers: { clock: 'strand-ends-1', minutes: '5', reason: 'liftIsSlow' },
    });
    expect(viewOf(longer).ahead.at(-1)?.atMin).toBe(30);
  });

  it.each([
    ['too few levels', look(['5.5', '6']), 'tooFew'],
    ['looks that nobody could read', look(['5.5', 'unknown', '6']), 'tooFew'],
    ['a level that fell', look(['6.5', '5.5', '6']), 'falling'],
    ['the level she wants', look(['5.5', '6', '7']), 'reached'],
    ['no lift', look(['5', '5', '5.5']), 'noLift'],
  ])('says only why after %s', (_what, played, why) => {
    expect(viewOf(played)).toMatchObject({ ahead: [], forecast: { kind: 'none', why } });
  });

  it('says nothing of what comes where it is to come off', () => {
    const nothing = { ahead: [], forecast: null };
    expect(viewOf(look(['5.5', '5.5', '6'], 'stretchy'))).toMatchObject(nothing);
    // Hair does not heal: a later look that felt better takes nothing back.
    const felt = (feel: string) =>
      viewOf(
        tap(look(['5.5', '5.5', '6'], feel), 3 * minute, {
          type: 'LOOKED',
          answers: { of: 'strand', zone: 'ends', level: '6', feel: 'sound' },
        }),
      );
    expect(felt('stretchy')).toMatchObject(nothing);
    expect(felt('rough').ahead).not.toEqual([]);
    expect(viewOf(look(['5.5', '5.5', '6']), true)).toMatchObject(nothing);
    expect(viewOf(look(['5.5', '5.5', '6'])).ahead).not.toEqual([]);
  });

  it('stays as it was when the tablet’s clock is put back two hours', () => {
    const looked = look(['5.5', '5.5', '6']);
    const corrected = tap(looked, minute, {
      type: 'CLOCK_CORRECTED',
      answers: { shiftMs: String(-120 * minute) },
    });
    expect(viewOf(corrected)).toEqual(viewOf(looked));
  });
});

describe('the forecast in words', () => {
  const clock = { startedAtMs: started.atMs, dueAtMs: started.atMs + 25 * minute };
  const words = findWords('en');
  const at = (atMin: number) => words.moments.time(started.atMs + atMin * minute);
  const say = (forecast: LiftForecast, nowMin = 9, isLightener = false) =>
    sayForecast(forecast, 7, clock, started.atMs + nowMin * minute, words, settings.units, isLightener);
  const expected = { kind: 'expected', atMin: 17, earliestMin: 14, latestMin: 20 } as const;

  it.each([
    [expected, `Level 7 expected about ${at(17)}, between ${at(14)} and ${at(20)}.`],
    [{ ...expected, earliestMin: 17, latestMin: 17 }, `Level 7 expected about ${at(17)}.`],
    [
      { ...expected, latestMin: null },
      `Level 7 expected about ${at(17)}, ${at(14)} at the earliest. It may not come before take-off at ${at(25)}.`,
    ],
    [
      { ...expected, earliestMin: 17, latestMin: null },
      `Level 7 expected about ${at(17)}. It may not come before take-off at ${at(25)}.`,
    ],
    [
      { kind: 'perhapsNot', earliestMin: 23 },
      `Level 7 perhaps not before it comes off at ${at(25)}; ${at(23)} at the earliest.`,
    ],
    [
      { kind: 'perhapsNot', earliestMin: 8 },
      `Level 7 perhaps not before it comes off at ${at(25)}. It may be there already: look now.`,
    ],
    [
      { kind: 'perhapsNot', earliestMin: 25 },
      `Level 7 at take-off at ${at(25)} at the earliest, perhaps not by then.`,
    ],
    [
      { ...expected, earliestMin: 8, latestMin: null },
      `Level 7 expected about ${at(17)}. It may not come before take-off at ${at(25)}. It may be there already: look now.`,
    ],
    [
      { ...expected, earliestMin: 8 },
      `Level 7 expected about ${at(17)}, ${at(20)} at the latest. It may be there already: look now.`,
    ],
    [{ kind: 'notInTime' }, `Will not reach level 7 before the limit, take-off at ${at(25)}.`],
    [{ kind: 'none', why: 'tooFew' }, 'Too few looks to say when to expect level 7: it takes 4 readings.'],
    [{ kind: 'none', why: 'notAbove' }, 'It was level 7 or lighter at the start: no lift to wait for.'],
  ] as const)('%j is said', (forecast, sentence) => {
    expect(say(forecast)).toBe(sentence);
  });

  it.each([
    [
      { ...expected, latestMin: null },
      `Level 7 at ${at(14)} at the earliest: go on looking. Expected about ${at(17)} if it stays wet, perhaps not before take-off.`,
    ],
    [
      { ...expected, earliestMin: 17, latestMin: null },
      `Level 7 at ${at(17)} at the earliest: go on looking. It may not come before take-off at ${at(25)}.`,
    ],
    [
      { ...expected, earliestMin: 17 },
      `Level 7 at ${at(17)} at the earliest: go on looking. If it stays wet, ${at(20)} at the latest.`,
    ],
    [
      expected,
      `Level 7 at ${at(14)} at the earliest: go on looking. If it stays wet, expected about ${at(17)}, ${at(20)} at the latest.`,
    ],
    [
      { kind: 'perhapsNot', earliestMin: 8 },
      `Level 7 may be there already: look now. Perhaps not before it comes off at ${at(25)}.`,
    ],
    [
      { kind: 'perhapsNot', earliestMin: 25 },
      `Level 7 at take-off at ${at(25)} at the earliest, perhaps not by then. Go on looking.`,
    ],
  ] as const)('of lightener leads with the earliest: %j', (forecast, sentence) => {
    expect(say(forecast, 9, true)).toBe(sentence);
  });

  it('never asks anybody to wait, and names no time beyond the take-off', () => {
    for (const latestMin of [null, 17, 20, 25]) {
      const forecasts: readonly LiftForecast[] = [
        { ...expected, latestMin },
        { kind: 'perhapsNot', earliestMin: 23 },
        { kind: 'notInTime' },
      ];
      for (const forecast of forecasts) {
        for (const isLightener of [false, true]) {
          const sentence = say(forecast, 9, isLightener);
          expect(sentence).not.toMatch(/later|longer|wait|leave|more time/i);
          const times = sentence.match(/\d\d:\d\d/g) ?? [];
          expect(times.length).toBeGreaterThan(0);
          expect(times.filter((time) => time > at(25))).toEqual([]);
        }
      }
    }
  });

  it('asks for a look once its time is past', () => {
    expect(say(expected, 17)).toContain('expected about');
    expect(say(expected, 17.1)).toBe(`Level 7 was expected about ${at(17)}: look now.`);
  });
});

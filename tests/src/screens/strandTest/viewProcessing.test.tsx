import { describe, expect, it } from 'vitest';
import { listAwaitingOutcome, viewProcessing } from '../../../../src/screens/strandTest/viewProcessing';
import { type Played, playUntil, tap } from '../playStory';

const minute = 60_000;

describe('strands in the mix', () => {
  const { consultation, atMs } = playUntil('STRAND_STARTED', 'lengths');

  it('have one clock each, and say how much the maker still allows', () => {
    const { running, free } = viewProcessing(consultation, atMs);
    expect(running.map(({ zone }) => zone)).toEqual(['ends', 'lengths']);
    expect(running[1]).toMatchObject({
      reading: { phase: 'running', remainingMs: 25 * minute },
      mayExtendMin: 20,
    });
    expect(free).toEqual([]);
  });

  it('get no more time once the limit is past, nor after a look that found them stretchy', () => {
    const limitAtMs = consultation.record.clocks.at(-1)?.limitAtMs ?? 0;
    const more = (nowMs: number) => viewProcessing(consultation, nowMs).running.at(-1)?.mayExtendMin;
    expect(more(limitAtMs - 1)).toBe(20);
    expect(more(limitAtMs)).toBe(0);
    const stretchy = playUntil('LOOKED', 'lengths', { feel: 'stretchy' });
    const { running } = viewProcessing(stretchy.consultation, stretchy.atMs);
    expect(running.find(({ zone }) => zone === 'lengths')?.mayExtendMin).toBe(0);
  });

  it('get no more time though a later look felt better: hair does not heal', () => {
    const look = (feel: string, before: Played) =>
      tap(before, 3 * minute, {
        type: 'LOOKED',
        answers: { of: 'strand', zone: 'lengths', level: '6', feel },
      });
    const mostAfter = (first: string) => {
      const { consultation: then, atMs: thenMs } = look('sound', look(first, { consultation, atMs }));
      return viewProcessing(then, thenMs).running.find(({ zone }) => zone === 'lengths')?.mayExtendMin;
    };
    expect(mostAfter('rough')).toBe(20);
    expect(mostAfter('stretchy')).toBe(0);
  });

  it('stand in the order of what is wanted next', () => {
    const looked = playUntil('LOOKED', 'ends');
    const { running } = viewProcessing(looked.consultation, looked.atMs + minute);
    expect(running.map(({ zone, reading }) => [zone, reading.phase])).toEqual([
      ['lengths', 'lookDue'],
      ['ends', 'running'],
    ]);
  });

  it('say when time is up, and how long ago', () => {
    const { running } = viewProcessing(consultation, atMs + 26 * minute);
    expect(running[0]?.reading).toMatchObject({ phase: 'over', remainingMs: -80_000 });
  });

  it('leave the clocks once broken, and wait for their outcome', () => {
    const broke = playUntil('STRAND_BROKE', 'ends');
    const { running, off } = viewProcessing(broke.consultation, broke.atMs);
    expect(running.map(({ zone }) => zone)).toEqual(['lengths']);
    expect(off.map(({ zone }) => zone)).toEqual(['ends']);
  });
});

it('asks for the outcome of each strand that is off', () => {
  const { consultation } = playUntil('STRAND_TAKEN_OFF');
  expect(listAwaitingOutcome(consultation).map(({ zone }) => zone)).toEqual(['lengths', 'ends']);
  const recorded = playUntil('OUTCOME_RECORDED', 'ends');
  expect(listAwaitingOutcome(recorded.consultation).map(({ zone }) => zone)).toEqual(['lengths']);
});

import { describe, expect, it } from 'vitest';
import type { Consultation } from '../../../machines/consultation/consultation';
import { viewBar } from '../../../src/screens/bar/viewBar';
import { playUntil, playUntilConfirmed, tap } from './playStory';

const move = (consultation: Consultation, id: string, chair: number): Consultation => ({
  ...consultation,
  id,
  record: { ...consultation.record, id, chair },
});

const { consultation: asked, atMs } = playUntilConfirmed('heatSpray');
const { consultation: running, atMs: startedAtMs } = playUntil('STRAND_STARTED', 'lengths');
const parked = tap({ consultation: asked, atMs }, 1, {
  type: 'PARKED',
  answers: { untilAtMs: atMs + 86_400_000 },
}).consultation;

describe('the bar', () => {
  it('has the places in the order of the chairs, never more than eight', () => {
    const view = viewBar([move(asked, 'b', 5), move(asked, 'a', 2)], 12, atMs);
    expect(view.places.map(({ chair }) => chair)).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
    expect(view.places.map(({ consultation }) => consultation?.id ?? null)).toEqual([
      null,
      'a',
      null,
      null,
      'b',
      null,
      null,
      null,
    ]);
    expect(viewBar([], 3, atMs).places).toHaveLength(3);
  });

  it('has nobody vanish: who has no place of her own waits in the list', () => {
    const open = [move(asked, 'first', 2), move(asked, 'second', 2), move(asked, 'far', 11)];
    const view = viewBar(open, 12, atMs);
    expect(view.places[1]?.consultation?.id).toBe('first');
    expect(view.waiting.map(({ id }) => id)).toEqual(['second', 'far']);
  });

  it('keeps the parked out of the places', () => {
    const view = viewBar([move(parked, 'away', 2), move(asked, 'here', 2)], 8, atMs);
    expect(view.places[1]?.consultation?.id).toBe('here');
    expect(view.parked.map(({ id }) => id)).toEqual(['away']);
    expect(view.waiting).toEqual([]);
  });

  it('puts the clock first whose look or end comes first, over all clients', () => {
    const later = move(running, 'later', 1);
    const sooner: Consultation = {
      ...move(running, 'sooner', 2),
      record: {
        ...move(running, 'sooner', 2).record,
        clocks: running.record.clocks.map((clock) => ({ ...clock, startedAtMs: clock.startedAtMs - 60_000 })),
      },
    };
    const { clocks } = viewBar([later, sooner], 8, startedAtMs);
    expect(clocks.map(({ consultation, clock }) => [consultation.id, clock.zone])).toEqual([
      ['sooner', 'ends'],
      ['sooner', 'lengths'],
      ['later', 'ends'],
      ['later', 'lengths'],
    ]);
    expect(clocks.map(({ strandNumber }) => strandNumber)).toEqual([1, 2, 1, 2]);
  });

  it('puts a head that must go to the basin before a look that is long due, looked at or not', () => {
    const { consultation, atMs: onAtMs } = playUntil('BOWL_APPLIED');
    const head = move(consultation, 'head', 2);
    const nearMs = onAtMs + 23 * 60_000;
    const began = move(running, 'strand', 1);
    const strand: Consultation = {
      ...began,
      record: {
        ...began.record,
        clocks: running.record.clocks.map((clock) => ({
          ...clock,
          startedAtMs: nearMs - 8 * 60_000,
          dueAtMs: nearMs + 17 * 60_000,
        })),
      },
    };
    const looked = tap({ consultation: head, atMs: onAtMs }, 22 * 60_000, {
      type: 'LOOKED',
      answers: { of: 'head', zone: 'lengths', stinging: 'no' },
    }).consultation;
    for (const one of [head, looked]) {
      const firstAt = (nowMs: number) => viewBar([strand, one], 8, nowMs).clocks[0]?.clock.kind;
      expect(firstAt(nearMs)).toBe('head');
      expect(firstAt(nearMs + 10 * 60_000)).toBe('head');
    }
    expect(viewBar([strand, looked], 8, nearMs - 1).clocks[0]?.clock.kind).toBe('strand');
  });

  it('leaves out a clock that has ended', () => {
    const { consultation, atMs: brokeAtMs } = playUntil('STRAND_BROKE');
    expect(viewBar([consultation], 8, brokeAtMs).clocks.map(({ clock }) => clock.zone)).toEqual(['lengths']);
  });
});

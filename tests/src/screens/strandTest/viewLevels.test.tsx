import { describe, expect, it } from 'vitest';
import { viewLevels } from '../../../../src/screens/strandTest/viewLevels';
import { playUntil, tap } from '../playStory';

const minute = 60_000;

describe('the levels of a strand', () => {
  const started = playUntil('STRAND_STARTED', 'ends');
  const strandOf = ({ consultation }: typeof started) => {
    const [strand] = consultation.record.strands;
    if (strand === undefined) throw new Error('no strand');
    return viewLevels(consultation.record, strand);
  };

  it('begin with what was told, and end with the last one read', () => {
    const once = tap(started, 2 * minute, {
      type: 'LOOKED',
      answers: { of: 'strand', zone: 'ends', level: '5.5', feel: 'sound' },
    });
    const unread = tap(once, 3 * minute, {
      type: 'LOOKED',
      answers: { of: 'strand', zone: 'ends', level: 'unknown', feel: 'rough' },
    });
    expect(strandOf(unread)).toEqual({
      seen: [
        { atMin: 0, level: 5 },
        { atMin: 2, level: 5.5 },
      ],
      lastLookMin: 5,
      target: 7,
      minutes: 25,
      lowest: 5,
      highest: 7,
    });
  });

  it('reach no further than the readings and what she wants', () => {
    expect(strandOf(started)).toMatchObject({ seen: [{ atMin: 0, level: 5 }], lowest: 5, highest: 7 });
  });
});

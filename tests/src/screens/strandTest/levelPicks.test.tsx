import { expect, it } from 'vitest';
import { listLevelPicks } from '../../../../src/screens/strandTest/levelPicks';
import { playUntil, tap } from '../playStory';

const started = playUntil('STRAND_STARTED', 'ends');
const picksAfter = (level: string) => {
  const looked = tap(started, 180_000, {
    type: 'LOOKED',
    answers: { of: 'strand', zone: 'ends', level, feel: 'sound' },
  });
  return listLevelPicks(looked.consultation.record, 'ends').map(Number);
};

it.each([
  ['1', 1, 4.5],
  ['2', 1, 4.5],
  ['5', 4, 7.5],
  ['7.5', 6.5, 10],
  ['10', 6.5, 10],
])('after level %s eight half steps are offered, %d to %d', (level, lowest, highest) => {
  const picks = picksAfter(level);
  expect([picks.length, picks[0], picks.at(-1)]).toEqual([8, lowest, highest]);
});

import papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import type { TraineeRow } from '../../../../machines/practice/tellTrainees';
import { nameTraineeTable, writeTraineeTable } from '../../../../src/screens/practice/traineeTable';

const beganAtMs = Date.UTC(2026, 2, 3, 9, 0);
const row: TraineeRow = {
  id: 'practice0one',
  lessonId: 'safeClient',
  title: 'A good question, and "safe"',
  by: '=Opal',
  beganAtMs,
  isExam: true,
  ended: 'finished',
  result: 'notPassed',
  score: 64,
  failedBy: ['flagMissed', 'decision'],
  missed: ['breakage', 'veryHot'],
};
const leftOff: TraineeRow = {
  ...row,
  title: null,
  isExam: false,
  ended: 'leftOff',
  result: 'leftOff',
  score: null,
  failedBy: [],
  missed: [],
};
const header = [
  'lesson',
  'title',
  'trainee',
  'began',
  'mode',
  'ended',
  'passed',
  'score',
  'failed_by',
  'flags_missed',
];

describe('the table of who learned', () => {
  it('has a line for each sitting, and no formula runs in it', () => {
    const text = writeTraineeTable([row, leftOff]);
    expect(text.startsWith('\ufeff')).toBe(true);
    expect(text.endsWith('\r\n')).toBe(true);
    const [names, one, other, ...rest] = papa.parse(text.slice(1, -2), {
      newline: '\r\n',
      delimiter: ',',
    }).data;
    expect(names).toEqual(header);
    expect(one?.toSpliced(3, 1)).toEqual([
      'safeClient',
      'A good question, and "safe"',
      "'=Opal",
      'examination',
      'finished',
      'no',
      '64',
      'flagMissed; decision',
      'breakage; veryHot',
    ]);
    expect(other?.toSpliced(3, 1)).toEqual(['safeClient', '', "'=Opal", 'hints', 'leftOff', '', '', '', '']);
    expect(rest).toEqual([]);
  });

  it('tells each beginning with the offset of this tablet', () => {
    const [, began = ''] = /,([^,]*T[^,]*),/.exec(writeTraineeTable([row])) ?? [];
    expect(began).toMatch(/^2026-03-03T\d\d:\d\d:00[+-]\d\d:\d\d$/);
    expect(Date.parse(began)).toBe(beganAtMs);
  });

  it('says practice in its name', () => {
    expect(nameTraineeTable(beganAtMs)).toBe('strandproof-practice-2026-03-03.csv');
  });
});

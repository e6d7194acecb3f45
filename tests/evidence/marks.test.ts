import { describe, expect, it } from 'vitest';
import { heatMarks } from '../../shared/heat/marks';
import { pressMarks } from '../../shared/heat/press/marks';
import { heatThresholds } from '../../shared/heat/thresholds';
import { readMark } from '../../src/words/marks';

const marks = [
  ...Object.entries(heatMarks),
  ...Object.entries(pressMarks).map(([id, mark]) => [`press, ${id}`, mark] as const),
  ...heatThresholds.map(({ id, mark }) => [id, mark] as const),
];

describe('where a figure comes from', () => {
  it.each(marks)('%s says it in one of the marks', (_id, mark) => {
    expect(mark).toMatch(/^(published: |common practice, no source|from memory: |assumed: |exact: )/);
  });

  it.each(marks.filter(([, mark]) => mark.startsWith('published: ')))('%s names its year', (_id, mark) => {
    expect(mark).toMatch(/\b(19|20)\d\d\b/);
  });

  it('is read apart into its kind and its source', () => {
    expect(readMark('published: A, B, 1998')).toEqual({ kind: 'published', source: 'A, B, 1998' });
    expect(readMark('common practice, no source')).toEqual({ kind: 'practice', source: '' });
    expect(readMark('common practice, no source: at sea level')).toEqual({
      kind: 'practice',
      source: 'at sea level',
    });
    expect(readMark('assumed: we chose it')).toEqual({ kind: 'assumed', source: 'we chose it' });
    expect(readMark('whatever')).toEqual({ kind: 'assumed', source: 'whatever' });
  });
});

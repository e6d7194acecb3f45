import { describe, expect, it } from 'vitest';
import type { Answers } from '../../../shared/records/forms/asked';
import { findStuff } from '../../../src/screens/findStuff';

const shelf = [
  { name: 'Sandbar powder', kind: 'lightener' },
  { name: 'Sandbar cream', kind: 'colour' },
] as const;
const wants = (service: NonNullable<Answers['client']>['service']): Answers =>
  service === undefined ? {} : { client: { service } };

describe('what is weighed of a line', () => {
  it('is what the shelf says, however the line is typed', () => {
    for (const typed of ['Sandbar powder', ' sandbar  POWDER ', 'SANDBAR POWDER']) {
      expect(findStuff({ shelf: [...shelf] }, wants('gloss'), typed), typed).toBe('lightener');
    }
    expect(findStuff({ shelf: [...shelf] }, wants('lighten'), 'sandbar CREAM')).toBe('colour');
  });

  it('is lightener of a line that is on no shelf, where anything is lifted', () => {
    for (const service of ['lighten', 'liftAndDeposit'] as const) {
      expect(findStuff({ shelf: [] }, wants(service), 'Gravel powder'), service).toBe('lightener');
    }
    for (const service of ['depositOnly', 'gloss', 'tone', undefined] as const) {
      expect(findStuff({ shelf: [] }, wants(service), 'Gravel powder'), service).toBe('colour');
    }
  });
});

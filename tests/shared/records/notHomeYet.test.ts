import { describe, expect, it } from 'vitest';
import { planForm } from '../../../shared/records/forms/bowl';
import { listNotHome } from '../../../shared/records/notHomeYet';

describe('who may go home', () => {
  it('is nobody whose skin burns, and nobody who was not told whom she calls about late itching', () => {
    for (const skinNow of planForm.skinNow.options) {
      for (const lateItching of planForm.lateItching.options) {
        expect(listNotHome({ skinNow, lateItching })).toEqual([
          ...(skinNow === 'burns' ? [{ path: 'skinNow', code: 'notHomeYet' }] : []),
          ...(lateItching === 'notTold' ? [{ path: 'lateItching', code: 'notToldYet' }] : []),
        ]);
      }
    }
  });

  it('is not said before anything was answered, nor of a plan from before these were asked', () =>
    expect(listNotHome({})).toEqual([]));
});

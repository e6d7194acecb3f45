import { describe, expect, it } from 'vitest';
import { isCallOwed } from '../../../shared/records/callOwed';
import { careForm, reactionForm } from '../../../shared/records/forms/course';

const owes = (signs: readonly string[], care: string) =>
  isCallOwed({ reaction: { atMs: 0, by: 'Opal', seq: 1, signs, care: null } }, care);

describe('the call of the emergency number', () => {
  // Labels; Pang & Fiume 2001.
  it('is owed for throat, breath or faint, and for no other sign', () => {
    for (const sign of reactionForm.signs.options) {
      expect(owes([sign], 'rinsed'), sign).toBe(sign === 'breath' || sign === 'faint');
    }
  });

  it('is owed until it was made, or refused by her whose it is', () => {
    for (const care of careForm.care.options) {
      expect(owes(['burning', 'breath'], care), care).toBe(
        care !== 'emergencyCalled' && care !== 'callRefused',
      );
    }
  });

  it('is owed by nobody without a reaction', () => {
    expect(isCallOwed({ reaction: null }, 'rinsed')).toBe(false);
  });
});

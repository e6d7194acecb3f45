import type { ConflictCode } from './readForm';

/** At which answer may she not go home yet, and why? */
export interface NotHome {
  readonly path: 'skinNow' | 'lateItching';
  readonly code: ConflictCode;
}

/**
 * What keeps her here? Skin that burns is a reaction until somebody says by name that it is none; and a reaction may
 * come days later, so that nobody leaves before she was told whom she calls (EVIDENCE.md §9, common practice).
 * None where she may go. Checked in tests/shared/records/notHomeYet.test.ts.
 */
export const listNotHome = (said: { readonly [name in NotHome['path']]?: unknown }): readonly NotHome[] => [
  ...(said.skinNow === 'burns' ? [{ path: 'skinNow', code: 'notHomeYet' } as const] : []),
  ...(said.lateItching === 'notTold' ? [{ path: 'lateItching', code: 'notToldYet' } as const] : []),
];

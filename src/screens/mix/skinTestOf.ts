import { isSameLine } from '../../../shared/judgement/mixes';
import type { SkinTestRecord } from '../../../shared/records/record';
import type { Words } from '../../words/words';

/**
 * What does her skin test say nothing of? Lightener, whatever was tested; another product line than the one that was on
 * her skin. null where there is nothing to say. A label asks for a test of that very product (published: 21 U.S.C.
 * 361(a)), and none clears persulfate (published: Cosmetics Europe 2023). Checked in tests/src/screens/mix/skinTestOf.test.tsx.
 */
export function sayNotTested(
  skinTest: Pick<SkinTestRecord, 'line'> | null,
  bowl: { readonly line: string; readonly isLightener: boolean },
  { mix }: Words,
): string | null {
  if (skinTest === null) return null;
  if (bowl.isLightener) return mix.notPowder;
  const tested = skinTest.line ?? '';
  if (bowl.line === '' || isSameLine(tested, bowl.line)) return null;
  return tested === '' ? mix.skinTestOfNone : mix.skinTestOfOther(tested);
}

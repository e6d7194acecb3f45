import { isLightener } from '../../shared/judgement/onScalp';
import type { Answers } from '../../shared/records/forms/asked';
import type { Settings } from '../../shared/records/settings';

/** What is weighed of this line, in the word of the bar? Checked in tests/src/screens/findStuff.test.tsx. */
export const findStuff = (
  settings: Pick<Settings, 'shelf'>,
  answers: Answers,
  line: string,
): 'colour' | 'lightener' => (isLightener(settings, answers, line) ? 'lightener' : 'colour');

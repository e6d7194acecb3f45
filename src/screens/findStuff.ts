import { isSameLine } from '../../shared/judgement/mixes';
import type { Answers } from '../../shared/records/forms/asked';
import type { Settings } from '../../shared/records/settings';

/**
 * What is weighed of this line, in the word of the bar? As the shelf says, however the line is typed. A line that is not
 * on the shelf is lightener where she wants to be lightened: powder that is taken for colour is handled without its
 * cautions. Checked in tests/src/screens/findStuff.test.tsx.
 */
export function findStuff(
  { shelf }: Pick<Settings, 'shelf'>,
  { client }: Answers,
  line: string,
): 'colour' | 'lightener' {
  const kinds = shelf.filter(({ name }) => isSameLine(name, line)).map(({ kind }) => kind);
  if (kinds.includes('lightener')) return 'lightener';
  return client?.service === 'lighten' && !kinds.includes('colour') ? 'lightener' : 'colour';
}

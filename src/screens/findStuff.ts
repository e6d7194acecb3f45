import type { Settings } from '../../shared/records/settings';

/**
 * What is weighed of this line, in the word of the bar? Lightener where the shelf says so, else colour.
 * Checked in tests/src/screens/strandTest/strandScreens.test.tsx.
 */
export const findStuff = ({ shelf }: Pick<Settings, 'shelf'>, line: string): 'colour' | 'lightener' =>
  shelf.some(({ name, kind }) => name === line.trim() && kind === 'lightener') ? 'lightener' : 'colour';

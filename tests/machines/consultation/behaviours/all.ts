import { type ChartUnderTest, NeverGotThere } from '../chartUnderTest';
import { anotherDay } from './anotherDay';
import { asking } from './asking';
import type { Behaviour } from './behaviour';
import { bowls } from './bowls';
import { care } from './care';
import { carried } from './carried';
import { decision } from './decision';
import { strandTest } from './strandTest';
import { toldLate } from './toldLate';
import { toner } from './toner';

/** Every named behaviour, by subject. */
export const behaviours = {
  asking,
  anotherDay,
  toldLate,
  strandTest,
  carried,
  decision,
  bowls,
  toner,
  care,
} as const satisfies Record<string, readonly Behaviour[]>;

export const everyBehaviour: readonly Behaviour[] = Object.values(behaviours).flat();

/** Does the chart behave like this, or not, or did it not even come so far? */
export function judgeBehaviour(
  { check }: Behaviour,
  chart: ChartUnderTest,
): 'holds' | 'broken' | 'neverGotThere' {
  try {
    check(chart);
    return 'holds';
  } catch (error) {
    return error instanceof NeverGotThere ? 'neverGotThere' : 'broken';
  }
}

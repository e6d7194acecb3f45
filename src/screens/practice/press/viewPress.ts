import type { Wetness } from '../../../../shared/heat/habit';
import { ASSUMED_ROOM_C } from '../../../../shared/heat/hairTemperature';
import { ASSUMED_REGAIN } from '../../../../shared/heat/press/bundle';
import type { Press, PressMoment } from '../../../../shared/heat/press/press';
import { type PressRead, readPress, sumSpans } from '../../../../shared/heat/press/readPress';
import { heatThresholds } from '../../../../shared/heat/thresholds';
import { brand } from '../../../../shared/units/brand';
import type { Celsius } from '../../../../shared/units/temperature';

/** What was chosen to be pressed, and how. */
export interface PressChoice {
  readonly thicknessMm: number;
  readonly plateC: Celsius;
  readonly wetness: Wetness;
  readonly contactS: number;
  readonly presses: number;
}

export type PressVerdict = 'coolMiddle' | 'cookedOutside' | 'tooHot' | 'through';

/** What the picture draws and says. */
export interface PressView {
  readonly choice: PressChoice;
  readonly boilingC: Celsius;
  readonly moments: readonly PressMoment[];
  readonly read: PressRead;
  readonly tooHot: { readonly id: 'poresRiseFast' | 'cortexSoftens'; readonly fromC: Celsius };
  readonly verdict: PressVerdict;
}

/** Hair with water in it is too hot from where holes grow fast; dry hair from where it softens. */
function findTooHot(wetness: Wetness): PressView['tooHot'] {
  const id = wetness === 'dry' ? 'cortexSoftens' : 'poresRiseFast';
  const from = heatThresholds.find((threshold) => threshold.id === id)?.from;
  return { id, fromC: from ?? brand<Celsius>(Number.NaN) };
}

function judge({ worksAtS, tooHot }: PressRead): PressVerdict {
  const isTooHot = sumSpans(tooHot) > 0;
  if (worksAtS === null) return isTooHot ? 'cookedOutside' : 'coolMiddle';
  return isTooHot ? 'tooHot' : 'through';
}

/** This choice as it is reckoned: hair begins as warm as the room. */
export const readChoice = (
  { thicknessMm, plateC, wetness, contactS, presses }: PressChoice,
  boilingC: Celsius,
): Press => ({
  thicknessMm,
  plateC,
  startC: brand<Celsius>(ASSUMED_ROOM_C),
  boilingC,
  regain: ASSUMED_REGAIN[wetness],
  contactS,
  presses,
});

/**
 * How hot did outside and middle of this section get, and what does that come to?
 * Checked in tests/src/screens/practice/press/viewPress.test.tsx.
 */
export function viewPress(
  choice: PressChoice,
  boilingC: Celsius,
  moments: readonly PressMoment[],
): PressView {
  const tooHot = findTooHot(choice.wetness);
  const read = readPress(readChoice(choice, boilingC), moments, tooHot.fromC);
  return { choice, boilingC, moments, read, tooHot, verdict: judge(read) };
}

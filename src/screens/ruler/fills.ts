import type { PulledStrand } from '../../../shared/hair/pull';
import type { FeelHairAnswers } from '../../../shared/records/forms/feelHair';
import type { OutcomeAnswers } from '../../../shared/records/forms/test';

/** Gone past the light pull is mush between the fingers: it is told as such, and a named person judges it. */
const felt = {
  sound: 'springsBack',
  slow: 'staysLong',
  gummy: 'snaps',
  broken: 'snaps',
} as const satisfies Readonly<Record<PulledStrand['verdict'], FeelHairAnswers['wetStretch']>>;

/** Which answer would a finger have tapped at the feel? */
export const fillFeel = ({ verdict }: PulledStrand): Pick<FeelHairAnswers, 'wetStretch'> => ({
  wetStretch: felt[verdict],
});

/** Which answers would it have tapped at an outcome? How far one went that snapped is said only where it was read. */
export const fillOutcome = ({
  returned,
  hasGonePast,
}: PulledStrand): Pick<OutcomeAnswers, 'stretch'> & {
  readonly wentPast30?: OutcomeAnswers['wentPast30'];
} => {
  if (returned === 'snaps' && !hasGonePast) return { stretch: returned };
  return { stretch: returned, wentPast30: hasGonePast ? 'yes' : 'no' };
};

import { bench, describe } from 'vitest';
import { computeProfile } from '../../shared/heat/profile';
import { fullHead, places } from './fullHead';
import { stepWeekly } from './stepWeekly';

/** Five tools, six times of bleach, 120 places, three accounts: the closed form beside plain weekly stepping. */
describe('profile', () => {
  bench('closed form', () => void computeProfile(fullHead, places), { time: 2_000 });
  bench('weekly stepping', () => void stepWeekly(fullHead, places), { time: 2_000 });
});

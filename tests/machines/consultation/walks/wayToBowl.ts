import { say, tap, weighBowl } from './rawTaps';
import { answersOf, ask, decide, opened, tested } from './story';

/** One client with one zone, the lengths, told from the first tap; what others tell of her begins here. */
export const asked = [...opened, ...ask()];
export const toMix = [...asked, ...tested('lengths'), decide('asPlanned')];
export const whole = weighBowl('lengths', '9', '25');
export const toWeighed = [...toMix, whole];
export const lengths = { zone: 'lengths' };
export const apply = tap('BOWL_APPLIED', { ...lengths, skinFirst: 'calm' });
export const toColourOn = [...toWeighed, apply];
export const takeOff = tap('STRAND_TAKEN_OFF', { ...lengths, why: 'levelReached' });
export const stinging = tap('LOOKED', { of: 'head', ...lengths, stinging: 'yes' });
export const hives = say('client', { ...answersOf().client, reactions: ['hives'] });

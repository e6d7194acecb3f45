import { brand } from '../../units/brand';
import type { Celsius } from '../../units/temperature';

/**
 * How thick is a section between the plates, mm? From one so fine that light comes through, to a handful. Assumed
 * because nobody has measured it: a parting of 1 cm lies about 0.13 mm thick if it fills the plates' width (200 hairs a
 * cm² of 0.07 mm, from memory), and several times that where it bunches.
 */
export const ASSUMED_SECTIONS_MM: readonly number[] = [0.2, 0.5, 1, 2];

/**
 * For so long the plates may lie on one place, s. Assumed because a pass of ten seconds along ten inches stays one
 * second on each, and a hand that stops stays longer.
 */
export const ASSUMED_ON_PLACE_S: readonly number[] = [1, 2, 4, 8];

/** So often a section is pressed at the most, here. Assumed because by then everybody has seen what another one does. */
export const ASSUMED_MOST_PRESSES = 4;

/** To what are irons set, °C? common practice, no source. */
export const IRON_SETTINGS_C: { readonly from: Celsius; readonly to: Celsius } = {
  from: brand<Celsius>(120),
  to: brand<Celsius>(230),
};

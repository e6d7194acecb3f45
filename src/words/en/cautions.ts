/** What is heeded just before a hand does something. */
export type CautionId =
  | 'snip'
  | 'look'
  | 'weighLightener'
  | 'weighColour'
  | 'mixColour'
  | 'standing'
  | 'onHead'
  | 'basin'
  | 'glass'
  | 'spray'
  | 'outcome';

/**
 * One caution for each movement of the hand, said beside it and nowhere else.
 * Gloves, a new pair for each client: published, HSE (UK) hairdressing guidance. Lid on, scoop low, ventilate, staff
 * with asthma do not mix: product labels; Nielsen et al., J. Occup. Health 2016. Ventilation at the mixing point:
 * published, TRGS 530 (2007 edition, since replaced). Bowl never of metal, mixed product never capped or stored, no
 * aerosol or alcohol spray near plates: product labels; common practice. No dryer or lamp on lightener: burn
 * first-aid guidance, case reports. Two minutes to the basin: common practice, no source. Glass off the head, goggles:
 * training texts, not a regulator.
 */
export const cautions: Readonly<Record<CautionId, string>> = {
  snip: 'Gloves on, a new pair for her.',
  look: 'Gloves on. Wipe, blot, look on white.',
  weighLightener: 'Lid on, scoop low, fan on. Keep it out of your eyes. Asthma? Somebody else mixes.',
  weighColour: 'Plastic or glass bowl, never metal.',
  mixColour: 'Fan on at the mixing point.',
  standing: 'New gloves. Never cap it, never keep it: it bursts.',
  onHead: 'No dryer or lamp on lightener unless the maker says so.',
  basin: 'To the basin now, so that the rinse is in time.',
  glass: 'Off the head. Glass or plastic, never metal. Goggles on.',
  spray: 'No aerosol or alcohol spray near hot plates.',
  outcome: 'Rinse, blot, straighten the curl, pull lightly while wet.',
};

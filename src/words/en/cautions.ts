/** What is heeded just before a hand does something. */
export type CautionId =
  | 'snip'
  | 'look'
  | 'weighLightener'
  | 'weighColour'
  | 'standing'
  | 'onHead'
  | 'onHeadColour'
  | 'basin'
  | 'overdue'
  | 'glass'
  | 'spray'
  | 'outcome';

/**
 * One caution for each movement of the hand, said beside it and nowhere else.
 * Gloves, not of latex, a new pair for each client: from memory, HSE (UK) hairdressing guidance. Lid on, scoop low, ventilate, staff
 * with asthma do not mix: common practice; Nielsen et al., J. Occup. Health 2016. Ventilation at the mixing point:
 * published, TRGS 530 (2007 edition, since replaced). Bowl never of metal, mixed product never capped or stored, no
 * aerosol or alcohol spray near plates: product labels; common practice. No dryer or lamp on lightener: burn
 * first-aid guidance, case reports. Two minutes to the basin: common practice, no source. Glass off the head, goggles:
 * training texts, not a regulator. Never on lashes or brows: published, U.S. FD&C Act §601(a), 21 U.S.C. 361(a). Eyes
 * rinsed at once: product labels.
 */
export const cautions: Readonly<Record<CautionId, string>> = {
  snip: 'Gloves on: a new pair for her, never latex.',
  look: 'Gloves on. Wipe, blot, look on white.',
  weighLightener:
    'Gloves, fan on. Never a metal bowl. Lid on, scoop low, mind your eyes. Asthma? Somebody else mixes.',
  weighColour: 'Gloves on, fan on. Plastic or glass bowl, never metal. Mind your eyes.',
  standing: 'Gloves on. Never on lashes or brows. Never cap it, never keep it: it bursts.',
  onHead: 'No dryer or lamp on lightener unless the maker says so. In the eyes? Rinse at once.',
  onHeadColour: 'Never on lashes or brows. In the eyes? Rinse at once.',
  basin: 'To the basin now, so that the rinse is in time.',
  overdue: 'Rinse now: its time is over.',
  glass: 'Off the head, fan on. Glass or plastic, never metal. Gloves and goggles on.',
  spray: 'No aerosol or alcohol spray near hot plates: it burns.',
  outcome: 'Rinse, blot, straighten the curl, pull lightly while wet.',
};

import type { CautionMoment, StatedCautionId } from '../../../shared/judgement/cautions';
import { figures } from './figures';

const moments: Readonly<Record<CautionMoment, string>> = {
  before: 'Before',
  skinTest: 'Skin test',
  glass: 'Glass',
  mixing: 'Mixing',
  onHer: 'On her',
  ifItBurns: 'It burns',
  heat: 'Hot tools',
  home: 'Home',
};

const all: Readonly<Record<StatedCautionId, string>> = {
  reactedEver: 'Any reaction to hair colour, ever: do not colour.',
  blackTattoo: 'Reacted to a temporary black henna tattoo: do not colour.',
  skinToday:
    'Rash or burn on the face, or a sensitive, irritated or damaged scalp: do not colour until it has healed.',
  underAge: 'Hair colour is not meant for anybody under 16.',
  persulfates: 'Wheezed or had hives from lightener, ever: never again.',
  testEachTime: 'A skin test each time, read after two days, for your own colour too.',
  makersProtocol:
    'The maker says how, where and how long. It does not clear lightener, and repeating it may itself sensitise.',
  neverMeansSafe:
    '“Nothing seen” never means safe: of 42 people known to be allergic, 38 noticed it on the forearm, 39 behind the ear.',
  metalSalts: 'Henna mixes, grey restorer, unknown box colour: a cutting in the glass first.',
  poolWater: 'Pool or well water leaves metal in hair too: where there was much of it, a cutting as well.',
  glassAndGoggles:
    'Off the head, fan on, glass or plastic, gloves and goggles. Heat, bubbles, smell or another colour: do not colour.',
  keptCutting: `Keep the cutting ${figures.cuttingHours} h: what did not change can still break next day.`,
  gloves: 'Gloves with long cuffs, never latex, a new pair for each client.',
  ventilation: 'Fan on where you mix.',
  powder: 'Powder: goggles on, lid on, scoop low. Whoever has asthma does not mix it.',
  bowlAndLid: 'Plastic or glass, never metal. Never cap or keep what is mixed: it bursts. Keep powder dry.',
  lashesAndBrows: 'Never on lashes or brows.',
  noDryer: 'No dryer or lamp on lightener unless the maker says so.',
  relaxedLately: 'Relaxer or perm: wait two weeks. Hydroxide and thio never overlap.',
  breathFirst: 'Throat, breath or faint: the emergency number first, then rinse.',
  rinseNow: `Stings or burns: rinse now, cool running water, ${figures.burnRinse} for a burn. Neutralise nothing. Blisters: to a doctor; burns may show late.`,
  eyes: `In the eyes: rinse at once, ${figures.eyesRinseFrom} to ${figures.eyesRinseTo}, lenses out, then a doctor.`,
  noSpray: 'No aerosol or alcohol spray near hot plates: it burns.',
  ironsStayHot: 'An iron stays hot enough to burn for 6 to 8 min after it is off.',
  restFromHeat: `Nothing hot on coloured hair for ${figures.restHours} h.`,
  lateItching: 'Say whom she calls about late itching or a rash.',
  pregnancy: 'Pregnant: advice, never a block, and nothing of it is kept.',
};

export const cautionList = {
  open: 'Cautions',
  moments,
  all,
  note: 'Local law, the maker’s directions and a licensed professional’s judgement come first.',
  pregnant: {
    open: 'Pregnant?',
    title: 'She is pregnant: what to say',
    lines: [
      'It is hers to decide. Nothing here stops her, and nothing of it is written down.',
      'Health services say: most research finds colouring safe; very little gets through sound skin.',
      'Some wait until the first twelve weeks are over.',
      'Off the scalp touches no skin. Gloves, fresh air, no longer than needed, rinse well.',
      'Hair and skin may answer otherwise than before: skin test and strand as ever.',
      'Unsure or unwell: her midwife or doctor comes first.',
    ],
    source: 'Health-service advice, read second hand.',
  },
};

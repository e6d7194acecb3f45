import type { CautionMoment, StatedCautionId } from '../../../shared/judgement/cautions';
import { figures } from './figures';

const moments: Readonly<Record<CautionMoment, string>> = {
  skinTest: 'Skin test',
  mixing: 'Mixing',
  onHer: 'On her',
  ifItBurns: 'If it burns',
  heat: 'Hot tools',
  home: 'Home again',
};

const all: Readonly<Record<StatedCautionId, string>> = {
  testEachTime: 'A skin test each time, read after two days, for your own colour too.',
  makersProtocol:
    'The maker says how, where and how long. It does not clear lightener, and repeating it may itself sensitise.',
  neverMeansSafe:
    '“Nothing seen” never means safe: of 42 people known to be allergic, 38 noticed it on the forearm, 39 behind the ear.',
  gloves: 'Gloves with long cuffs, never latex, a new pair for each client.',
  ventilation: 'Fan on where you mix.',
  powder: 'Powder: lid on, scoop low, mind your eyes. Whoever has asthma does not mix it.',
  bowlAndLid: 'Plastic or glass, never metal. Never cap or keep what is mixed: it bursts. Keep powder dry.',
  metalSalts:
    'Henna mixes, grey restorer, unknown box colour: a cutting in a glass first. It can still break next day.',
  lashesAndBrows: 'Never on lashes or brows.',
  persulfates: 'Wheezed or had hives from lightener, ever: never again.',
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

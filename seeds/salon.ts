import type { Settings } from '../shared/records/settings';

/** An invented salon: staff, shelf, what the packs say, and altitude are made up for this project. */
export const salon: Settings = {
  altitudeM: 180,
  units: { temperature: 'F', mass: 'g', length: 'in' },
  locale: 'en',
  scaleStepG: 1,
  chairs: 8,
  staff: ['Opal', 'Juno', 'Wren'],
  shelf: [
    { name: 'Sandbar powder', kind: 'lightener' },
    { name: 'Sandbar cream', kind: 'colour' },
    {
      name: 'Cove mist',
      kind: 'spray',
      ingredients:
        'Aqua, Alcohol Denat., Sucrose, Hydrolyzed Wheat Protein, Panthenol, Polyquaternium-11, Glycerin, Phenoxyethanol, Parfum.',
    },
    {
      name: 'Harbour veil',
      kind: 'spray',
      ingredients:
        'CYCLOPENTASILOXANE, DIMETHICON, CYCLOHEXASILOXANE, PHENYL TRIMETHICONE, ARGANIA SPINOSA KERNEL OIL, PARFUM, LINALOOL',
      makerSaysUpToC: 230,
    },
  ],
  carried: false,
  spoken: false,
  contact: 'the salon, 555 0142',
  keepMonths: 36,
  erasesByItself: false,
  figuresByStylist: false,
  learns: true,
  coverAfterMin: null,
  profile: {
    ageLine: 16,
    skinTestWaitH: 48,
    skinTestLapsesDays: 28,
    skinTestFor: ['lighten', 'liftAndDeposit', 'depositOnly', 'gloss', 'tone'],
    ceilingPercent: 12,
    isAnyReactionAbsolute: false,
  },
};

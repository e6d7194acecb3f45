export const colourOn = {
  title: 'Colour on',
  lookAsk: 'Any stinging or burning?',
  askAloud: 'Ask her aloud. Then the hair: wipe a strand, pull it lightly.',
  yes: 'It stings or burns',
  hair: {
    sound: 'Nothing felt, hair sound',
    stretchy: 'Nothing felt, hair stretchy',
    breaking: 'Hair breaks or is mush',
  },
  hairBreaks: (zone: string) => `The hair breaks: rinse the ${zone} now. Lukewarm, no rubbing, no comb.`,
  hairStretchy: (zone: string) => `Stretchy at a look: rinse the ${zone} now, do not wait.`,
  rinsed: (zone: string) => `Rinsed: ${zone}`,
  rinsedEarly: (zone: string) => `Rinsed early: ${zone}`,
  look: (zone: string) => `Look: ${zone}`,
  mixedAt: (time: string) => `Weighed ${time}`,
  onSince: (time: string) => `begun ${time}`,
  allOnSince: (time: string) => `all on ${time}`,
  toner: 'Toner, no heat',
  allOn: 'All on now',
  /** On hair nothing was ever done to. */
  rootsToCome: (useBy: string) => `Roots last: on by ${useBy}`,
  rootsTooLate: 'Roots not on, and too late',
  rootsOn: 'Roots on now: all on',
  /** Which time the clock counts. */
  fromBegun: 'The clock runs since it was begun.',
  lookedTimes: (count: string) => `Looks so far: ${count}`,
  moreTime: 'More time',
  /** The pause before another bowl: the skin is answered with the tap that begins. */
  beforeMore: 'Skin calm? Gloves on. Never on lashes or brows. Never cap it.',
  /** Of a bowl that waits while another is on. */
  notCalmThen:
    'Nothing more goes on skin that is not calm. Does what is on her sting? Rinse it. Throw this bowl away.',
  rinseNow: 'Rinse now, she is stopped.',
};

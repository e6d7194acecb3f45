import type { CovariateName } from '../../../shared/judgement/chance/covariates';

/** What may lie behind a strand that broke, in words for the client: never blame, never certain. */
const canExplain: Readonly<Record<CovariateName, string>> = {
  helixLost: 'The heat and bleach of its years add up along the strand, most of all at the ends.',
  tryptophanLost: 'Heat has left its marks in this hair.',
  ironedWet: 'Water under a hot plate boils inside the hair and leaves it weak.',
  scorched: 'Where it smoked or smelt burnt, it was hotter than hair bears.',
  bleaches: 'Each bleach takes its share, and the shares add up.',
  curlLost: 'The curl is gone at the ends: they have been through more than the roots.',
  slowStretch: 'Wet, it came back slowly or not at all before anything was on it.',
  porous: 'It drinks fast, so a mix works harder in it.',
  breakage: 'It broke before today, without any mix.',
  veryHot: 'At such a setting the core of the hair softens.',
  smoothing: 'A keratin service and the hot plate that seals it leave less to work with.',
  relaxer: 'A relaxer or perm opened what holds hair together, and a mix opens it again.',
  strangeColour: 'Metal salts, or a colour nobody knows, can heat and break hair in the mix.',
};

export const whatHappened = {
  open: 'What happened?',
  title: (zone: string) => `What happened to the ${zone}?`,
  broke: {
    gummy: (zone: string, minutes: string) => `The strand from the ${zone} went gummy after ${minutes}.`,
    broken: (zone: string, minutes: string) => `The strand from the ${zone} broke after ${minutes}.`,
  },
  /** Better a strand than the head. */
  good: 'It was a strand, not her hair: that is what it is for.',
  explain: 'What can explain it',
  canExplain,
  notKnown: 'What she does not know is counted here as if it were so.',
  nothing: 'Nothing she told and nothing that was felt would explain it.',
  elseTitle: 'What else can do it',
  metal: 'Metal salts: box colour, henna, colour restorers, well or pool water.',
  otherwise: [
    'A colour or bleach she forgot, or that was on before her time with you.',
    'The mix itself: developer, ratio or time other than was written down.',
  ],
  doTitle: 'What can be done',
  doNow: ['Cut what failed: nothing treats it back.', 'Let it grow out, and leave this length alone.'],
  /** Only to whoever told of an iron. */
  doIroning: 'From now on drier and cooler: all dry first, one pass, a lower setting.',
  sure: 'Nobody can see inside a hair. These can explain it; none of them is certain.',
};

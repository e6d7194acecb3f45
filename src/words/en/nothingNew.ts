/** Whoever is back: what is read aloud, and answered in one tap. */
export const nothingNew = {
  title: 'Anything new since last time?',
  reactions: 'Reactions',
  noReaction: 'None, then or since',
  scalp: 'Scalp and face today',
  scalpSound: 'Looked at, sound',
  age: 'Age',
  oldEnough: 'Over the age line',
  tools: 'Hot tools at home',
  history: 'On the hair',
  nothingElse: (history: string) => `${history}; nothing else since`,
  hair: 'Felt today',
  hairDry: 'Dry everywhere, no broken hairs',
  stretch: 'One wet strand today, pulled lightly?',
  somethingNew: 'Something is new',
  nothingNew: 'Nothing new, all as last time',
};

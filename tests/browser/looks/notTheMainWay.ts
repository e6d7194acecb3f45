/**
 * Screens that nobody needs between a client sitting down and the rinse, and why each may be longer than the glass and
 * its options smaller than a wet glove needs.
 */
export const notTheMainWay: Readonly<Record<string, string>> = {
  day: 'a list of everything since the morning, read when there is time',
  settings: 'set up once, before anybody sits down',
  pin: 'set up and asked for while nobody waits; its page of the settings tells all it does not do',
  notices: 'as long as what is told; it stands in a window over the screen',
  whyOfHair: 'as long as the figures behind the strand, with their sources, for whoever asks',
  whyOfSpray: 'as long as what a list tells, with its sources, for whoever asks',
  press: 'to try things out while nobody sits at a chair',
  bench: 'trials on cut hair, while nobody sits at a chair',
  lessons: 'a list of lessons, chosen while nobody sits',
  trainer: 'who learned what, and what was missed, read when nobody sits',
  debrief: 'all that a lesson came to, read when it is over',
  parkedList: 'as long as those who are away',
};

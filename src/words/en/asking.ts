/** What is said beside the questions. */
export const asking = {
  /** The plan is changed: which answer, and what that does to what was tested. */
  planToChange: {
    what: 'Tap in the list what changes: what she wants, how far, the length. Strands of the old plan then count no more.',
    hints: {
      length: 'As it is after the cut. The old strands count no more.',
      service: '“Deposit only”, gloss or tone. The old strands count no more.',
    },
  },
  ageBand: (line: string) => ({
    ask: 'How old is she?',
    short: 'Age',
    options: { over: `${line} or older`, under: `Under ${line}` },
  }),
  missing: (count: string) => `Still to answer or mend: ${count}`,
  dampTitle: 'Damp: dry it and look again.',
  damp: 'Towel and cool air, no hot tool: water hides what the hair is like.',
  dryNow: 'Felt again: dry everywhere',
  touch: {
    ask: 'Is it dry to the touch?',
    hint: 'At the nape, mid-length and at the ends.',
    all: 'Dry everywhere',
    apart: 'Damp somewhere',
  },
  glassDue:
    'What has been on it asks for a glass test: a cutting meets peroxide before anything goes on the head.',
  heatTitle: 'Heat so far',
  glassTitle: 'Glass test',
  todayTitle: 'Today’s heat',
  glassNotDue: 'No glass test needed for what has been on it.',
  glassDone: 'The glass test was read: nothing seen.',
  shelfEmpty: 'No spray on the shelf yet. Type its name, or add it in settings.',
};

import type { skinTestForms } from '../../../shared/records/forms/skinTest';
import type { FormWords } from '../formWords';

const form: FormWords<Omit<(typeof skinTestForms)['SKIN_TEST_PUT_ON'], 'forVisit'>> = {
  ticket: { ask: 'Whose is it? Initials or ticket', short: 'Whose', hint: 'As at the start of a client.' },
  line: {
    ask: 'Which product line?',
    short: 'Product line',
    hint: 'If you know: the test is of that product alone. For lightener go by the maker’s directions.',
  },
  method: {
    ask: 'How is it done?',
    short: 'Method',
    options: {
      makersMethod: 'The maker’s method',
      openApplication: 'Left open, 45 min',
      unknown: 'Don’t know',
    },
  },
  site: {
    ask: 'Where is it put on?',
    short: 'Place',
    options: {
      behindEar: 'Behind the ear',
      innerElbow: 'Inner elbow',
      forearm: 'Forearm',
      unknown: 'Don’t know',
    },
  },
  consent: {
    ask: 'Does she agree that it is kept?',
    short: 'Its record',
    options: {
      notAsked: 'Kept; nobody asked her',
      kept: 'Kept; she agreed',
      thisVisit: 'For this visit only',
    },
  },
  putOnAtMs: {
    ask: 'When was it put on?',
    short: 'Put on',
    hint: 'At this time of day. Another hour: type it.',
  },
  seen: {
    ask: 'What is seen?',
    short: 'Seen',
    options: {
      notReadYet: 'Not read yet',
      nothing: 'Nothing seen',
      reaction: 'Redness, itch, swelling',
    },
  },
};

/** The skin test: how it stands and what is next. */
export const skinTest = {
  form,
  title: 'Skin test',
  notNeeded: 'Not asked for with this service by your local rules. The maker’s directions come first.',
  missing: 'None yet. Put it on today; she comes back to have it read.',
  waiting: (putOn: string, readable: string) => `On since ${putOn}. May be read from ${readable}.`,
  cameIn: (came: string, here: string, there: string) =>
    `Came in from another station ${came} · readable here from ${here}, at its own station from ${there}.`,
  toRead: (putOn: string) => `Put on ${putOn}. It is time: look, and say what is seen.`,
  clear: (putOn: string, lapses: string) => `Nothing seen, put on ${putOn}. Counts until ${lapses}.`,
  neverSafe: '“Nothing seen” never means safe.',
  lapsed: (putOn: string) => `Too old: put on ${putOn}. Put a new one on.`,
  positive: 'It reacted. Nothing goes on this client.',
  putOnNow: 'Put on now',
  earlier: 'It was put on earlier',
  mayBeRead: (when: string) => `May be read from ${when}.`,
  whenToRead: 'When to read it',
  keep: 'Keep it: she agrees',
  keepNow: 'It is on: she agrees it is kept',
  keepForVisit: 'This visit only',
  keepNowForVisit: 'It is on: for this visit only',
  /** Said before either is tapped: what a no means. */
  consent:
    'Ask her: may it be kept under her ticket? If not, it counts until this visit is closed, and next time a new one is put on. A reaction stops her either way.',
  consentByTicket:
    'Ask her: may it be kept under her ticket? If not, start her as a client and put it on there.',
  placeAndLine: (site: string, line: string) => `${site}, ${line}`,
  place: (method: string, site: string, line: string) =>
    line === '' ? `${method}, ${site.toLowerCase()}.` : `${method}, ${site.toLowerCase()}, ${line}.`,
  /** What the line in a step leads to. */
  open: { putOn: 'Put on or note', read: 'Read it', look: 'See it' },
  notHers: 'Not her test',
  notHersTitle: (ticket: string) => `Another client called ${ticket}?`,
  notHersLead: 'The test stays with the other client. This one has none then.',
  correct: 'Correct it',
  leaveIt: 'Leave it as it is',
  correctTitle: 'Skin test noted wrongly?',
  /** Beside the first steps, so that it is no surprise at the mix. */
  mixWaits: {
    missing: (when: string) => `No skin test: no mix. Put on now, it can be read from ${when}.`,
    waiting: (when: string) => `Skin test on: no mix before it is read, from ${when}.`,
    waitingHere: (here: string, there: string) =>
      `Skin test on: no mix before it is read, here from ${here}, at its own station from ${there}.`,
    toRead: 'The skin test is ready to be read.',
    lapsed: (when: string) => `Skin test too old: no mix. A new one can be read from ${when}.`,
  },
  nothingSeen: 'Nothing seen',
  reactionSeen: 'It reacted',
};

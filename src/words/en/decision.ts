import type { Decision } from '../../../shared/judgement/decisions';
import type { ZoneFinding } from '../../../shared/judgement/decisionTable';
import type { retractedForm } from '../../../shared/records/forms/course';
import type { FormWords } from '../formWords';
import { correctionWords } from './forms/correction';
import { general } from './general';
import { gradeWords } from './strandTest';

/** What can be decided, said to a colleague, and what it means for the hair. */
const decisions: Readonly<Record<Decision, { readonly name: string; readonly means: string }>> = {
  asPlanned: { name: 'As planned', means: 'The mix that was tested.' },
  gentler: { name: 'Gentler', means: 'Same line, developer one step down, or a shorter time.' },
  smallerLift: { name: 'Smaller lift', means: 'No stronger than 20 vol, and one step below the test.' },
  depositOnly: { name: 'Deposit only', means: 'A new plan: asked again, with its own strand.' },
  endsOut: { name: 'Ends out', means: 'Lengths only. Nothing goes on the ends.' },
  severalVisits: { name: 'Several visits', means: 'Not all today. Park her, and test again next time.' },
  cutFirst: { name: 'Cut first', means: 'Scorched ends are cut, never treated back. Then a new plan.' },
  testAgain: { name: 'Another strand', means: 'Back to the strand test. Nothing is decided yet.' },
  weSayNo: { name: 'We say no', means: 'No colour today. That is an answer too.' },
};

const findings: Readonly<Record<Exclude<ZoneFinding, 'notPlanned'>, string>> = {
  ...gradeWords,
  untested: 'no strand for this plan',
};

const headlines: Readonly<Record<Decision, { readonly lift: string; readonly colour: string }>> = {
  asPlanned: { lift: 'Go on as planned', colour: 'Go on as planned' },
  gentler: { lift: 'Go on, but gentler', colour: 'Go on, but gentler' },
  smallerLift: { lift: 'A smaller lift than she wants', colour: 'A smaller lift than she wants' },
  depositOnly: { lift: 'No lift, deposit only', colour: 'Deposit only' },
  endsOut: { lift: 'No lightener on these ends', colour: 'No colour on these ends' },
  severalVisits: { lift: 'Not in one visit', colour: 'Not in one visit' },
  cutFirst: { lift: 'Cut these ends first', colour: 'Cut these ends first' },
  testAgain: { lift: 'One more strand first', colour: 'One more strand first' },
  weSayNo: { lift: 'No lightener on this hair', colour: 'No colour on this hair' },
};

export const decision = {
  decisions,
  findings,
  retracted: {
    by: { ask: 'Who takes it back?' },
    ...correctionWords,
  } satisfies Pick<FormWords<typeof retractedForm>, 'code' | 'words'> & {
    readonly by: { readonly ask: string };
  },
  /** The suggestion as one would say it to her; of lightener where she wants to be lifted, else of colour. */
  headlines,
  titleOpen: 'What do we do with it?',
  otherChoices: 'Other choices',
  otherChoicesTitle: 'Decide otherwise',
  expect: (reached: string, target: string) => `Expect about ${reached}; a new strand to promise ${target}.`,
  /** The same of a mix gentler than the one that reached it. */
  expectLess: (reached: string, target: string) =>
    `Expect less than ${reached}; a new strand to promise ${target}.`,
  /** What this decision leaves of what was tested, before it is made. */
  limits: {
    most: (percent: string, vol: string, minutes: string, heat: string) =>
      `${percent} (${vol}), ${minutes}, ${heat}`,
    all: (most: readonly string[]) => `At most ${most.join('; ')}.`,
    ofZone: (zone: string, most: string) => `${most} (${zone})`,
    look: (minutes: string) => `Look every ${minutes}.`,
    fromTips: (length: string) => `Stays ${length} from the tips.`,
  },
  /** Where nothing of this plan may go on. */
  instead: 'Another line is another plan: it gets a strand of its own.',
  /** Why a strand that felt sound counts as rough. */
  weakened: 'stretchy or weak in the mix',
  strandNumber: (number: string) => `strand ${number}`,
  /** Of a strand that came off before its planned time: never to be taken for a full one. */
  findingShort: (finding: string, ofPlanned: string) => `${finding}, but short: ${ofPlanned}`,
  shortTime: { full: 'Short of its time: no full strand.', short: 'Short of its time.' },
  findingAfter: (finding: string, minutes: string) => `${finding} after ${minutes}`,
  sameMix: 'the same mix.',
  closedOn: (zone: string) => `Closed on the ${zone}, and anything as strong:`,
  titleDecided: (name: string) => `Decided: ${name}`,
  levelReached: (level: string, target: string) => `level ${level}, wanted ${target}`,
  stillMissing: (zone: string) => `Still missing: a strand from the ${zone}.`,
  suggests: 'Suggested',
  estimate: general.estimate,
  suspect: 'Suspect hair:',
  reasons: {
    stopped: 'A stop is still open.',
    oneStrandTooFew: 'Two strands of this mix, from two places.',
    wellShort: (levels: string) => `Well short of the level she wants, by ${levels}.`,
    short: (levels: string) => `Short of the level she wants, by ${levels}.`,
    uneven: 'The strand came out patchy or banded.',
    ironedHair: 'Suspect hair, more than one sign.',
    careful: 'Suspect hair: one sign, or something not known.',
  },
  /** After "cut first": how much, and what comes then. */
  cut: {
    howMuch: (length: string) => `Cut about ${length} from the tips: the ends.`,
    beyondTrim: 'Cut more than the ends: the hair before them failed too.',
    after: [
      'Cut today, or park her until then.',
      'Then tell her new length: a new plan.',
      'The new ends get a strand of their own.',
    ],
    otherwise: 'Decide otherwise',
    isCut: 'It is cut: tell the length',
    noMixUntil: 'No mix until a strand of the new plan has held.',
  },
  toDeposit: 'Change what she gets',
  decide: (name: string) => `Decide: ${name}`,
  careful: 'As careful, or more',
  freer: 'Further than suggested',
  freerHint: 'Signed with a name and a reason, for this service only.',
  freerTitle: (name: string) => `Further than suggested: ${name}`,
  freerLift: 'Sign and go on',
  /** What would be mixed, where no strand held for it. */
  notOpen: (names: readonly string[]) => `No strand allows: ${names.join(', ')}.`,
  retract: 'Wrong outcome?',
  recordedBy: (name: string, time: string) => `${name}, ${time}`,
  retractTitle: (zone: string) => `Wrong outcome: ${zone}`,
  retractDo: 'Sign and take it back',
  changePlan: 'Change the plan',
  wouldUntie: 'No mix yet. Decided like this, OK to mix.',
  minutesOnZone: (minutes: string, zone: string) => `${minutes} (${zone})`,
  /** The same where strands came off before their time: what they were proven for is a limit. */
  wouldUntieFor: (each: readonly string[]) => `Decided like this, OK to mix, proven for ${each.join(', ')}.`,
  wouldUntieNothing: 'No mix: on for less than a minute, it is proven for no time on the head.',
  wouldStayTied: 'Decided like this, nothing is mixed.',
  closeNo: 'Close: we said no',
  park: 'Park her until then',
};

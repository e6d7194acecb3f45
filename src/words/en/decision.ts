import type { Decision } from '../../../shared/judgement/decisions';
import type { ZoneFinding } from '../../../shared/judgement/decisionTable';
import type { retractedForm } from '../../../shared/records/forms/course';
import type { FormWords } from '../formWords';
import { correctionWords } from './forms/correction';
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

export const decision = {
  decisions,
  findings,
  retracted: {
    by: { ask: 'Who takes it back?' },
    ...correctionWords,
  } satisfies Pick<FormWords<typeof retractedForm>, 'code' | 'words'> & {
    readonly by: { readonly ask: string };
  },
  titleOpen: 'What do we do with it?',
  titleDecided: (name: string) => `Decided: ${name}`,
  found: 'What the strands said',
  strandName: (number: string, zone: string) => `Strand ${number} · ${zone}`,
  noStrand: (zone: string) => `No strand · ${zone}`,
  levelReached: (level: string, target: string) => `level ${level}, wanted ${target}`,
  brokeIn: (zone: string) => `The ${zone} broke in this mix.`,
  gummyIn: (zone: string) => `The ${zone} went gummy in this mix.`,
  stillMissing: (zone: string) => `Still missing: a strand from the ${zone}.`,
  suggests: 'Suggested',
  why: 'Why',
  estimate: 'An estimate from the strand and what was told. It never overrules the strand.',
  reasons: {
    stopped: 'A stop is still open.',
    oneStrandTooFew: 'More than one sign of damage asks for a second strand.',
    wellShort: (levels: string) => `Well short of the level she wants, by ${levels}.`,
    short: (levels: string) => `Short of the level she wants, by ${levels}.`,
    uneven: 'The strand came out patchy or banded.',
    ironedHair: 'More than one sign of damage.',
    careful: 'One sign of damage.',
  },
  decide: (name: string) => `Decide: ${name}`,
  insteadOf: 'Chosen instead',
  lessFree: 'More careful',
  freer: 'Further than suggested',
  freerHint: 'Signed with a name and a reason, for this service only.',
  freerTitle: (name: string) => `Further than suggested: ${name}`,
  freerLift: 'Sign and go on',
  notOpen: 'The grey ones: no strand allows them.',
  freerMore: 'Further than suggested …',
  retract: 'Wrong outcome?',
  recordedBy: (name: string, time: string) => `${name}, ${time}`,
  retractTitle: (zone: string) => `Wrong outcome: ${zone}`,
  retractDo: 'Sign and take it back',
  changePlan: 'Change the plan',
  noMixYet: 'No mix yet.',
  wouldUntie: 'Decided like this: OK to mix.',
  wouldStayTied: 'Decided like this, nothing is mixed.',
  closeNo: 'Close: we said no',
  park: 'Park her until then',
};

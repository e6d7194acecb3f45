import type { Decision, MixingDecision } from '../../../shared/judgement/decisions';
import type { PermitRefusal } from '../../../shared/judgement/permitRefusal';
import type { WayStep } from '../../../shared/records/steps';

const steps: Readonly<Record<WayStep, string>> = {
  client: 'Client',
  hotTools: 'Hot tools',
  feelHair: 'Feel the hair',
  heatSpray: 'Heat spray',
  strandTest: 'Strand test',
  decision: 'Decision',
  mix: 'Mix',
  colourOn: 'Colour on',
  finish: 'Finish',
};

/** Why the knot is still tied, as short as the rail is narrow. */
const tiedBy: Readonly<
  Record<PermitRefusal['code'] | Exclude<Decision, MixingDecision> | 'bowlTooOld', string>
> = {
  bowlTooOld: 'throw the bowl away',
  stopped: 'stopped',
  forAJudgement: 'a stop to judge',
  closed: 'it is over',
  parked: 'parked',
  reaction: 'reaction',
  stepUnsaid: 'ask first',
  incompatibilityOpen: 'glass test first',
  skinTestMissing: 'skin test first',
  skinTestWaiting: 'skin test to read',
  skinTestLapsed: 'skin test again',
  zoneNotPlanned: 'choose what to colour',
  noOutcome: 'record the outcome',
  outcomeOfAnotherPlan: 'plan changed, test again',
  outcomeLapsed: 'outcome too old',
  anotherDay: 'ask her anew today',
  carriedOff: 'a strand each time',
  carriedTooOld: 'last strand too old',
  carriedNotToday: 'wet stretch today',
  carriedLifts: 'a strand for lift',
  strandTooShort: 'that strand was too short',
  strandFailed: 'strand failed',
  mixClosed: 'this mix is closed',
  strandUsed: 'a new strand first',
  hairBroke: 'hair broke today',
  hairStretchy: 'rinse, then feel it',
  notDecided: 'decide',
  depositOnly: 'change the plan',
  severalVisits: 'another visit',
  cutFirst: 'cut first',
  testAgain: 'another strand',
  weSayNo: 'we say no',
  freerThanSuggested: 'decide anew',
  endsLeftOut: 'ends stay out',
  notRinsed: 'rinse first',
  stretchUnfelt: 'feel it wet first',
  stretchFails: 'hair too weak today',
  stretchDried: 'feel it wet again',
};

export const rail = {
  name: 'The way through',
  steps,
  states: { done: 'done', here: 'here now', toCome: 'to come' },
  tiedBy,
  noMixYet: (why: string) => `No mix yet: ${why}`,
  /** Where her colour is done, and a mix was. */
  noMoreMix: (why: string) => `No more mix: ${why}`,
  noTonerYet: (why: string) => `No toner: ${why}`,
  noMix: 'No mix yet',
  okToMix: 'OK to mix',
};

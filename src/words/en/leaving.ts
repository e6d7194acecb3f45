import type { correctedForm, endedForm, parkedForm } from '../../../shared/records/forms/course';
import type { Correctable } from '../../../shared/records/steps';
import type { FormWords } from '../formWords';
import { correctionWords } from './forms/correction';
import { rail } from './rail';

/** The ways out of a consultation that are not its end. */
export type LeavingKind = 'WE_SAID_NO' | 'CLIENT_SAID_NO' | 'CALLED_OFF';

/** What a correction takes away with it. */
export type Voided = 'strands' | 'decision' | 'bowl';

const kinds: Readonly<Record<LeavingKind, string>> = {
  WE_SAID_NO: 'We said no',
  CLIENT_SAID_NO: 'She said no',
  CALLED_OFF: 'Called off',
};

const endedWords: FormWords<typeof endedForm> = {
  reason: {
    ask: 'Why does it end?',
    options: {
      hairTooWeak: 'Hair too weak',
      notSafeToday: 'Not safe today',
      changedHerMind: 'Changed her mind',
      noTime: 'No time',
      startedByMistake: 'Started by mistake',
      other: 'Another reason',
    },
  },
};

const parkedWords: FormWords<typeof parkedForm> = {
  untilAtMs: { ask: 'When is she back?' },
};

const correctables: Readonly<Record<Correctable, string>> = {
  client: rail.steps.client,
  hotTools: rail.steps.hotTools,
  feelHair: rail.steps.feelHair,
  heatSpray: rail.steps.heatSpray,
  skinTest: 'Skin test',
  incompatibility: 'Glass test',
  inherited: 'The earlier record',
};

/** What the station itself adds is asked nowhere. */
const correctedWords: FormWords<Omit<typeof correctedForm, 'speaksFor'>> = {
  answer: { ask: 'Which answer was wrong?', options: correctables },
  ...correctionWords,
};

/** Ending, parking, going back, and being stopped. */
export const leaving = {
  kinds,
  endedForm: endedWords,
  parkedForm: parkedWords,
  correctedForm: correctedWords,
  correctables,
  byMistake: 'Started by mistake',
  byMistakeLead: 'Nothing was done yet. Her chair is free again; the record stays, as called off.',
  closeRecord: 'Close this record',
  end: 'End without colour',
  holdToEnd: (kind: string) => `End: ${kind}`,
  rinseFirst: 'Something is on the head. Rinse first.',
  notFromHere: 'She can be parked once nothing runs, no bowl stands weighed and no reaction is open.',
  park: 'Park between visits',
  parkNow: 'Park',
  goBack: 'Go back to',
  goBackSomewhere: 'Go back to an earlier step',
  allWays: 'Everything else for her',
  goingBack: {
    title: (step: string) => `Back to ${step}?`,
    strand: (number: string) => `Strand ${number}`,
    decisionFalls: 'The decision falls. It is taken anew, past the strand test.',
    stay: (strands: readonly string[]) => `${strands.join(', ')} ${strands.length === 1 ? 'stays' : 'stay'}.`,
    untilChanged:
      'Change an answer behind it and it counts no more. Put the answer back and it counts again.',
    stayHere: 'Stay here',
    go: (step: string) => `Back to ${step}`,
    changeTitle: 'Change this answer?',
    fall: (strands: readonly string[]) =>
      `${strands.join(', ')} ${strands.length === 1 ? 'counts' : 'count'} no more, and the decision falls.`,
    putBack: 'Put the answer back and they count again.',
    leaveIt: 'Leave it as it was',
    change: 'Change it',
  },
  goBackHint: 'The decision is taken back, and you go through the strand test again.',
  whoNow: (name: string) => `At the station: ${name}`,
  changeWho: 'Somebody else',
  stoppedTitle: 'Stopped',
  stoppedLead: 'Nothing goes on this client.',
  strandOff: (name: string) => `${name} is off. Record what it said.`,
  recordOutcome: (zone: string) => `Record the outcome: ${zone}`,
  clears: 'What clears it:',
  correct: 'A wrong answer?',
  correctLead: (name: string) =>
    name === ''
      ? 'You sign for it: it is taken back, and asked again.'
      : `Signed as ${name}: it is taken back, and asked again.`,
  askedAgain: (answer: string) => `Asked again: ${answer}.`,
  thenAt: (step: string) => `She goes back to “${step}”.`,
  stillStopped: 'She stays stopped: another answer holds her as well.',
  voided: {
    strands: 'what the strands said',
    decision: 'what was decided',
    bowl: 'the bowl that stands weighed',
  } satisfies Readonly<Record<Voided, string>>,
  voids: (what: readonly string[]) => `Counts no more: ${what.join(', ')}.`,
  voidsNothing: 'Nothing that was tested is lost.',
  holdToCorrect: 'Correct it',
  parkedTitle: 'Parked',
  backAt: (when: string) => `Back ${when}.`,
  isOverdue: (when: string) => `Was to be back ${when}.`,
  resume: 'She is back',
  parkedFacts: {
    wants: 'She wants',
    level: (level: string) => `level ${level}`,
    goesOnWith: 'Goes on with',
    strands: 'Strands',
    noStrand: 'None is tested yet.',
    stillToRecord: 'outcome still to record',
    countsUntil: (when: string) => `counts until ${when}`,
    countedUntil: (when: string) => `counted until ${when}: a new strand`,
    closed: 'this mix stays closed',
  },
  askedAnew: 'On another day reactions, scalp and age are asked again.',
};

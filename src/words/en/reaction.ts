import type { careForm, noReactionForm, reactionForm } from '../../../shared/records/forms/course';
import type { FormWords } from '../formWords';
import { figures } from './figures';

const signs: FormWords<typeof reactionForm>['signs'] = {
  ask: 'What is felt or seen?',
  options: {
    unclear: 'Not clear yet',
    stinging: 'Stinging',
    burning: 'Burning',
    blisters: 'Blisters',
    swelling: 'Swelling',
    hives: 'Hives',
    breath: 'Throat or breath',
    faint: 'Faint',
    eyes: 'In the eyes',
  },
};

const care: FormWords<typeof careForm>['care'] = {
  ask: 'What was done?',
  options: {
    rinsed: 'Rinsed',
    rinsedAndDoctor: 'Rinsed, sent to a doctor',
    emergencyCalled: 'Emergency number called',
    callRefused: 'She refused the call',
  },
};

const stillOn: FormWords<typeof noReactionForm>['stillOn'] = {
  ask: 'Is the colour still on?',
  options: { no: 'Rinsed out', yes: 'Still on' },
};

const none: FormWords<typeof noReactionForm>['why'] = {
  ask: 'What was it?',
  options: {
    notSaid: 'Nobody said',
    lookedNothingSeen: 'Looked: nothing seen, nothing felt',
    onlyCool: 'Only wet or cool',
    wrongTap: 'A wrong tap',
  },
};

/**
 * 112 is the emergency number of the European Union (from memory: Directive (EU) 2018/1972, article 109) and is taken by
 * mobile phones elsewhere (from memory: 3GPP TS 22.101); beside it whatever number holds here.
 */
export const reaction = {
  signs,
  none,
  stillOn,
  stillOnHint: 'Still on: its clock goes on from when it was begun.',
  care,
  title: 'Burning or reaction',
  titleRecorded: 'Reaction recorded',
  emergencyAsk: 'Throat, breath, faint?',
  emergency: 'First call 112 or your local emergency number. Then rinse.',
  emergencyTold: 'Throat, breath or faint:',
  emergencyNow: 'call 112 or your local emergency number now.',
  steps: [
    'Cool running water now.',
    'No neutraliser, no cream on it.',
    'Eyes: lenses out, rinse on. A doctor.',
    'Blisters: a doctor. Burns can show late.',
    'Hives or wheeze with lightener: never again.',
  ],
  told: 'Since it was told:',
  rinseGoal: `Water: a burn ${figures.burnRinse}, eyes ${figures.eyesRinseFrom} to ${figures.eyesRinseTo}.`,
  onFor: (zone: string) => `${zone}, on for`,
  nothingOn: 'Nothing is on the head.',
  rinsed: (zone: string) => `Water runs: ${zone}`,
  rinsedAll: 'Water runs: all',
  waterRuns: (zone: string) => `${zone}, water for`,
  waterEnough: (zone: string) => `${zone}, rinsed long enough:`,
  waterGoal: `${figures.burnRinse} of cool water`,
  waterShort: (zone: string, runs: string) =>
    `Water has run over the ${zone} for ${runs} of ${figures.burnRinse}. Rinse on, here or where she goes.`,
  record: 'Record it',
  whatIsSeen: 'What is seen?',
  moreSigns: 'More signs',
  addSigns: 'Add these signs',
  toRinse: 'Back to the rinse',
  toCare: 'What was done?',
  notAReaction: 'It was none',
  recorded: 'Recorded. Nothing goes on this client any more.',
  rinseFirst: 'Rinse first. Then say what was done.',
  /** What she remembers, or what shows, only now. */
  tells: { open: 'She tells of a reaction …', title: 'She tells of it now: hold what it is' },
  /** Told, and not done yet. */
  tooLittle: {
    emergency: 'Throat, breath or faint was told: call 112 or your local emergency number now.',
    doctor: 'Blisters, swelling, hives or eyes: a doctor has to look.',
  },
  giveCare: 'Save and close',
  giveCareAnyway: 'Close, and rinse on',
};

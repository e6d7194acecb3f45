import type { careForm, reactionForm } from '../../../shared/records/forms/course';
import type { FormWords } from '../formWords';

const signs: FormWords<typeof reactionForm>['signs'] = {
  ask: 'What is felt or seen?',
  options: {
    unclear: 'Not clear yet',
    stinging: 'Stinging',
    burning: 'Burning',
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
  },
};

export const reaction = {
  signs,
  care,
  title: 'Burning or reaction',
  emergency: 'Throat, breath, faint: the emergency number first. Then rinse.',
  steps: [
    'Cool running water now. A burn: 20 min.',
    'No neutraliser, no cream on it.',
    'Eyes: rinse 15 to 20 min, lenses out. A doctor.',
    'Blisters: a doctor. Burns can show late.',
    'Hives or wheeze with lightener: never again.',
  ],
  onFor: (zone: string) => `${zone}, on for`,
  nothingOn: 'Nothing is on the head.',
  rinsed: (zone: string) => `Rinsed: ${zone}`,
  record: 'Record the signs',
  notAReaction: 'Not a reaction',
  recorded: 'Recorded. Nothing goes on this client any more.',
  rinseFirst: 'Rinse first. Then say what was done.',
  giveCare: 'Close with this',
};

import type { openedForm } from '../../../shared/records/forms/course';
import type { FormWords } from '../formWords';

const form: FormWords<typeof openedForm> = {
  ticket: { ask: 'Initials or ticket', hint: 'No full name. The same client, the same ticket.' },
  chair: { ask: 'Chair' },
};

export const start = {
  title: 'Start a client',
  form,
  go: 'Start',
  noFreeChair: 'Every place at the bar is taken. She can wait in the list beside “Parked”.',
};

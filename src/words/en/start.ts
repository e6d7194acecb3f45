import type { openedForm } from '../../../shared/records/forms/course';
import type { FormWords } from '../formWords';

const form: FormWords<Omit<typeof openedForm, 'lastTimeId'>> = {
  ticket: {
    ask: 'Initials, ticket or your own code',
    hint: 'The same each time. No full name, birth date or phone.',
  },
  chair: { ask: 'Chair' },
  stylist: { ask: 'Who does her hair?', hint: 'Nobody named: whoever starts her.' },
};

export const start = {
  title: 'Start a client',
  form,
  go: 'Start',
  /** Only heard, before whose chair it is. */
  takenBy: 'taken by',
  does: 'Does her hair:',
  otherStylist: 'Another stylist',
  chooseChair: (chairs: string) => (chairs === '1' ? 'Choose chair 1.' : `Choose a chair, 1 to ${chairs}.`),
  noSuchChair: (chairs: string) =>
    chairs === '1'
      ? 'There is only chair 1 here.'
      : `The chairs here are 1 to ${chairs}. Choose one of them.`,
  taken: (ticket: string, chair: string) => `${ticket} sits at chair ${chair}. Choose a free chair.`,
  noFreeChair: 'Every chair is taken. One of them has to be finished or parked first.',
  isOpenAt: (chair: string) => `This ticket is open at chair ${chair}.`,
  isParked: (when: string) => `This ticket is parked, back ${when}.`,
  sameTicket: 'The same client? Go there. Another? Give her a ticket of her own.',
  sameAs: (when: string) => `Same client as on ${when}?`,
  /** Earlier clients whose ticket begins with what is typed. */
  earlier: (count: string, typed: string) =>
    count === '1'
      ? `1 earlier client begins with “${typed}”`
      : `${count} earlier clients begin with “${typed}”`,
  earlierTitle: 'Who is back?',
  earlierLead: 'Newest first',
  earlierAt: (chair: string) => `chair ${chair}`,
  earlierPage: (page: string, pages: string) => `Page ${page} of ${pages}`,
  earlierUnread: 'her record cannot be read here',
  goSame: 'Start, same client',
  goOther: 'Somebody else',
  goThere: 'Go there',
  goAnyway: 'Start anyway',
};

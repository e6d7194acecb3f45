import type { openedForm } from '../../../shared/records/forms/course';
import type { FormWords } from '../formWords';

const form: FormWords<Omit<typeof openedForm, 'lastTimeId'>> = {
  ticket: {
    ask: 'Iniciales, ficha o un código suyo',
    hint: 'Siempre el mismo. Sin nombre completo, fecha de nacimiento ni teléfono.',
  },
  chair: { ask: 'Silla' },
  stylist: { ask: '¿Quién la atiende?', hint: 'Si no se nombra a nadie: quien la empieza.' },
};

export const start = {
  title: 'Empezar una clienta',
  form,
  go: 'Empezar',
  /** Only heard, before whose chair it is. */
  takenBy: 'ocupada por',
  does: 'La atiende:',
  otherStylist: 'Otra persona',
  chooseChair: (chairs: string) => (chairs === '1' ? 'Elija la silla 1.' : `Elija una silla, 1 a ${chairs}.`),
  noSuchChair: (chairs: string) =>
    chairs === '1' ? 'Aquí solo hay la silla 1.' : `Aquí las sillas son 1 a ${chairs}. Elija una.`,
  taken: (ticket: string, chair: string) => `${ticket} está en la silla ${chair}. Elija una silla libre.`,
  noFreeChair: 'No hay silla libre. Antes hay que terminar a una o ponerla en espera.',
  isOpenAt: (chair: string) => `Esta ficha está abierta en la silla ${chair}.`,
  isParked: (when: string) => `Esta ficha está en espera; vuelve: ${when}.`,
  sameTicket: '¿La misma clienta? Vaya allí. ¿Otra? Dele una ficha propia.',
  sameAs: (when: string) => `¿La misma clienta del ${when}?`,
  /** Earlier clients whose ticket begins with what is typed. */
  earlier: (count: string, typed: string) =>
    count === '1'
      ? `1 clienta anterior empieza con “${typed}”`
      : `${count} clientas anteriores empiezan con “${typed}”`,
  earlierTitle: '¿Quién vuelve?',
  earlierLead: 'Recientes primero',
  earlierAt: (chair: string) => `silla ${chair}`,
  earlierPage: (page: string, pages: string) => `Página ${page} de ${pages}`,
  earlierUnread: 'su registro no se puede leer aquí',
  goSame: 'Empezar, misma clienta',
  goOther: 'Es otra',
  goThere: 'Ir allí',
  goAnyway: 'Empezar aun así',
};

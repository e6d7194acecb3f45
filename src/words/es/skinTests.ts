import type { SkinTestStatus } from '../../../shared/judgement/skinTest';
import type { skinTestForms } from '../../../shared/records/forms/skinTest';
import type { AskWords, FormWords } from '../formWords';
import { correctionWords } from './forms/correction';

const status: Readonly<Record<SkinTestStatus | 'missing' | 'notNeeded', string>> = {
  missing: 'Aún no hay',
  notNeeded: 'No se pide',
  due: 'Leer ya',
  waiting: 'Espere',
  lapsedUnread: 'Nunca leída',
  lapsed: 'Vencida',
  reaction: 'Reaccionó',
  clear: 'Nada visible',
};

const takenBackForm: FormWords<(typeof skinTestForms)['SKIN_TEST_TAKEN_BACK']> & { readonly by: AskWords } = {
  by: { ask: '¿Quién lo dice?', short: 'Quién' },
  what: {
    ask: '¿Qué estaba mal?',
    short: 'Estaba mal',
    options: { reading: 'La lectura: se lee otra vez', test: 'Toda la prueba' },
  },
  code: {
    ask: correctionWords.code.ask,
    short: 'Por qué',
    options: { ...correctionWords.code.options, cameOff: 'Se cayó, o nadie la leerá' },
  },
  words: { ...correctionWords.words, short: 'En palabras' },
};

/** The skin tests by ticket, without any consultation. */
export const skinTests = {
  title: 'Pruebas de piel',
  lead: 'Primero las que hay que leer',
  way: (count: string) => `Pruebas de piel ${count}`,
  wayDue: (count: string, due: string) => `Pruebas de piel ${count} · ${due} por leer`,
  none: 'No hay prueba de piel puesta.',
  noneHint: 'Ponga una, y queda aquí hasta que se lea. No necesita silla.',
  page: (page: string, pages: string) => `Página ${page} de ${pages}`,
  putOnOne: 'Poner una',
  putOnTitle: 'Poner una prueba de piel',
  onSince: (when: string) => `puesta: ${when}`,
  status,
  from: (when: string) => `desde: ${when}`,
  /** It was put on at another station, and waits here since it came in. */
  hereFrom: (when: string) => `aquí desde: ${when}`,
  since: (when: string) => `desde: ${when}`,
  counts: (when: string) => `cuenta hasta: ${when}`,
  seenAt: (when: string) => `vista: ${when}`,
  lapsedAt: (when: string) => `vencida desde: ${when}`,
  putOn: 'Puesta',
  wait: 'Su espera',
  how: 'Cómo',
  read: 'Leída',
  record: 'Su registro',
  readingTakenBack: 'Lectura retirada',
  notedBy: (when: string, by: string) => `${when}, anotada por ${by}`,
  takenBackBy: (when: string, by: string, why: string) => `${when}, por ${by}: ${why}`,
  notedUnder: 'Anotada',
  underTicket: (by: string, ticket: string) => `por ${by}, en “${ticket}”`,
  here: 'Aquí ahora',
  makers:
    'Método, lugar, tiempo y qué cuenta son del fabricante. También cada cuánto: repetirla puede por sí sola sensibilizar.',
  /** Which product it is of; empty where nobody noted it. */
  covers: (line: string) =>
    `${line === '' ? 'Nadie anotó de qué producto es' : `Es solo de ${line}`}. Con decolorante decide el fabricante.`,
  takeBack: 'Retirarla',
  takeBackTitle: '¿Retirarla?',
  takeBackLead: 'Queda en el registro. Se avisa a cada consulta abierta de esta ficha.',
  holdToTakeBack: 'Retirarla',
  takenBackForm,
};

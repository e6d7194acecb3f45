import type { EraseCode } from '../../../shared/records/tombstone';
import type { AskWords } from '../formWords';
import { sayCount } from './sayCount';

const codes: Readonly<Record<EraseCode, string>> = {
  sheAsked: 'Ella lo pidió',
  keptLongEnough: 'Ya se cumplió el plazo',
  wrongClient: 'Era de otra clienta',
};

/** "2 registros cerrados y 1 prueba de piel", "1 prueba de piel". */
const sayThings = (records: string, tests: string): string =>
  [
    ...(records === '0' ? [] : [sayCount(records, 'registro cerrado', 'registros cerrados')]),
    ...(tests === '0' ? [] : [sayCount(tests, 'prueba de piel', 'pruebas de piel')]),
  ].join(' y ');

/** What is kept of clients who have left, for how long, and the erasing of it. */
export const kept = {
  title: 'Registros guardados',
  kicker: 'Lo que esta tableta guarda de clientas que ya se fueron',
  things: sayThings,
  none: 'Aún no se guarda nada.',
  since: (date: string) => `El más antiguo es del ${date}.`,
  forMonths: (months: string) =>
    `Se guarda ${sayCount(months, 'mes', 'meses')}: un registro desde que se cerró, una prueba de piel desde su última entrada.`,
  noEnd: 'Se guarda sin plazo: alguien lo eligió en Ajustes.',
  thenAsked: 'Después quedan aquí, y alguien los borra.',
  thenByItself: 'Después se borran solos.',
  why: 'Por qué se guardan: lo que la detuvo y lo que aguantó su mechón cuentan cuando vuelve, y responden por usted si ella reclama.',
  law: 'La ley del lugar dice cuánto tiempo se deben y se pueden guardar. La dirección lo fija en Ajustes.',
  whatStays: 'Qué queda de lo borrado',
  stays: [
    'Que se borró: cuándo, quién y por qué. Sin ficha ni iniciales. Así ninguna copia de seguridad lo trae de vuelta.',
    'No queda en ninguna cuenta. El cierre del día cuenta los registros que hay; esta estación no aprende nada que les sobreviva.',
    'A un archivo, una tarjeta impresa o una copia que salió de esta tableta no se llega desde aquí. Bórrelo donde esté.',
    'Lo que se apartó porque nadie podía leerlo sigue apartado: nadie sabe de quién es.',
    'La memoria de la tableta puede guardar rastros un tiempo, como con cualquier archivo borrado.',
  ],
  pastTitle: 'Con el plazo cumplido',
  nothingPast: 'Ninguno ha cumplido su plazo.',
  notWithoutEnd: 'Ninguno, donde no hay plazo.',
  stopsLeft: (count: string) => `Con un alto vigente, ${count}: se borra solo por ficha.`,
  openLeft: (count: string) => `De una clienta abierta, ${count}: no mientras esté aquí.`,
  lookAt: (count: string) => `Verlos · ${count}`,
  unfinished: 'Borrado y ya no se muestra; pero aún no en todas las copias. ¿Está llena la tableta?',
  finishIt: 'Terminar',
  erasedTitle: 'Borrado hasta hoy',
  nothingErased: 'Nada todavía.',
  erasedSo: (count: string, date: string, by: string, code: EraseCode) =>
    `${count} en total, lo último el ${date} por ${by}: ${codes[code].toLowerCase()}.`,
  justErased: 'Borrado.',
  byTicket: 'Borrar por ficha',
  way: 'Registros guardados',
  wayUnfinished: 'Registros guardados · falta terminar un borrado',
  wayPast: (count: string) => `Registros guardados · ${count} con plazo cumplido`,
  findTitle: '¿Qué clienta se borra?',
  nothingUnder: 'No hay nada guardado con esta ficha.',
  under: (things: string) => `Guardado con ella: ${things}.`,
  isOpen: 'Alguien con esta ficha está abierta o en espera. Ciérrela primero.',
  look: 'Verlos',
  pickTitle: (ticket: string) => `¿Qué se borra de ${ticket}?`,
  pickHint: 'Las mismas iniciales pueden ser dos clientas. Toque lo que no es de ella: queda.',
  pastPickHint: 'Ya cumplieron el plazo. Toque lo que debe quedar por ahora.',
  goes: 'se borra',
  staysHere: 'queda',
  record: (date: string, how: string) => `${date} · ${how}`,
  unreadable: 'ya no se puede leer',
  test: (date: string) => `Prueba de piel · ${date}`,
  testSeen: { notReadYet: 'sin leer', nothing: 'nada visible', reaction: 'reaccionó' },
  takenBack: 'retirada',
  ofOthers: (date: string, kind: string) => `${kind} de otra estación · ${date}`,
  otherKinds: { consultation: 'Registro', skinTest: 'Prueba' },
  notJudged: {
    newer: 'de una edición más nueva de la estación',
    notJudged: 'no pudo tocarse así',
  },
  stop: 'alto vigente',
  page: (page: string, pages: string) => `Página ${page} de ${pages}`,
  goOn: (count: string) => `Seguir · ${count}`,
  nothingPicked: 'Queda todo',
  eraseTitle: '¿Borrarlo?',
  form: {
    by: { ask: '¿Quién lo borra?', short: 'Quién' },
    code: { ask: '¿Por qué?', short: 'Por qué', options: codes },
  } satisfies { readonly by: AskWords; readonly code: AskWords & { readonly options: object } },
  goesNow: (things: string) =>
    `Se borra: ${things}, con todo lo contado, probado, pesado y visto. En las dos copias. No se puede deshacer.`,
  staysAfter: 'Queda: que se borró, cuándo, quién y por qué. Sin ficha.',
  laterReads: 'Una visita posterior queda, y en ella lo que se tomó de esta.',
  stopGoes:
    'También se borra un alto vigente. Después nada aquí avisa: dígale que lo diga ella en cada visita. Para conservarlo, vuelva y toque lo que lo contiene.',
  elsewhere: 'Archivos, tarjetas y copias que salieron de esta tableta: bórrelos donde estén.',
  hold: (count: string) => `Borrar ${count} para siempre`,
};

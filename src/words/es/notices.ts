import type { ReplayFault } from '../../../machines/consultation/replay';
import type { AsideReason, CopyName, LostWhy, UnreadReason, WriteFailureKind } from '../noticeKinds';
import { sayCount } from './sayCount';

const copies: Readonly<Record<CopyName, string>> = { journal: 'el diario', index: 'el índice' };

const asideReasons: Readonly<Record<AsideReason, string>> = {
  badLine: 'tiene una línea ilegible',
  gap: 'le falta una entrada',
  repeat: 'tiene una entrada repetida',
  contradiction: 'las dos copias se contradicen',
  tornTail: 'su última línea quedó cortada',
  refused: 'afirma lo que no pudo pasar',
  unknownVersion: 'lo escribió una edición más nueva',
};

const faults: Readonly<Record<ReplayFault['code'], string>> = {
  notAnEvent: 'no es una entrada de esta estación',
  newerVersion: 'la escribió una edición más nueva de la estación',
  unknownType: 'es de un tipo que aquí no se conoce',
  badPayload: 'sus respuestas no se pueden leer',
  badTokens: 'sus juicios no se pueden leer',
  bowlWithoutStrand: 'afirma una mezcla sin mechón',
  bowlWithoutOutcome: 'afirma una mezcla sin resultado',
  bowlWithoutDecision: 'afirma una mezcla sin decisión',
  bowlAfterFailedStrand: 'afirma una mezcla tras un mechón que falló',
  bowlOfAnotherLine: 'afirma una mezcla de otra línea que la probada',
  bowlTooStrong: 'afirma una mezcla más fuerte que la probada',
  bowlLiftsOnCarried: 'afirma aclarar con el mechón de otra visita',
  bowlOnOldStrand: 'afirma una mezcla con un mechón vencido',
  tonerWithoutStretch: 'afirma un matizador en cabello que nadie palpó',
  tonerWithoutRinse: 'afirma un matizador donde no se enjuagó',
  tonerOnWeakHair: 'afirma un matizador en cabello que no recuperó',
  tonerBeforeRinse: 'afirma un matizador en cabello palpado antes de enjuagar',
  tonerOfTestedLine: 'afirma un matizador de una línea en la que hubo un mechón',
  tonerTooStrong: 'afirma un matizador más fuerte o largo de lo permitido',
  wentBackInTime: 'es más antigua que la entrada anterior',
  saysOtherwise: 'su juicio no es lo que dicen sus respuestas',
  notNow: 'no pudo seguir a la entrada anterior',
  empty: 'no hay nada',
};

/** What the copy does not do, said of it. */
const failures: Readonly<Record<WriteFailureKind, string>> = {
  indexUnavailable: 'no responde',
  journalUnavailable: 'no responde',
  quotaExceeded: 'no tiene espacio, la tableta está llena',
  lockedElsewhere: 'lo tiene otra ventana',
  timedOut: 'no respondió a tiempo',
  notRestored: 'aún no se ha leído',
  wrongSeq: 'espera otra entrada',
  badName: 'no conoce un registro con ese nombre',
  notJson: 'no puede escribir esto',
};

const unread: Readonly<Record<UnreadReason, string>> = {
  badLine: 'tiene una línea ilegible y no se alcanza su otra copia',
  gap: 'le falta una entrada y no se alcanza su otra copia',
  repeat: 'tiene una entrada repetida y no se alcanza su otra copia',
  badName: 'su nombre no es de esta estación',
};

const lost: Readonly<Record<LostWhy, string>> = {
  unavailable: 'Este navegador no da cerrojos a esta página: esta ventana no puede ser la que escribe.',
  brokenOff: 'Otro programa tomó el lugar de la que escribe. Esta ventana ya no escribe.',
};

/** What the station has to tell about its own memory. */
export const notices = {
  title: 'Lo que la estación debe decir',
  count: (count: string) => sayCount(count, 'aviso', 'avisos'),
  read: 'Leer',
  dismiss: 'Ya lo leí',
  copies,
  settingsLog: 'los ajustes',
  monthLog: (month: string) => `los registros cerrados de ${month}`,
  skinTestLog: 'una prueba de piel',
  benchLog: 'un ensayo de banco',
  erasedLog: 'la lista de lo borrado',
  otherLog: 'algo que no es de esta estación',
  consultation: (whose: string) => `la consulta de ${whose}`,
  nobodyKnown: 'una clienta que no se puede nombrar',
  setAside: (log: string, copy: string, reason: AsideReason) =>
    `Apartado, no borrado: ${log} en ${copy}: ${asideReasons[reason]}. Mire allí si falta algo.`,
  refusedLog: (log: string, entry: string, fault: ReplayFault['code']) =>
    `No aceptado: ${log}, entrada ${entry}: ${faults[fault]}. Empiece esta clienta de nuevo, con prueba de mechón.`,
  refusedEntry: (log: string, entry: string) =>
    `No se puede leer: ${log}, entrada ${entry}. Se dejó donde está.`,
  wasMissing: (log: string, copy: string, entries: string) =>
    `Repuesto: ${log}; faltaba en ${copy}. Entradas de la otra copia: ${entries}. No hay que hacer nada.`,
  wasBehind: (log: string, copy: string, entries: string) =>
    `Al día: ${log}; atrasado en ${copy}. Entradas de la otra copia: ${entries}. No hay que hacer nada.`,
  wasDamaged: (log: string, copy: string, entries: string) =>
    `Reparado: ${log}; dañado en ${copy}. Entradas de la otra copia: ${entries}. No hay que hacer nada.`,
  tailCut: (log: string, copy: string) =>
    `Un apagón cortó la última línea: ${log} en ${copy}. Lo que quedó de ella se guarda aparte.`,
  lostTail: (log: string, entries: string) =>
    `Perdido: ${log}, las últimas entradas, en las dos copias, al menos ${entries}. Pregunte otra vez lo que falta.`,
  troubleAll: (copy: string, kind: WriteFailureKind) =>
    `No se puede escribir nada: ${copy} ${failures[kind]}.`,
  troubleLog: (log: string, copy: string, kind: WriteFailureKind) =>
    `Ahora no se puede agregar nada: ${log}; ${copy} ${failures[kind]}. Recargue la estación.`,
  unread: (log: string, copy: string, reason: UnreadReason) =>
    `Se dejó donde está: ${log} en ${copy}: ${unread[reason]}.`,
  notSaved: (log: string, kind: WriteFailureKind) =>
    `Sin guardar: ${log}; el almacén ${failures[kind]}. Toque otra vez.`,
  notSavedMaybe: (log: string, kind: WriteFailureKind) =>
    `Quizá sin guardar: ${log}; el almacén ${failures[kind]}. Vale lo que la pantalla muestra ahora.`,
  jumped: (when: string, ahead: string) =>
    `${when}: el reloj de la tableta saltó ${ahead} de golpe. La tableta durmió, o alguien adelantó su reloj.`,
  runsOn: 'Lo que está en una mezcla, un vaso o una cabeza cuenta todo ese tiempo.',
  testWaits: 'Una prueba de piel puesta espera ese tiempo de más, hasta que alguien diga cuál fue.',
  slept: 'Solo durmió',
  putAhead: 'Se adelantó',
  lostPlace: (why: LostWhy) => lost[why],
  notLearnt:
    'No se pudo calcular lo que enseñaron nuestros mechones. Se muestra lo supuesto. No hay que hacer nada.',
  leftOut: (count: string) =>
    `Omitido de lo que comparten las estaciones: ${count}. Aquí no cambió nada. Ajustes, Otras estaciones, dice qué y por qué.`,
};

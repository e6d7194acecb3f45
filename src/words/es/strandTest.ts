import type { RedFlag, Risk } from '../../../shared/judgement/risk';
import type { Grade } from '../../../shared/records/gradeOutcome';
import { figures } from './figures';
import { strandForms } from './forms/strand';
import { general } from './general';
import { lift } from './lift';
import { sayCount } from './sayCount';

const sayLevels = (by: string): string => sayCount(by, 'nivel', 'niveles');

const flags: Readonly<Record<RedFlag, string>> = {
  ironedWet: 'planchado mojado, o ella no sabe',
  scorched: 'humeó u olió a quemado',
  bleachedTwice: 'decolorado dos veces o más, o ella no sabe',
  curlLost: 'el rizo se perdió en las puntas',
  slowStretch: 'mojado, queda largo o se rompe',
  breakage: 'se rompe',
  veryHot: 'planchado tan caliente que la corteza se ablanda',
  notKnown: 'hay algo que no se sabe',
};

/** The same where only the first of many are named. */
const flagsShort: Readonly<Record<RedFlag, string>> = {
  ironedWet: 'planchado mojado',
  scorched: 'olió a quemado',
  bleachedTwice: 'decolorado dos veces',
  curlLost: 'sin rizo',
  slowStretch: 'no recupera',
  breakage: 'se rompe',
  veryHot: 'planchado muy caliente',
  notKnown: 'algo no se sabe',
};

/** What the strand has to go through, by what she wants. */
const kinds = {
  full: 'Mechón completo: todo el tiempo de la cabeza.',
  short: 'Mechón corto: solo deposita; basta el tiempo del producto.',
};

const care: Readonly<Record<Risk, string>> = {
  low: 'Nada de lo dicho o palpado lo hace sospechoso. Decide un mechón por zona.',
  raised: 'Revise cada 3 min.',
  high: 'Dos mechones, uno del peor lugar. Revise cada 3 min.',
};

/** A level that was just tapped, beside the last one seen and the one she wants. Never a refusal. */
const levelHeard = {
  darker: {
    look: (last: string) => `Más oscuro que en la última revisión (${last}). Queda como lo vio.`,
    start: (last: string) => `Más oscuro que antes de ponerlo (${last}). Queda como lo vio.`,
  },
  farLighter: {
    look: (last: string, by: string) =>
      `${sayLevels(by)} más claro que en la última revisión (${last}). Queda como lo vio.`,
    start: (last: string, by: string) =>
      `${sayLevels(by)} más claro que antes de ponerlo (${last}). Queda como lo vio.`,
  },
  belowWanted: (by: string, isMany: boolean, wanted: string) =>
    `${by} ${isMany ? 'niveles' : 'nivel'} bajo lo que desea (${wanted}), en esta mezcla.`,
};

/** A strand that came off before its time. Not "short strand": that is the kind for colour that only deposits. */
const shortTime = {
  ofPlanned: (on: string, planned: string) => `${on} de ${planned}`,
  short: (ofPlanned: string) => `Antes de su tiempo: ${ofPlanned}.`,
  /** It was taken off because it was light enough: nobody was in a hurry. */
  levelReached: (ofPlanned: string) => `Nivel alcanzado: ${ofPlanned}.`,
  noFullStrand: (minutes: string) => `No es mechón completo: probado solo ${minutes}.`,
  proves: (minutes: string) => `Probado solo ${minutes}.`,
  provesNothing: 'Puesto menos de un minuto: no prueba ningún tiempo en la cabeza.',
};

/** Fibre as it was graded: the worst of what was seen, felt and pulled. */
export const gradeWords: Readonly<Record<Grade, string>> = {
  sound: 'sano',
  rough: 'áspero',
  gummy: 'gomoso',
  broken: 'roto',
};

export const strandTest = {
  forms: strandForms,
  lift,
  flags,
  flagsShort,
  /** Signs of suspect hair beyond the first ones. */
  moreFlags: (count: string) => `y ${count} más`,
  allFlags: 'Qué lo hace sospechoso',
  care,
  kinds,
  levelHeard,
  shortTime,
  grades: gradeWords,
  preparing: {
    title: 'Corte y pruebe un mechón',
    strandsTested: (done: string, asked: string) => `${done} de ${asked} probados`,
    states: {
      none: 'aún sin probar',
      running: 'en la mezcla',
      takenOff: 'quitado, falta anotar el resultado',
      current: 'probado',
      stale: 'pruebe otra vez: el plan cambió o es muy viejo',
    },
    testedBy: (grade: string, level: string | null) => (level === null ? grade : `${grade}, nivel ${level}`),
    shortBy: (ofPlanned: string) => `antes de su tiempo: ${ofPlanned}`,
    estimate: general.estimate,
    test: (zoneName: string) => `Probar ${zoneName}`,
    another: (zone: string, place: string) => `Otro mechón de ${zone}, de ${place}: aún sin probar.`,
    testAgain: (zoneName: string) => `Probar otra vez ${zoneName}`,
    keep: 'Mantener lo probado',
    keepHint: 'Mismo plan, mismo cabello, reciente: sigue valiendo.',
    keepFailed: 'Mismo plan, y un mechón salió gomoso o roto: otra mezcla, o volver a la decisión.',
    stepsOpen: 'Falta preguntar algo. Vuelva a ello: “Más para ella”.',
    stops: 'Por juzgar primero',
    judge: 'Firmar y seguir',
    moreToJudge: (count: string) => `Y ${count} más por juzgar después.`,
    liftedBy: (name: string, time: string) => `Firmado por ${name}, ${time}`,
  },
  glass: {
    title: 'Primero un recorte en un vaso',
    why: 'Con peróxido, sales metálicas o un color desconocido pueden calentar, burbujear o romper el cabello.',
    how: `20 partes de peróxido al 6 % por 1 de amoníaco, ${figures.glass}. Primero vale el método del fabricante.`,
    start: `Empezar el vaso, ${figures.glass}`,
    readNothing: 'No pasó nada',
    readReacted: 'Reaccionó',
    reactedHint: 'Calor, burbujas, olor o cambio de color: a esta clienta no se le pone nada.',
    tooEarly: (left: string) =>
      `Muy pronto para decir “nada”: faltan ${left}. ¿Reaccionó? Entonces dígalo ya.`,
    clear: `Nada en el vaso. Guarde el recorte ${figures.cuttingHours} h: aún puede romperse mañana.`,
    late: 'El recorte reaccionó …',
    lateTitle: 'El recorte reacciona, o se rompió',
  },
  start: {
    title: (zoneName: string) => `Mechón de ${zoneName}`,
    sameMix: { strand: 'Mezcla del último mechón:', lastTime: 'Mezcla de la última vez:' },
    ready: 'Péselo, póngalo, empiece el reloj.',
    summary: 'La mezcla',
    anotherMix: 'Otra mezcla',
    weigh: (grams: string, stuff: 'colour' | 'lightener', developer: string) =>
      `Pese: ${grams} ${stuff === 'colour' ? 'color' : 'decolorante'}, ${developer} oxidante`,
    bottleAndBowl: (bottle: string, bowl: string) => `${bottle}, ${bowl} en el bol`,
    gramsOpen: 'Antes, oxidante y proporción.',
    begin: 'Puesto: empezar el reloj',
  },
  processing: {
    title: 'Mechón en la mezcla',
    snippedAt: (place: string) => `corte: ${place}`,
    lookOf: (zoneName: string) => `Revisar: ${zoneName}`,
    takeOff: (zoneName: string) => `Quitar: ${zoneName}`,
    takeOffNow: (zoneName: string) => `Quitar ya: ${zoneName}`,
    broke: (zoneName: string) => `Roto o papilla: ${zoneName}`,
    moreTime: 'Más tiempo',
    atMost: (minutes: string) => `${minutes} más como máximo, el límite del fabricante.`,
    another: 'Empezar otro mechón',
    levels: 'Niveles vistos',
    target: (level: string) => `deseado ${level}`,
    levelAfter: (level: string, minutes: string) => `nivel ${level} a los ${minutes}`,
    stretchy: 'Estaba elástico de más en una revisión. Quítelo ya. Cuenta como áspero en el mejor caso.',
    lastLook: (level: string, undertone: string, feel: string) =>
      `última revisión: ${[`nivel ${level}`, undertone, feel].filter((each) => each !== '').join(', ')}`,
    noLook: 'aún sin revisar',
    off: 'está quitado: anote su resultado',
    otherLevel: 'Otro nivel',
    levelIs: (level: string) => `Nivel ${level}`,
    extendTitle: 'Más tiempo en la mezcla',
    extend: 'Sumar los minutos',
    takeOffTitle: 'Quitado antes de tiempo: ¿por qué?',
    discard: 'Descartar mechón',
    discardTitle: 'Descartar el mechón',
    discardDo: 'Firmar y descartarlo',
    discardHint: 'Queda en el registro y no cuenta para nada. Hace falta un mechón nuevo.',
  },
  /** The skin test, as far as it bears on what is tested here. */
  skinTest: {
    missing: 'Sin prueba de piel: nada en la cabeza, ni con buen mechón.',
    lapsed: 'Prueba de piel vencida: nada en la cabeza, ni con buen mechón.',
    waiting: (readable: string) => `La prueba de piel se lee desde ${readable}: antes, nada en la cabeza.`,
    toRead: 'Toca leer la prueba de piel: antes, nada en la cabeza.',
  },
  /** A strand that broke in the mix: a stop for this mix on this hair. */
  broken: {
    row: (minutes: string) => `SE ROMPIÓ a los ${minutes}. Esta mezcla queda cerrada ahí. Anótelo.`,
    what: (zoneName: string, minutes: string) => `El mechón de ${zoneName} se rompió a los ${minutes}.`,
    closes: (zoneName: string) => `Cerrado en ${zoneName}, y todo lo que sea igual o más fuerte:`,
    keep: 'Queda anotado como roto, y nadie puede levantarlo. Guarde el mechón para mostrárselo.',
    record: 'Anotar: roto',
  },
  takenOff: {
    title: (name: string) => `Resultado: ${name}`,
    summary: 'Todo dicho',
    allSaid: 'Todo dicho. Anótelo, y cuenta.',
    /** Where looks or the pull showed worse than the fibre that was tapped. */
    countsAs: (grade: string) => `Todo dicho. Cuenta como ${grade}. Anótelo.`,
    signedAs: (name: string) => `Anotado por ${name}.`,
    record: 'Anotar el resultado',
    still: (count: string) => `${count} por anotar`,
  },
};

import type { MixtureRefusal } from '../../../shared/judgement/mixture';
import type { NewThing } from '../../../shared/judgement/news';
import type { PermitRefusal } from '../../../shared/judgement/permitRefusal';
import type { BackupRefusal } from '../../../shared/records/backupFile';
import type { ClassifyRefusal } from '../../../shared/records/conflict';
import type { FieldRefusal } from '../../../shared/records/readForm';
import type { Limits, RefusalWords } from '../en/refusals';
import { figures } from './figures';
import { recordDiffers, recordRefused, recordsNotSaved, recordsRefusals } from './records';

type CarryCode = Extract<ClassifyRefusal, { kind: 'carry' }>['carry']['code'];

const fields: Readonly<Record<FieldRefusal['code'], (limits: Limits) => string>> = {
  empty: ({ low, high }) => (low === '' ? 'Falta llenarlo.' : `Un número de ${low} a ${high}.`),
  notANumber: ({ low, high }) => `Eso no es un número. ${low} a ${high}, solo cifras.`,
  notFinite: ({ low, high }) => `Ese número nadie lo puede medir. ${low} a ${high}.`,
  minusZero: ({ low, high }) => `Menos cero no es un número aquí. ${low} a ${high}.`,
  inFuture: ({ low, high }) => `Eso está en el futuro. ${low} a ${high}, contando hacia atrás desde hoy.`,
  tooLow: ({ low, high }) => `Muy bajo. ${low} a ${high}.`,
  tooHigh: ({ low, high }) => `Muy alto. ${low} a ${high}.`,
  notOnStep: ({ low, high, step }) =>
    step === '1' ? `Solo números enteros. ${low} a ${high}.` : `En pasos de ${step}. ${low} a ${high}.`,
  notAnswered: () => 'Falta responder.',
  notAnOption: () => 'Esa no es una de las respuestas.',
  noneAndOthers: () => '“Ninguna” no va con otra respuesta.',
  malformed: () => 'Una línea de letras normales, por favor.',
  tooLong: ({ most }) => `Muy largo. Máximo ${most} letras.`,
  isBirthDate: () => 'Parece una fecha de nacimiento. Use iniciales, un número de tarjeta o una palabra.',
  isPhone: () => 'Parece un teléfono. Use iniciales, un número de tarjeta o una palabra.',
  tooMany: ({ most }) => `Máximo ${most}.`,
  tooFew: ({ most }) => `Al menos ${most}.`,
  notYet: () => 'Eso aún no llega. Elija una hora que ya pasó.',
  alreadyPast: () => 'Eso ya pasó. Elija una hora por venir.',
  timeNotUp: () => 'Su tiempo no ha terminado. Diga por qué se quita ya.',
  overLimit: () => 'Más que el límite del fabricante.',
  readTooEarly: () => 'Muy pronto para leer “nada visible”.',
  earlierThanNoted: () => 'Antes de lo anotado. Retire primero esa nota con su nombre.',
  tonerLifts: () => 'Eso aclara. Un matizador solo deposita: otra línea, por favor.',
  tonerNotOnShelf: () => 'No está en el estante como color. Agréguelo en Ajustes o elija otra línea.',
  tonerTested: () => 'Hoy hubo un mechón en esa línea, así que pide mechón. Elija otra línea.',
  anotherService: () => 'Eso aclara, y ella no lo pidió. Diga de nuevo qué quiere.',
  noStrandHeld: () => 'Ningún mechón habla por eso: es de la piel, o ninguno aguantó.',
  needsCorrection: () => 'Lo que la detuvo queda. Retírelo con su nombre y un motivo.',
  growsSo: () => 'Ningún cabello crece tan rápido, o tan lento. Revise cinta y fecha.',
  callFirst: () => 'Se dijo garganta, aire o desmayo: primero el número de emergencias.',
  notHomeYet: () => 'Aún no se va. Enjuague, y toque “Ardor o reacción”.',
  notToldYet: () => 'Aún no se le dijo. Dígaselo o llámela: la picazón puede venir días después.',
  notAsTested: () => 'No es lo probado. Use lo probado, o pruebe esto.',
  stepTooCoarse: () => 'Muy poco para esta báscula. Pese más.',
  moreThanABowl: () => 'Con su oxidante es más de lo que cabe en un bol. Pese menos: un bol por cada mechón.',
  bottlesDoNotMakeIt: () => 'Estas dos botellas no lo dan. Calcúlelas otra vez.',
  notTheParts: () => 'No son las partes pedidas. Péselo otra vez.',
  madeStronger: () => 'Más fuerte que lo pedido. Agregue de la botella suave, o péselo otra vez.',
  hasBadSigns: () => 'Se debilitó, se rompió o se anotó peor que sano. Anote su resultado.',
};

const unchanged = 'No se cambió nada.';

/** A file that is not brought in: nothing here was changed. */
const backup: Readonly<Record<BackupRefusal, RefusalWords>> = {
  notRead: {
    what: 'Ese archivo no se puede leer.',
    clears: `${unchanged} ¿Sigue allí? Elíjalo otra vez.`,
  },
  anotherProgram: {
    what: 'Esa no es una copia de esta estación.',
    clears: `${unchanged} Elija un archivo hecho con “Guardar la estación”.`,
  },
  invented: {
    what: 'Esa copia es de otra clase de salón: uno de los dos es el inventado.',
    clears: `${unchanged} Salga de la demostración, o entre en ella, y elija el archivo allí.`,
  },
  practice: {
    what: 'Algo en esa copia fue de práctica: no se atendió a nadie.',
    clears: `${unchanged} La práctica queda en la práctica.`,
  },
  fromLater: {
    what: 'Esa copia es de más de un día después del reloj de esta tableta.',
    clears: `${unchanged} Corrija fecha y hora de esta tableta y elíjala otra vez.`,
  },
  erasesOpen: {
    what: 'Esa copia borra algo de una clienta abierta aquí.',
    clears: `${unchanged} Ciérrela primero y elija la copia otra vez.`,
  },
  cutOff: {
    what: 'Esa copia termina antes de tiempo.',
    clears: `${unchanged} Guárdela o cópiela otra vez.`,
  },
  damaged: { what: 'Esa copia está dañada.', clears: `${unchanged} Guárdela o cópiela otra vez.` },
  newer: {
    what: 'Esa copia es de una edición más nueva de la estación.',
    clears: `${unchanged} Actualice antes esta tableta.`,
  },
};

const byJudgement = 'Lo juzga una persona, con su nombre y un motivo.';
const newStrand = 'Pruebe otro mechón.';
const aStrand = 'Pruebe un mechón.';
const tooOldCarried = `El mechón de la última vez tiene más de ${figures.carriedLapsesWeeks} semanas.`;
const eachTime: RefusalWords = {
  what: 'Los ajustes piden un mechón cada vez.',
  clears: 'Pruebe un mechón, o que la dirección lo active.',
};

const permit: Readonly<Record<PermitRefusal['code'], RefusalWords>> = {
  stopped: {
    what: 'Alto: a esta clienta no se le pone nada.',
    clears: 'Solo una corrección de la respuesta, con nombre.',
  },
  forAJudgement: { what: 'Hay un alto abierto.', clears: byJudgement },
  closed: { what: 'Esta consulta ya terminó.', clears: 'Empiece otra.' },
  parked: { what: 'Esta consulta está en espera.', clears: 'Retómela primero.' },
  reaction: { what: 'Se está viendo una reacción.', clears: 'Anótela, o diga “No lo fue”.' },
  stepUnsaid: { what: 'Falta preguntar algún paso.', clears: 'Vuelva y termine el paso abierto.' },
  incompatibilityOpen: {
    what: 'Antes, un recorte debe ir a un vaso con peróxido.',
    clears: `Empiece esa prueba y léala a los ${figures.glass}.`,
  },
  skinTestMissing: { what: 'No hay prueba de piel.', clears: 'Ponga una y léala a su hora.' },
  skinTestWaiting: { what: 'La prueba de piel no se ha leído.', clears: 'Léala cuando llegue su hora.' },
  skinTestLapsed: { what: 'La prueba de piel está vencida.', clears: 'Ponga una nueva.' },
  zoneNotPlanned: {
    what: 'Esta zona no está en el plan.',
    clears: 'Elija una zona del plan, o cámbielo.',
  },
  noOutcome: {
    what: 'Ningún mechón con resultado en esta zona.',
    clears: 'Pruebe un mechón y anote su resultado.',
  },
  outcomeOfAnotherPlan: { what: 'El mechón era para otro plan.', clears: newStrand },
  outcomeLapsed: {
    what: `El resultado tiene más de ${figures.outcomeLapsesDays} días.`,
    clears: newStrand,
  },
  carriedOff: eachTime,
  carriedTooOld: { what: tooOldCarried, clears: newStrand },
  carriedNotToday: {
    what: 'Falta el estirado mojado de hoy.',
    clears: 'Estire hoy un mechón mojado y diga cómo vuelve.',
  },
  carriedLifts: { what: 'Nada que aclare se apoya en el mechón de la última vez.', clears: aStrand },
  strandTooShort: {
    what: 'Ese mechón estuvo menos de un minuto: no prueba ningún tiempo en la cabeza.',
    clears: 'Pruebe otro mechón, el tiempo que pide el plan.',
  },
  strandFailed: { what: 'El mechón quedó gomoso o se rompió.', clears: 'Otro plan, con otro mechón.' },
  mixClosed: {
    what: 'Un mechón quedó gomoso o se rompió en esta mezcla o en una más suave.',
    clears: 'Una mezcla más suave, con otro mechón.',
  },
  notRinsed: { what: 'Un matizador va después de enjuagar.', clears: 'Enjuague primero este cabello.' },
  stretchUnfelt: {
    what: 'Nadie palpó este cabello desde el enjuague.',
    clears: 'Pálpelo mojado: estire suave y suelte.',
  },
  stretchFails: {
    what: 'No recupera: hoy ni matizador ni segunda ronda.',
    clears: 'Déjelo. Otra visita, con otro mechón. ¿Se palpó mal? Con su nombre y el motivo.',
  },
  stretchDried: {
    what: 'Se palpó hace demasiado.',
    clears: 'Pálpelo otra vez, mojado: estire suave y suelte.',
  },
  hairBroke: {
    what: 'Hoy se rompió cabello en esta cabeza.',
    clears: 'Enjuague lo puesto. Hoy no va ningún otro bol; otra visita empieza con otro mechón.',
  },
  hairStretchy: {
    what: 'Cabello elástico de más en esta cabeza.',
    clears: 'Enjuague y pálpelo mojado: si recupera, puede ir el próximo bol.',
  },
  strandUsed: { what: 'Ese mechón era para un bol.', clears: 'Una segunda ronda pide otro mechón.' },
  notDecided: { what: 'No se ha decidido nada.', clears: 'Decida primero.' },
  freerThanSuggested: { what: 'Más libre de lo que sugiere la tabla.', clears: byJudgement },
  anotherDay: {
    what: 'Reacciones, cuero cabelludo y edad se dijeron otro día.',
    clears: 'Vuelva a Clienta y pregúntelos de nuevo.',
  },
  endsLeftOut: { what: 'Las puntas quedan fuera.', clears: 'Decida otra cosa, si el mechón lo permite.' },
};

/** Why last time's outcome does not count today; `new` is said with what is new. */
const carry: Readonly<Record<CarryCode, RefusalWords>> = {
  off: eachTime,
  notSameClient: { what: 'Nadie dijo que es la misma clienta.', clears: aStrand },
  stopStood: { what: 'La última vez terminó con un alto.', clears: aStrand },
  lifts: { what: 'Esto aclara. El último mechón vale solo para depositar.', clears: aStrand },
  notDone: {
    what: 'La última vez no se coloreó hasta el final en cada zona del plan.',
    clears: aStrand,
  },
  tooOld: { what: tooOldCarried, clears: newStrand },
  new: { what: 'Nuevo desde la última vez', clears: aStrand },
  strandToday: { what: 'Hoy se probó un mechón: ese cuenta.', clears: 'Siga con el mechón de hoy.' },
  notFeltToday: {
    what: 'Falta el estirado mojado de hoy.',
    clears: 'Vuelva a Tacto, estire un mechón mojado y diga cómo vuelve.',
  },
  stretchSlow: { what: 'Hoy no recupera.', clears: aStrand },
  notRetractable: {
    what: 'Este resultado es de la última vez, no un toque de hoy.',
    clears: 'Vuelva y pruebe un mechón: ese contará.',
  },
};

/** What can be new since last time. */
const news: Readonly<Record<NewThing, string>> = {
  plan: 'lo que quiere, sus niveles o su largo',
  tool: 'otra herramienta de calor',
  hotter: 'más temperatura',
  wetter: 'cabello más mojado al planchar',
  oftener: 'más calor',
  smoke: 'humo u olor a quemado',
  chemical: 'algo más en el cabello',
  bleach: 'otra decoloración',
  relaxed: 'alisador, permanente o queratina hace poco',
  hair: 'porosidad, rizo o cabellos rotos',
};

const mixture: Readonly<Record<MixtureRefusal['code'], RefusalWords>> = {
  forged: { what: 'Ningún mechón permite esta mezcla.', clears: 'Empiece por la prueba de mechón.' },
  anotherZone: { what: 'El mechón era de otra zona.', clears: 'Mezcle para la zona probada.' },
  anotherLine: { what: 'No es la línea probada.', clears: 'Use la línea probada, o pruebe esta.' },
  anotherRatio: {
    what: 'No es la proporción probada.',
    clears: 'Use la proporción probada, o pruebe esta.',
  },
  hotter: { what: 'Más calor que el probado.', clears: 'Use el calor probado, o pruebe este.' },
  overCeiling: {
    what: `Más de ${figures.ceiling} (${figures.ceilingVolumes}).`,
    clears: 'Nada más fuerte va en el cabello. Use un oxidante más suave.',
  },
  overHouseCeiling: {
    what: 'Más fuerte que toda botella de esta casa.',
    clears: 'Use un oxidante más suave. Ajustes dice hasta dónde.',
  },
  stronger: {
    what: 'Más fuerte de lo que permiten mechón y decisión.',
    clears: 'Use un oxidante más suave.',
  },
  longer: { what: 'Más tiempo que el mechón.', clears: 'Menos tiempo, u otro mechón.' },
  tooMuchForAStrand: { what: 'Más de lo que pide un mechón.', clears: 'Bastan unos gramos.' },
  notFinite: { what: 'Una de las cantidades no es un número.', clears: 'Revise las cantidades.' },
  notPositive: { what: 'Una de las cantidades es cero.', clears: 'Revise las cantidades.' },
  noParts: { what: 'No hay tono en el bol.', clears: 'Agregue un tono.' },
  tooManyParts: { what: 'Demasiados tonos para un bol.', clears: 'Quite algunos.' },
  tooMuch: { what: 'Más de lo que cabe en un bol.', clears: 'Pese menos: un bol por cada mechón.' },
  stepTooFine: {
    what: 'Más fino de lo que muestra la báscula.',
    clears: 'Vea en ajustes el paso de la báscula.',
  },
  stepTooCoarse: {
    what: 'Tan poco que la báscula no lo muestra.',
    clears: 'Pese más, o en una báscula más fina.',
  },
};

export const refusals = {
  fields,
  permit,
  carry,
  news,
  mixture,
  lookAtFields: { what: 'Aún no.', clears: 'Vea las respuestas marcadas.' },
  clockWentBack: {
    what: 'El reloj de la tableta va detrás de sus propios registros.',
    clears: 'Responda la pregunta sobre el reloj.',
  },
  notLastTime: {
    what: 'Eso no es lo último de esta ficha.',
    clears: 'Mire otra vez, o empiécela sin eso.',
  },
  nobody: { what: 'No hay nadie elegido.', clears: 'Toque su nombre en la barra.' },
  unknownEvent: { what: 'Esta estación no conoce ese paso.', clears: 'Recargue la estación.' },
  skinNotCalm: {
    what: 'Nada va sobre piel que no está en calma.',
    clears: 'Tire la mezcla y diga en Clienta cómo están cuero cabelludo y cara.',
  },
  bowlTooOld: (useBy: string): RefusalWords => ({
    what: `Debía estar puesta a las ${useBy}: mezcla vieja.`,
    clears: '¿La tiene puesta? Enjuague ya. Tírela y mezcle otra.',
  }),
  stoppedElsewhere: {
    what: 'La misma ficha tuvo un alto en otra consulta.',
    clears: 'Cierre esta y empiécela otra vez: el alto viene con ella y se puede corregir con nombre.',
  },
  stillReading: (read: string, all: string): RefusalWords => ({
    what: `Aún no: se buscan clientas anteriores, ${read} de ${all} meses.`,
    clears: 'Allí puede haber un alto suyo. Toque otra vez en un momento.',
  }),
  noSuchChair: { what: 'Esa silla no existe aquí.', clears: 'Elija una de las sillas de los ajustes.' },
  chairTaken: (ticket: string): RefusalWords => ({
    what: `${ticket} está en esa silla.`,
    clears: 'Elija una libre, o póngala antes en espera.',
  }),
  ticketOpen: {
    what: 'Alguien con esta ficha está abierta o en espera.',
    clears: 'Ciérrela primero: mientras está aquí, lo que la protege queda.',
  },
  eraseUnfinished: {
    what: 'Borrado y ya no se muestra. Pero una copia no se pudo reescribir.',
    clears: 'Toque “Terminar” en Registros guardados, o reinicie la estación: sigue desde allí.',
  },
  skinTestTooEarly: (when: string): RefusalWords => ({
    what: 'Es muy pronto para decir que no se ve nada.',
    clears: `Se puede leer desde: ${when}. Una reacción se puede anotar ya.`,
  }),
  waitInDoubt: (doubt: string): RefusalWords => ({
    what: `Mientras estaba puesta, el reloj de la tableta saltó ${doubt} de golpe: quizá esperó muy poco.`,
    clears:
      '¿La tableta solo durmió? Dígalo en el aviso al pie de la pantalla. Una reacción se puede anotar ya.',
  }),
  skinTestOn: (putOn: string): RefusalWords => ({
    what: `Esta ficha ya tiene una prueba de piel de esa línea, puesta: ${putOn}.`,
    clears: 'Lea esa. ¿Mal anotada, o se cayó? Retírela con su nombre. ¿Otra clienta? Otra ficha.',
  }),
  skinTestReacted: (putOn: string): RefusalWords => ({
    what: `Una prueba de piel de esta ficha reaccionó, puesta: ${putOn}.`,
    clears: 'No va una segunda. ¿Mal anotada? Retírela con su nombre. ¿Otra clienta? Otra ficha.',
  }),
  dampHair: {
    what: 'El cabello está húmedo: eso oculta cómo es.',
    clears: 'Séquelo, con toalla y aire frío, y pálpelo otra vez.',
  },
  notNow: { what: 'Eso no se puede ahora.', clears: 'Mire en el mechón dónde está esta clienta.' },
  notWriting: {
    what: 'Esta ventana no puede escribir ahora.',
    clears: 'Vea lo que dice arriba en la pantalla.',
  },
  backup,
  records: recordsRefusals,
  recordRefused,
  recordDiffers,
  recordsNotSaved,
  badSettings: { what: 'Los ajustes no se tomaron.', clears: 'Vea el ajuste marcado.' },
  notSaved: {
    what: 'No se guardó en las dos copias.',
    clears: 'Lo guardado antes sigue ahí. Vea los avisos.',
  },
};

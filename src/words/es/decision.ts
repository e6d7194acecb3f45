import type { Decision } from '../../../shared/judgement/decisions';
import type { ZoneFinding } from '../../../shared/judgement/decisionTable';
import type { retractedForm } from '../../../shared/records/forms/course';
import type { FormWords } from '../formWords';
import { correctionWords } from './forms/correction';
import { general } from './general';
import { gradeWords } from './strandTest';

/** What can be decided, said to a colleague, and what it means for the hair. */
const decisions: Readonly<Record<Decision, { readonly name: string; readonly means: string }>> = {
  asPlanned: { name: 'Como estaba', means: 'La mezcla que se probó.' },
  gentler: { name: 'Más suave', means: 'Misma línea, un paso menos de oxidante, o menos tiempo.' },
  smallerLift: { name: 'Aclarar menos', means: 'No más de 20 vol, y un paso por debajo de la prueba.' },
  depositOnly: { name: 'Solo depósito', means: 'Un plan nuevo: se pregunta otra vez, con su mechón.' },
  endsOut: { name: 'Sin puntas', means: 'Solo medios. No se pone nada en las puntas.' },
  severalVisits: { name: 'Varias visitas', means: 'No todo hoy. Déjela en espera y pruebe la próxima vez.' },
  cutFirst: {
    name: 'Cortar antes',
    means: 'Las puntas quemadas se cortan, nunca se recuperan. Luego un plan nuevo.',
  },
  testAgain: { name: 'Otro mechón', means: 'De vuelta a la prueba de mechón. Aún no se decide nada.' },
  weSayNo: { name: 'Decimos no', means: 'Hoy sin color. Eso también es una respuesta.' },
};

const findings: Readonly<Record<Exclude<ZoneFinding, 'notPlanned'>, string>> = {
  ...gradeWords,
  untested: 'sin mechón para este plan',
};

const headlines: Readonly<Record<Decision, { readonly lift: string; readonly colour: string }>> = {
  asPlanned: { lift: 'Siga como estaba', colour: 'Siga como estaba' },
  gentler: { lift: 'Siga, pero más suave', colour: 'Siga, pero más suave' },
  smallerLift: { lift: 'Aclarar menos de lo que desea', colour: 'Aclarar menos de lo que desea' },
  depositOnly: { lift: 'Sin aclarar, solo depósito', colour: 'Solo depósito' },
  endsOut: { lift: 'Sin decolorante en estas puntas', colour: 'Sin color en estas puntas' },
  severalVisits: { lift: 'No en una visita', colour: 'No en una visita' },
  cutFirst: { lift: 'Corte antes estas puntas', colour: 'Corte antes estas puntas' },
  testAgain: { lift: 'Antes, un mechón más', colour: 'Antes, un mechón más' },
  weSayNo: { lift: 'Sin decolorante en este cabello', colour: 'Sin color en este cabello' },
};

export const decision = {
  decisions,
  findings,
  retracted: {
    by: { ask: '¿Quién lo retira?' },
    ...correctionWords,
  } satisfies Pick<FormWords<typeof retractedForm>, 'code' | 'words'> & {
    readonly by: { readonly ask: string };
  },
  /** The suggestion as one would say it to her; of lightener where she wants to be lifted, else of colour. */
  headlines,
  titleOpen: '¿Qué hacemos con él?',
  otherChoices: 'Otras opciones',
  otherChoicesTitle: 'Decidir otra cosa',
  expect: (reached: string, target: string) =>
    `Espere cerca de ${reached}; un mechón nuevo para prometer ${target}.`,
  /** The same of a mix gentler than the one that reached it. */
  expectLess: (reached: string, target: string) =>
    `Espere menos de ${reached}; un mechón nuevo para prometer ${target}.`,
  /** What this decision leaves of what was tested, before it is made. */
  limits: {
    most: (percent: string, vol: string, minutes: string, heat: string) =>
      `${percent} (${vol}), ${minutes}, ${heat}`,
    all: (most: readonly string[]) => `Como máximo ${most.join('; ')}.`,
    ofZone: (zone: string, most: string) => `${most} (${zone})`,
    look: (minutes: string) => `Revise cada ${minutes}.`,
    fromTips: (length: string) => `Queda a ${length} del extremo.`,
  },
  /** Where nothing of this plan may go on. */
  instead: 'Otra línea es otro plan: lleva su propio mechón.',
  /** Why a strand that felt sound counts as rough. */
  weakened: 'elástico de más o débil en la mezcla',
  strandNumber: (number: string) => `mechón ${number}`,
  /** Of a strand that came off before its planned time: never to be taken for a full one. */
  findingShort: (finding: string, ofPlanned: string) => `${finding}, pero corto: ${ofPlanned}`,
  shortTime: {
    full: 'Le faltó tiempo: no es un mechón completo.',
    short: 'Le faltó tiempo.',
  },
  findingAfter: (finding: string, minutes: string) => `${finding} tras ${minutes}`,
  sameMix: 'la misma mezcla.',
  closedOn: (zone: string) => `Cerrado para ${zone}, y todo lo que sea igual o más fuerte:`,
  titleDecided: (name: string) => `Decidido: ${name}`,
  levelReached: (level: string, target: string) => `nivel ${level}, deseado ${target}`,
  stillMissing: (zone: string) => `Aún falta: un mechón de ${zone}.`,
  suggests: 'Sugerido',
  estimate: general.estimate,
  suspect: 'Cabello sospechoso:',
  reasons: {
    stopped: 'Sigue abierto un alto.',
    oneStrandTooFew: 'Dos mechones de esta mezcla, de dos lugares.',
    wellShort: (levels: string) => `Muy por debajo del nivel que desea, por ${levels}.`,
    short: (levels: string) => `Por debajo del nivel que desea, por ${levels}.`,
    uneven: 'El mechón salió manchado o con bandas.',
    ironedHair: 'Cabello sospechoso, más de una señal.',
    careful: 'Cabello sospechoso: una señal, o algo que no se sabe.',
  },
  /** After "cut first": how much, and what comes then. */
  cut: {
    howMuch: (length: string) => `Corte cerca de ${length} del extremo: las puntas.`,
    beyondTrim: 'Corte más que las puntas: el cabello anterior también falló.',
    after: [
      'Corte hoy, o déjela en espera hasta entonces.',
      'Luego anote su largo nuevo: un plan nuevo.',
      'Las puntas nuevas llevan su propio mechón.',
    ],
    otherwise: 'Decidir otra cosa',
    isCut: 'Ya está cortado: anote el largo',
    noMixUntil: 'Sin mezcla hasta que resista un mechón del plan nuevo.',
  },
  toDeposit: 'Cambiar el servicio',
  decide: (name: string) => `Decidir: ${name}`,
  careful: 'Igual de cuidadoso, o más',
  freer: 'Más allá de lo sugerido',
  freerHint: 'Firmado con nombre y motivo, solo para este servicio.',
  freerTitle: (name: string) => `Más allá de lo sugerido: ${name}`,
  freerLift: 'Firmar y seguir',
  /** What would be mixed, where no strand held for it. */
  notOpen: (names: readonly string[]) => `Ningún mechón permite: ${names.join(', ')}.`,
  retract: '¿Resultado erróneo?',
  recordedBy: (name: string, time: string) => `${name}, ${time}`,
  retractTitle: (zone: string) => `Resultado erróneo: ${zone}`,
  retractDo: 'Firmar y retirarlo',
  changePlan: 'Cambiar el plan',
  wouldUntie: 'Aún sin mezcla. Decidido así, se puede mezclar.',
  minutesOnZone: (minutes: string, zone: string) => `${minutes} (${zone})`,
  /** The same where strands came off before their time: what they were proven for is a limit. */
  wouldUntieFor: (each: readonly string[]) =>
    `Decidido así, se puede mezclar, probado para ${each.join(', ')}.`,
  wouldUntieNothing: 'Sin mezcla: puesto menos de un minuto, no prueba ningún tiempo en la cabeza.',
  wouldStayTied: 'Decidido así, no se mezcla nada.',
  closeNo: 'Cerrar: dijimos no',
  park: 'Dejarla en espera',
};

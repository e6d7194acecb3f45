import type { correctedForm, endedForm, parkedForm } from '../../../shared/records/forms/course';
import type { Correctable } from '../../../shared/records/steps';
import type { LeavingKind, Voided } from '../en/leaving';
import type { FormWords } from '../formWords';
import { correctionWords } from './forms/correction';
import { rail } from './rail';

const kinds: Readonly<Record<LeavingKind, string>> = {
  WE_SAID_NO: 'Dijimos que no',
  CLIENT_SAID_NO: 'Ella dijo que no',
  CALLED_OFF: 'Cancelada',
};

const endedWords: FormWords<typeof endedForm> = {
  reason: {
    ask: '¿Por qué termina?',
    options: {
      hairTooWeak: 'Cabello muy débil',
      notSafeToday: 'Hoy no es seguro',
      changedHerMind: 'Cambió de idea',
      noTime: 'Sin tiempo',
      startedByMistake: 'Empezó por error',
      other: 'Otro motivo',
    },
  },
};

const parkedWords: FormWords<typeof parkedForm> = {
  untilAtMs: { ask: '¿Cuándo vuelve?' },
};

const correctables: Readonly<Record<Correctable, string>> = {
  client: rail.steps.client,
  hotTools: rail.steps.hotTools,
  feelHair: rail.steps.feelHair,
  heatSpray: rail.steps.heatSpray,
  skinTest: 'Prueba de piel',
  incompatibility: 'Prueba en vaso',
  inherited: 'El registro anterior',
};

/** What the station itself adds is asked nowhere. */
const correctedWords: FormWords<Omit<typeof correctedForm, 'speaksFor'>> = {
  answer: { ask: '¿Qué respuesta estaba mal?', options: correctables },
  ...correctionWords,
};

/** Ending, parking, going back, and being stopped. */
export const leaving = {
  kinds,
  endedForm: endedWords,
  parkedForm: parkedWords,
  correctedForm: correctedWords,
  correctables,
  byMistake: 'Empezó por error',
  byMistakeLead: 'Aún no se hizo nada. La silla queda libre; el registro queda, como cancelado.',
  closeRecord: 'Cerrar este registro',
  end: 'Terminar sin color',
  holdToEnd: (kind: string) => `Terminar: ${kind}`,
  rinseFirst: 'Hay algo en la cabeza. Enjuague primero.',
  notFromHere: 'Puede quedar en espera cuando nada corra, no haya bol pesado ni reacción abierta.',
  park: 'En espera entre visitas',
  parkNow: 'Dejar en espera',
  goBack: 'Volver a',
  goBackSomewhere: 'Volver a un paso anterior',
  allWays: 'Todo lo demás para ella',
  goingBack: {
    title: (step: string) => `¿Volver a ${step}?`,
    strand: (number: string) => `Mechón ${number}`,
    decisionFalls: 'La decisión cae. Se toma de nuevo, pasando por la prueba de mechón.',
    stay: (strands: readonly string[]) =>
      `${strands.join(', ')} ${strands.length === 1 ? 'queda' : 'quedan'}.`,
    untilChanged: 'Si cambia una respuesta de la que depende, ya no cuenta. Si la repone, vuelve a contar.',
    stayHere: 'Quedarse aquí',
    go: (step: string) => `Volver a ${step}`,
    changeTitle: '¿Cambiar esta respuesta?',
    fall: (strands: readonly string[]) =>
      `${strands.join(', ')} ya no ${strands.length === 1 ? 'cuenta' : 'cuentan'}, y la decisión cae.`,
    putBack: 'Si repone la respuesta, vuelven a contar.',
    leaveIt: 'Dejarla como estaba',
    change: 'Cambiarla',
  },
  goBackHint: 'Se retira la decisión, y se pasa otra vez por la prueba de mechón.',
  whoNow: (name: string) => `En la estación: ${name}`,
  changeWho: 'Otra persona',
  stoppedTitle: 'Alto',
  stoppedLead: 'A esta clienta no se le pone nada.',
  strandOff: (name: string) => `${name} ya está fuera. Anote qué dijo.`,
  recordOutcome: (zone: string) => `Anotar el resultado: ${zone}`,
  clears: 'Qué lo resuelve:',
  correct: '¿Respuesta equivocada?',
  correctLead: (name: string) =>
    name === ''
      ? 'Usted lo firma: se retira y se pregunta otra vez.'
      : `Firma ${name}: se retira y se pregunta otra vez.`,
  askedAgain: (answer: string) => `Se pregunta otra vez: ${answer}.`,
  thenAt: (step: string) => `Ella vuelve a “${step}”.`,
  stillStopped: 'El alto sigue: otra respuesta también la detiene.',
  voided: {
    strands: 'lo que dijeron los mechones',
    decision: 'lo que se decidió',
    bowl: 'el bol ya pesado',
  } satisfies Readonly<Record<Voided, string>>,
  voids: (what: readonly string[]) => `Ya no cuenta: ${what.join(', ')}.`,
  voidsNothing: 'No se pierde nada de lo probado.',
  holdToCorrect: 'Corregir',
  parkedTitle: 'En espera',
  backAt: (when: string) => `Vuelve: ${when}.`,
  isOverdue: (when: string) => `Debía volver: ${when}.`,
  resume: 'Ya volvió',
  parkedFacts: {
    wants: 'Quiere',
    level: (level: string) => `nivel ${level}`,
    goesOnWith: 'Sigue con',
    strands: 'Mechones',
    noStrand: 'Aún no se probó ninguno.',
    stillToRecord: 'resultado por anotar',
    countsUntil: (when: string) => `cuenta hasta: ${when}`,
    countedUntil: (when: string) => `contó hasta: ${when}; otro mechón`,
    closed: 'esta mezcla sigue cerrada',
  },
  askedAnew: 'Otro día se preguntan de nuevo reacciones, cuero cabelludo y edad.',
};

import type { Decision, MixingDecision } from '../../../shared/judgement/decisions';
import type { PermitRefusal } from '../../../shared/judgement/permitRefusal';
import type { WayStep } from '../../../shared/records/steps';

const steps: Readonly<Record<WayStep, string>> = {
  client: 'Clienta',
  hotTools: 'Calor en casa',
  feelHair: 'Tacto',
  heatSpray: 'Protector',
  strandTest: 'Mechón',
  decision: 'Decisión',
  mix: 'Mezcla',
  colourOn: 'Color puesto',
  finish: 'Acabado',
};

/** Why the knot is still tied, as short as the rail is narrow. */
const tiedBy: Readonly<
  Record<PermitRefusal['code'] | Exclude<Decision, MixingDecision> | 'bowlTooOld', string>
> = {
  bowlTooOld: 'tire la mezcla',
  stopped: 'alto',
  forAJudgement: 'un alto por juzgar',
  closed: 'ya terminó',
  parked: 'en espera',
  reaction: 'reacción',
  stepUnsaid: 'pregunte primero',
  incompatibilityOpen: 'antes, prueba en vaso',
  skinTestMissing: 'antes, prueba de piel',
  skinTestWaiting: 'leer prueba de piel',
  skinTestLapsed: 'otra prueba de piel',
  zoneNotPlanned: 'elija qué colorear',
  noOutcome: 'anote el resultado',
  outcomeOfAnotherPlan: 'otro plan, otro mechón',
  outcomeLapsed: 'resultado vencido',
  anotherDay: 'pregúntele hoy otra vez',
  carriedOff: 'un mechón cada vez',
  carriedTooOld: 'mechón anterior vencido',
  carriedNotToday: 'estire uno mojado hoy',
  carriedLifts: 'mechón para aclarar',
  strandTooShort: 'mechón con poco tiempo',
  strandFailed: 'el mechón falló',
  mixClosed: 'mezcla cerrada',
  strandUsed: 'antes, otro mechón',
  hairBroke: 'hoy se rompió cabello',
  hairStretchy: 'enjuague y pálpelo',
  notDecided: 'decida',
  depositOnly: 'cambie el plan',
  severalVisits: 'otra visita',
  cutFirst: 'antes, cortar',
  testAgain: 'otro mechón',
  weSayNo: 'decimos que no',
  freerThanSuggested: 'decida de nuevo',
  endsLeftOut: 'puntas fuera',
  notRinsed: 'enjuague primero',
  stretchUnfelt: 'pálpelo mojado',
  stretchFails: 'hoy, muy débil',
  stretchDried: 'pálpelo mojado otra vez',
};

export const rail = {
  name: 'El camino',
  steps,
  states: { done: 'hecho', here: 'aquí ahora', toCome: 'por venir' },
  tiedBy,
  noMixYet: (why: string) => `Aún sin mezcla: ${why}`,
  /** Where her colour is done, and a mix was. */
  noMoreMix: (why: string) => `No más mezcla: ${why}`,
  noTonerYet: (why: string) => `Sin matizador: ${why}`,
  noMix: 'Aún sin mezcla',
  okToMix: 'Puede mezclar',
};

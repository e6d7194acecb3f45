import type { careForm, noReactionForm, reactionForm } from '../../../shared/records/forms/course';
import type { FormWords } from '../formWords';
import { figures } from './figures';

const signs: FormWords<typeof reactionForm>['signs'] = {
  ask: '¿Qué siente o qué se ve?',
  options: {
    unclear: 'Aún no está claro',
    stinging: 'Escozor',
    burning: 'Ardor',
    blisters: 'Ampollas',
    swelling: 'Hinchazón',
    hives: 'Ronchas',
    breath: 'Garganta o aire',
    faint: 'Desmayo',
    eyes: 'En los ojos',
  },
};

const care: FormWords<typeof careForm>['care'] = {
  ask: '¿Qué se hizo?',
  options: {
    rinsed: 'Enjuagada',
    rinsedAndDoctor: 'Enjuagada, enviada al médico',
    emergencyCalled: 'Se llamó a emergencias',
    callRefused: 'Ella rechazó la llamada',
  },
};

const stillOn: FormWords<typeof noReactionForm>['stillOn'] = {
  ask: '¿El color sigue puesto?',
  options: { no: 'Enjuagado', yes: 'Sigue puesto' },
};

const none: FormWords<typeof noReactionForm>['why'] = {
  ask: '¿Qué fue?',
  options: {
    notSaid: 'Nadie lo dijo',
    lookedNothingSeen: 'Se miró: no se ve ni se siente nada',
    onlyCool: 'Solo mojado o frío',
    wrongTap: 'Error al tocar',
  },
};

/**
 * 112 is the emergency number of the European Union (from memory: Directive (EU) 2018/1972, article 109) and is taken by
 * mobile phones elsewhere (from memory: 3GPP TS 22.101); beside it whatever number holds here.
 */
export const reaction = {
  signs,
  none,
  stillOn,
  stillOnHint: 'Sigue puesto: su reloj corre desde que se empezó.',
  care,
  title: 'Ardor o reacción',
  titleRecorded: 'Reacción anotada',
  emergencyAsk: '¿Garganta, aire, desmayo?',
  emergency: 'Primero llame al 112 o al número de emergencias local. Después enjuague.',
  emergencyTold: 'Garganta, aire o desmayo:',
  emergencyNow: 'llame ahora al 112 o al número de emergencias local.',
  steps: [
    'Agua fresca corriente, ya.',
    'Sin neutralizante, sin crema encima.',
    'Ojos: fuera lentes de contacto, siga enjuagando. Un médico.',
    'Ampollas: un médico. La quemadura puede verse tarde.',
    'Ronchas o silbidos al respirar con decolorante: nunca más.',
  ],
  told: 'Desde que se avisó:',
  rinseGoal: `Agua: una quemadura ${figures.burnRinse}, los ojos ${figures.eyesRinseFrom} a ${figures.eyesRinseTo}.`,
  onFor: (zone: string) => `${zone}, puesto hace`,
  nothingOn: 'No hay nada en la cabeza.',
  rinsed: (zone: string) => `Corre el agua: ${zone}`,
  rinsedAll: 'Corre el agua: todo',
  waterRuns: (zone: string) => `${zone}, con agua hace`,
  waterEnough: (zone: string) => `${zone}, ya bastante agua:`,
  waterGoal: `${figures.burnRinse} de agua fresca`,
  waterShort: (zone: string, runs: string) =>
    `Agua en ${zone}: ${runs} de ${figures.burnRinse}. Siga enjuagando, aquí o adonde vaya ella.`,
  record: 'Anotarla',
  whatIsSeen: '¿Qué se ve?',
  moreSigns: 'Más signos',
  addSigns: 'Agregar estos signos',
  toRinse: 'Volver a enjuagar',
  toCare: '¿Qué se hizo?',
  notAReaction: 'No era eso',
  recorded: 'Anotada. A esta clienta ya no se le pone nada.',
  rinseFirst: 'Enjuague primero. Luego diga qué se hizo.',
  /** What she remembers, or what shows, only now. */
  tells: { open: 'Cuenta una reacción…', title: 'Lo cuenta ahora: mantenga pulsado lo que es' },
  /** Told, and not done yet. */
  tooLittle: {
    emergency: 'Se dijo garganta, aire o desmayo: llame ahora al 112 o al número de emergencias local.',
    doctor: 'Ampollas, hinchazón, ronchas u ojos: debe verla un médico.',
  },
  giveCare: 'Guardar y cerrar',
  giveCareAnyway: 'Cerrar y seguir enjuagando',
};

import type { extendedForm } from '../../../../shared/records/forms/bowl';
import type { overriddenForm } from '../../../../shared/records/forms/course';
import type {
  discardedForm,
  lookForm,
  mixQuestions,
  outcomeForm,
  strandForm,
  takenOffForm,
} from '../../../../shared/records/forms/test';
import type { FormWords } from '../../formWords';
import { figures } from '../figures';
import { general } from '../general';
import { lift } from '../lift';
import { pullHint, stretchTaps } from './stretch';

const zone = { ask: '¿Qué cabello?', options: general.zones } as const;

/** What a mix is, wherever it is asked. */
export const mixWords: FormWords<typeof mixQuestions> = {
  line: { ask: 'Línea', hint: 'La familia de productos del fabricante, como en el estante.' },
  batch: { ask: 'Lote', hint: 'De la etiqueta, si lo hay.' },
  developerPercent: {
    ask: 'Botella de oxidante',
    short: 'Oxidante',
    hint: '3 % es 10 vol, 6 % es 20, 9 % es 30, 12 % es 40.',
  },
  ratio: { ask: 'Oxidante por 1 parte', hint: '2 significa 1 : 2.' },
  heat: {
    ask: 'Calor',
    hint: 'Sin secadora ni lámpara sobre decolorante, salvo que el fabricante lo diga.',
    options: { none: 'Ninguno', foil: 'Papel aluminio', dryHeat: 'Calor seco' },
  },
  minutes: { ask: 'Minutos puesto' },
};

const strand: FormWords<typeof strandForm> = {
  zone,
  place: {
    ask: '¿De dónde se cortó?',
    short: 'Cortado de',
    hint: 'Donde más se plancha; no de la nuca, salvo que sea lo peor.',
    options: {
      hairline: 'Contorno',
      fringe: 'Flequillo',
      crown: 'Coronilla',
      whereIroned: 'Donde plancha',
      oldBleach: 'Banda decolorada',
      nape: 'Nuca',
    },
  },
  hairs: { ask: 'Cabellos', hint: `${figures.fewestHairs} a ${figures.mostHairs}, con cinta en un extremo.` },
  buildUp: { ask: 'Restos de producto', options: { none: 'Ninguno', washedOff: 'Lavados' } },
  ...mixWords,
  makersLimitMin: {
    ask: 'Límite del fabricante',
    short: 'Límite',
    hint: 'Lo más que permiten las instrucciones.',
  },
  lookEveryMin: {
    ask: 'Revisar cada',
    hint: `La primera revisión es a los ${figures.firstLook} de ponerlo.`,
    options: { '3': '3 min', '5': '5 min' },
  },
  testG: { ask: 'Mezcla para el mechón', hint: 'Unos gramos.' },
};

const look: Pick<FormWords<typeof lookForm>, 'level' | 'undertone' | 'feel'> = {
  level: { ask: 'Nivel ahora', hint: 'Limpio, secado a toques, sobre blanco.' },
  undertone: {
    ask: '¿Qué fondo?',
    options: { ...lift.undertones, asExpected: 'El esperado', unknown: general.dontKnow },
  },
  feel: {
    ask: '¿Cómo se siente?',
    options: { sound: 'Sano', rough: 'Áspero', stretchy: 'Elástico de más' },
  },
};

const takenOff: Pick<FormWords<typeof takenOffForm>, 'why'> = {
  why: {
    ask: '¿Por qué ahora?',
    options: {
      timeIsUp: 'Tiempo cumplido',
      levelReached: 'Nivel alcanzado',
      looksWeak: 'Se ve débil',
      clientLeaves: 'Ella debe irse',
    },
  },
};

const discarded: Pick<FormWords<typeof discardedForm>, 'why'> & { readonly by: { readonly ask: string } } = {
  by: { ask: '¿Quién lo descarta?' },
  why: {
    ask: '¿Por qué no cuenta?',
    options: {
      wrongTap: 'Error al tocar',
      lost: 'Se perdió',
      clientLeft: 'La clienta se fue',
      wrongPlace: 'Cortado del lugar equivocado',
    },
  },
};

const extended: Pick<FormWords<typeof extendedForm>, 'minutes' | 'reason'> = {
  minutes: { ask: '¿Cuántos minutos más?' },
  reason: {
    ask: '¿Por qué?',
    options: {
      liftIsSlow: 'Aclara lento',
      greyResists: 'La cana resiste',
      makerSaysSo: 'El fabricante lo dice',
    },
  },
};

const outcome: FormWords<typeof outcomeForm> = {
  zone,
  fibre: {
    ask: 'Enjuagado y mojado, entre los dedos',
    short: 'Fibra',
    options: { sound: 'Sana', rough: 'Áspera', gummy: 'Gomosa', broken: 'Rota' },
  },
  stretch: {
    ask: 'Estirado suave, y soltado',
    short: 'Elasticidad',
    hint: pullHint,
    options: stretchTaps,
  },
  wentPast30: {
    ask: `¿Estirado suave, pasó de ${figures.lightPull}?`,
    short: `Más de ${figures.lightPull}`,
    options: { no: 'No', yes: 'Sí' },
  },
  level: { ask: 'Nivel alcanzado' },
  evenness: {
    ask: '¿Qué tan parejo quedó?',
    short: 'Uniformidad',
    options: { even: 'Parejo', patchy: 'Con manchas', banded: 'Con bandas' },
  },
};

/** A named person's reason to lift a judgement stop, here and at the decision. */
const override: Pick<FormWords<typeof overriddenForm>, 'code' | 'words'> & {
  readonly by: { readonly ask: string };
} = {
  by: { ask: '¿Quién firma?' },
  code: {
    ask: 'Motivo',
    options: {
      knowsHerHair: 'La conozco bien',
      makerAllows: 'El fabricante lo permite',
      seniorAgreed: 'Una sénior aceptó',
      strandHeld: 'Un mechón aguantó esta mezcla',
    },
  },
  words: { ask: 'En sus palabras', hint: 'Se guarda con su nombre y se dice en el cierre del día.' },
};

/** The questions around a strand, from its snip to its outcome. */
export const strandForms = { strand, look, takenOff, discarded, extended, outcome, override };

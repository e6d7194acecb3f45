import type { stretchForm, tonerForm } from '../../../shared/records/forms/bowl';
import type { FormWords } from '../formWords';
import { correctionWords } from './forms/correction';
import { pullHint, stretchTaps } from './forms/stretch';
import { mix } from './mix';

const { heat: _heat, ...bowl } = mix.bowl;

export const toner = {
  bowl: bowl satisfies FormWords<typeof tonerForm>,
  felt: {
    by: { ask: '¿Quién lo retira?' },
    code: {
      ask: '¿Cómo pasó?',
      options: { wrongTap: 'Error al tocar', otherZone: 'Era otra zona' },
    },
    words: correctionWords.words,
    stretch: {
      ask: 'Estirado suave, y soltado',
      short: 'Elasticidad',
      hint: pullHint,
      options: stretchTaps,
    },
  } satisfies Omit<FormWords<typeof stretchForm>, 'zone' | 'before'> & {
    readonly by: { readonly ask: string };
  },
  /** What stands in the first part before anybody types a shade. */
  shade: 'Matizador',
  feelSummary: 'Mojado, tras enjuagar',
  feelFor: (zone: string) => `¿Matizar? Palpe ${zone}`,
  mixFor: (zone: string) => `Mezclar matizador: ${zone}`,
  feelTitle: (zone: string) => `Palpe ${zone}: enjuagado y mojado`,
  noToner: 'No hay matizador en el estante, o hoy hubo un mechón en cada uno. El estante está en Ajustes.',
  slowWaits: 'Hoy solo lleva matizador el cabello que recupera.',
  brokeOnHead: 'Se rompió con el color puesto',
  brokeWaits: 'Sin matizador ahí y sin segunda ronda hoy. Otra visita, con un mechón nuevo.',
  noneToday: 'Hoy sin matizador',
  toldWrongly: 'Se anotó mal',
  keep: 'Así se siente',
  title: (zone: string) => `Matizador: ${zone}`,
  feelAgain: 'Palpar otra vez',
  limits: (developer: string, minutes: string) =>
    `Solo depositar: no más fuerte que ${developer}, ${minutes} como máximo, sin calor. Primero valen las instrucciones del fabricante.`,
};

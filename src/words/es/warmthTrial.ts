import type { WarmthTold } from '../../../shared/heat/warmthTrial';
import { figures } from './figures';

const tells: Readonly<Record<WarmthTold['code'], (by: string) => string>> = {
  later: (by) => `Con el protector, el calor llegó ${by} después.`,
  sooner: (by) => `Con el protector, el calor llegó ${by} antes.`,
  laterThanCap: () => `Con el protector no llegó calor en ${figures.warmthCap}. Sin nada, sí.`,
  soonerThanCap: () => `Sin nada no llegó calor en ${figures.warmthCap}. Con el protector, sí.`,
  alike: () => `Muy parejo para decirlo: menos de ${figures.warmthTelling} entre ambos.`,
  neitherFelt: () =>
    `No llegó calor en ${figures.warmthCap} en ninguno: no dice nada. No suba la temperatura.`,
};

const better = 'Una tira de calor bajo un mechón cortado, rociado y seco: muestra lo que llega al cabello.';

/** Dryer on two forearms: what it needs, and what it tells. */
export const warmthTrial = {
  title: (spray: string) => `Ensayo de calor · ${spray}`,
  before: 'Antes de empezar',
  /** `distance`: at least so far. */
  rules: (distance: string): readonly string[] => [
    'Solo en sus propios brazos. No en piel dormida, dolorida o herida, ni si un protector ya le dio reacción.',
    'Rocíe un antebrazo y deje que seque del todo. El otro queda sin nada.',
    `Solo secadora, nunca plancha. Calor mínimo, al menos a ${distance}.`,
    `Otra persona toca la pantalla. Pare al primer calor. Termina a los ${figures.warmthCap}, se sienta o no.`,
  ],
  marks: `${figures.warmthCap}: práctica común, sin fuente. La distancia es elección nuestra: más lejos vale.`,
  tellsTitle: 'Qué dice',
  ofSkin: 'Habla de la piel, no del cabello bajo una placa.',
  betterTitle: 'La mejor manera',
  betterWay: `La mejor manera: ${better}`,
  better,
  arms: { bare: 'Antebrazo sin nada', sprayed: 'Antebrazo rociado' },
  start: { bare: 'Empezar: antebrazo sin nada', sprayed: 'Empezar: antebrazo rociado' },
  running: 'Pare al primer calor',
  warm: 'Calor: parar',
  capped: `Pare: ${figures.warmthCap} es el tope`,
  dryerAway: 'Aparte la secadora. No se sintió: también es una respuesta.',
  goOn: 'Secadora apartada',
  next: 'Ahora el antebrazo rociado: seco al tacto, mismo punto, misma distancia.',
  again: 'Empezar otra vez',
  notFelt: `ninguno en ${figures.warmthCap}`,
  tells,
  keep: 'Guardar con el protector',
  /** How the last one went, on the page of the spray. */
  last: (day: string, bare: string, sprayed: string) =>
    `Ensayo ${day}: sin nada ${bare}, rociado ${sprayed}.`,
  unsaved: (last: string) => `${last} Aún sin guardar.`,
  noneYet: 'Aún sin ensayo de calor.',
  open: 'Ensayo de calor',
};

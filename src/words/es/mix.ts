import type { BowlFact } from '../../../machines/consultation/facts';
import type { ThinningRefusal } from '../../../shared/chemistry/thinning';
import type { bowlForm } from '../../../shared/records/forms/bowl';
import type { FormWords } from '../formWords';
import { figures } from './figures';
import { mixWords } from './forms/strand';
import { general } from './general';

const bowl: FormWords<typeof bowlForm> = {
  zone: { ask: '¿Qué cabello?', options: general.zones },
  shades: {
    ask: 'En el bol',
    rows: { shade: { ask: 'Tono o decolorante' }, parts: { ask: 'Partes' } },
    rowTitle: (row) => `Parte ${row}`,
    addRow: 'Agregar un tono',
    removeRow: (row) => `Quitar parte ${row}`,
  },
  colourG: { ask: 'Color o decolorante, todo junto', short: 'Todo junto' },
  ...mixWords,
  bottles: {
    ask: 'Dos botellas',
    rows: { percent: { ask: 'Botella' } },
    rowTitle: (row) => `Botella ${row}`,
    addRow: 'Agregar botella',
    removeRow: (row) => `Quitar botella ${row}`,
  },
  weighed: {
    ask: 'Pesado uno por uno',
    rows: { amountG: { ask: 'La báscula dice' } },
    rowTitle: (row) => `Parte ${row}`,
    addRow: 'Agregar parte',
    removeRow: (row) => `Quitar parte ${row}`,
  },
  mixedMinAgo: { ask: '¿Hace cuánto se mezcló?' },
};

const thinning: Readonly<Record<ThinningRefusal | 'overHouseCeiling', string>> = {
  overHouseCeiling: 'Más fuerte que toda botella de esta casa.',
  notFinite: 'Una de las cifras no es un número.',
  notADeveloper: 'Solo otro oxidante lo rebaja. Nunca agua.',
  overCeiling: `Nada de más de ${figures.ceiling} (${figures.ceilingVolumes}) va en el cabello.`,
  notWeaker: 'La segunda botella debe ser la más suave.',
  bothWeaker: 'Las dos botellas son más suaves que lo que pide el bol.',
  bothStronger: 'Las dos botellas son más fuertes que lo que pide el bol.',
  stepTooCoarse: 'Tan poco de la botella fuerte que la báscula no lo muestra.',
  notPositive: 'Primero los gramos.',
  tooMuch: 'Más de lo que cabe en un bol.',
};

export const mix = {
  bowl,
  title: 'Mezcla',
  titleFor: (zone: string) => `Bol: ${zone}`,
  states: {
    none: 'aún sin bol',
    weighed: 'pesado, sin poner',
    on: 'en la cabeza',
    rinsed: 'enjuagado',
    thrown: 'tirado',
  } satisfies Readonly<Record<Exclude<BowlFact, 'tonerWeighed'>, string>>,
  /** The same of a toner. */
  tonerStates: {
    weighed: 'matizador pesado, sin poner',
    on: 'matizador en la cabeza',
    rinsed: 'matizador enjuagado',
  },
  limits: 'Dentro de lo probado:',
  limitLine: (line: string) => `${line}, ninguna otra línea`,
  limitDeveloper: (percent: string, vol: string) => `no más fuerte que ${percent} (${vol})`,
  /** Why that is less than the strand held. */
  onScalp: 'en el cuero cabelludo, no más fuerte',
  signForScalp: 'Firmar por más en el cuero cabelludo',
  signScalp: 'Más en el cuero cabelludo',
  limitRatio: (ratio: string) => `1 : ${ratio}`,
  limitMinutes: (minutes: string) => `máximo ${minutes}`,
  limitHeat: { none: 'sin calor', foil: 'papel, sin calor seco', dryHeat: 'calor seco' } satisfies Readonly<
    Record<'none' | 'foil' | 'dryHeat', string>
  >,
  headHeat: {
    none: 'Sin calor',
    foil: 'En papel, sin calor seco',
    dryHeat: 'Con calor seco, si el fabricante lo dice',
  } satisfies Readonly<Record<'none' | 'foil' | 'dryHeat', string>>,
  batch: (batch: string) => `lote ${batch}`,
  weighedColour: (grams: string, stuff: 'colour' | 'lightener') =>
    `${grams} de ${stuff === 'colour' ? 'color' : 'decolorante'}`,
  bottle: (percent: string, vol: string) => `botella de ${percent} (${vol})`,
  weighedBy: (name: string, time: string) => `pesado ${time}, ${name}`,
  byStrand: (number: string) => `según mechón ${number}`,
  notPowder: 'Decolorante: decide el fabricante, no una prueba de piel.',
  skinTestOfNone: 'Nadie anotó de qué línea fue la prueba de piel.',
  skinTestOfOther: (line: string) => `La prueba de piel fue de ${line}, no de esta línea.`,
  grams: 'Pese',
  developer: 'oxidante',
  together: 'en total',
  amount: (typical: string, low: string, high: string) =>
    `Para este cabello, unos ${typical} de mezcla, ${low} a ${high}.`,
  inAll: (grams: string) => `${grams} en total`,
  developerOff: (grams: string, way: 'more' | 'less') =>
    `${grams} ${way === 'more' ? 'más' : 'menos'} de oxidante que la proporción: por el paso de la báscula`,
  remainder: (grams: string) => `${grams} que la báscula no muestra se omiten`,
  fieldsOpen: 'Llene los campos marcados.',
  weigh: 'Pesado',
  weighedWith: (percent: string) => `Pesado: botella de ${percent}`,
  weighedWithTwo: (strong: string, weak: string) => `Pesado: ${strong}, ${weak}`,
  /** How much of which of two bottles. */
  pour: (grams: string, percent: string) => `${grams} de ${percent}`,
  poured: (strong: string, weak: string, made: string, vol: string) =>
    `${strong} y ${weak}, juntos ${made} (${vol})`,
  twoBottles: (strong: string, weak: string, made: string, vol: string) =>
    `botellas de ${strong} y ${weak}, juntas ${made} (${vol})`,
  /** From one bowl to what stands at the scale: the bowls of all zones. */
  toBowls: 'Los boles',
  weighFor: (zone: string) => `Mezclar ${zone}`,
  /** The pause before it goes on: read from bowl and record, said aloud, and the skin answered by its value. */
  sayFirst: 'Mire cuero cabelludo y cara, diga esto en voz alta y empiece: corre su reloj.',
  who: (chair: string, ticket: string) => `silla ${chair}, ${ticket}`,
  lookEvery: (minutes: string) => `revisar cada ${minutes}`,
  rootsLast: 'las raíces al final',
  fromTips: (length: string) => `a ${length} de las puntas`,
  apply: (zone: string) => `Piel tranquila: empezar ${zone}`,
  notCalm: 'Piel no en calma',
  calmAfterAll: 'Sí está tranquila',
  /** Before it is written, and while how scalp and face are is open. */
  notCalmThen:
    'Nada va sobre piel que no está tranquila. Tire el bol; Clienta pregunta cómo están cuero cabelludo y cara.',
  thrownNotCalm: 'tirado: piel no tranquila',
  throwAway: 'Tirar el bol',
  useBy: (time: string) => `usar hasta ${time}`,
  tooOld: (useBy: string) =>
    `Bol viejo: debía estar puesto a las ${useBy}. Si ella lo tiene puesto, enjuague. Tírelo y mezcle otro.`,
  /** Back to the strand test, past the question what that costs. */
  secondRound: 'Segunda ronda: otro mechón',
  finish: 'No más boles: acabado',
  thin: {
    open: '¿Otras botellas a mano?',
    title: 'Dos botellas de una línea',
    close: 'Volver al bol',
    use: 'Usar estas dos',
    one: 'Mejor una botella',
    form: {
      strongPercent: { ask: '¿Cuánto tiene la botella más fuerte?', short: 'Botella fuerte' },
      weakPercent: { ask: '¿Y la más suave, de la misma línea?', short: 'Botella suave' },
    },
    summary: 'Pese',
    of: (percent: string) => `de la botella de ${percent}`,
    makes: 'da',
    wants: (grams: string, percent: string) => `${grams} de oxidante de ${percent}, de dos botellas`,
    hint: 'Nunca con agua. Úselo ya; nunca guarde lo rebajado.',
    refusals: thinning,
  },
  /** One thing after another onto the scale. */
  weighIn: {
    open: 'Pesar uno por uno',
    title: (zone: string) => `Pesar: ${zone}`,
    developer: 'Oxidante',
    bottle: (percent: string) => `botella de ${percent}`,
    pour: (what: string, grams: string) => `${what}: ${grams}`,
    more: (what: string) => `más ${what}`,
    hint: 'Báscula a cero, vierta y toque lo que dice.',
    inOf: (grams: string, total: string) => `van ${grams} de ${total}`,
    grew: 'Entró de más: el resto crece igual.',
    tooMuch: 'Más de lo que cabe en un bol. Tire el bol.',
    foreign: 'Lleva algo que este bol ya no pide. Tire el bol.',
    goOn: 'Seguir pesando',
    summary: 'En el bol',
    anew: 'Desde cero',
    close: 'Volver al bol',
  },
};

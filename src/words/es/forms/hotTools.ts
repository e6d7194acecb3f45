import type { hotToolsForm } from '../../../../shared/records/forms/hotTools';
import type { FormWords } from '../../formWords';
import { sayCount } from '../sayCount';

const sayMonths = (count: string): string => sayCount(count, 'mes', 'meses');

export const hotToolsWords: FormWords<typeof hotToolsForm> = {
  habits: {
    ask: '¿Qué herramientas de calor en casa?',
    askAnother: '¿Alguna otra?',
    short: 'Calor',
    hint: 'La que dejó también cuenta mientras siga ese cabello.',
    rowTitle: (row) => `Herramienta ${row}`,
    addRow: 'Agregar una',
    noRows: 'Ninguna',
    removeRow: (row) => `Quitar la ${row}`,
    rows: {
      tool: {
        ask: '¿Qué herramienta?',
        short: 'Herramienta',
        options: {
          flatIron: 'Plancha',
          curlingIron: 'Tenaza',
          wand: 'Tenaza cónica',
          hotBrush: 'Cepillo de calor',
          rollers: 'Tubos calientes',
          dryer: 'Secadora',
          other: 'Otra',
        },
      },
      wetness: {
        ask: '¿En cabello mojado o seco?',
        short: 'Cabello',
        options: { wet: 'Mojado', damp: 'Húmedo', dry: 'Seco', unknown: 'No se sabe' },
      },
      daysAWeek: {
        ask: '¿Cuántos días a la semana?',
        short: 'Días por semana',
        told: (figure) => `${sayCount(figure, 'día', 'días')}/semana`,
      },
      forMonths: {
        ask: '¿Durante cuántos meses?',
        short: 'Meses',
        told: sayMonths,
      },
      settingC: { ask: '¿A qué temperatura?', short: 'Temperatura' },
      secondsASection: { ask: '¿Cuántos segundos por sección?', short: 'Por sección' },
      plateWidthCm: { ask: '¿Qué ancho tiene la placa, a lo largo del mechón?', short: 'Placa' },
      passes: {
        ask: '¿Cuántas pasadas por sección?',
        short: 'Pasadas',
        hint: 'Cuántas veces pasa por el mismo cabello en ese tiempo.',
      },
      stoppedMonthsAgo: {
        ask: '¿Hace cuántos meses lo dejó?',
        short: 'Lo dejó',
        hint: '0 si sigue.',
        told: (figure) => (figure === '0' ? 'sigue' : `lo dejó hace ${sayMonths(figure)}`),
      },
    },
  },
  smoke: {
    ask: '¿Alguna vez humea o huele a quemado?',
    short: 'Humo',
    options: { no: 'No', smokes: 'Humea', smellsBurnt: 'Huele a quemado', unknown: 'No se sabe' },
  },
  spray: {
    ask: '¿Protector térmico en casa?',
    short: 'Protector en casa',
    options: { never: 'Nunca', sometimes: 'A veces', always: 'Siempre', unknown: 'No se sabe' },
  },
  history: {
    ask: '¿Qué se le ha puesto, también en casa?',
    short: 'Se le puso',
    hint: '“Nada de esto” no dice nada del calor.',
    options: {
      none: 'Nada de esto',
      unknown: 'Ella no sabe',
      salonColour: 'Tinte de salón',
      boxColour: 'Tinte de caja',
      unknownBoxColour: 'Tinte de caja, no sabe cuál',
      henna: 'Henna pura',
      compoundHenna: 'Henna compuesta',
      metallicColour: 'Restaurador de canas, tinte metálico',
      gloss: 'Baño de brillo',
      sunSpray: 'Aclarante solar',
      keratin: 'Queratina',
      relaxer: 'Alisador',
      perm: 'Permanente',
      lightener: 'Decolorante',
      poolWater: 'Agua de piscina',
      wellWater: 'Agua de pozo',
    },
  },
  bleaches: {
    ask: '¿Cuántas decoloraciones, en las puntas más viejas?',
    short: 'Decoloraciones',
    hint: 'Si solo se decoloró una banda: cuántas veces allí.',
  },
  lastBleachMonthsAgo: {
    ask: '¿Hace cuántos meses fue la última decoloración?',
    short: 'La última',
    hint: 'Lo que creció después no tiene ninguna. 0 si fue este mes.',
    told: (figure) => (figure === '0' ? 'este mes' : `hace ${sayMonths(figure)}`),
  },
  bleachReach: {
    ask: '¿Dónde se puso el decolorante?',
    short: 'Decolorado en',
    options: {
      all: 'En todo',
      roots: 'Cada crecimiento',
      ends: 'Solo las puntas',
      band: 'Una banda, no las puntas',
      unknown: 'No se sabe',
    },
  },
  relaxedWithinTwoWeeks: {
    ask: '¿Alisador, permanente o queratina en las dos últimas semanas?',
    short: 'Últimas dos semanas',
    options: { no: 'No', yes: 'Sí', unknown: 'No se sabe' },
  },
  growth: {
    ask: '¿Se midió su crecimiento?',
    short: 'Crece',
    hint: 'Por lo que creció desde un color de fecha conocida. Si no, se toma un margen usual amplio.',
    options: { usual: 'No medido', measured: 'Medido' },
  },
  regrowthCm: { ask: '¿Cuánto creció desde ese color?', short: 'Creció' },
  regrowthWeeks: {
    ask: '¿Hace cuántas semanas fue ese color?',
    short: 'Desde',
    told: (figure) => `en ${sayCount(figure, 'semana', 'semanas')}`,
  },
};

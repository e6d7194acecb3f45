import type { SnipReason } from '../../../shared/hair/whereToSnip';
import type { HeatFigure } from '../../../shared/heat/marks';
import type { HairThresholdId } from '../../../shared/heat/thresholds';
import type { HowFigures } from '../en/hair';
import type { MarkKind } from '../marks';
import { sayCount } from './sayCount';

const how: Readonly<Record<HeatFigure, (figures: HowFigures) => string>> = {
  ageWeeks: () => 'Distancia desde el cuero cabelludo ÷ crecimiento. Cuanto más lento crece, más viejo es.',
  ironMin: () =>
    'Segundos por sección ÷ 60 × días por semana × las semanas en que este cabello ya estaba. Todas las herramientas juntas.',
  boilEquivalents: () =>
    'Minutos de plancha en mojado ÷ 30. Una imagen para hablar, no una medición. Los minutos en húmedo no entran.',
  contactMin: () =>
    'Minutos de plancha × ancho de la placa ÷ el largo de hoy, donde la placa se desliza. Una herramienta que se queda: todo su tiempo.',
  hairTemperature: ({ gapGliding, gapHeld }) =>
    `El ajuste menos ${gapGliding} donde una placa se desliza, menos ${gapHeld} donde una herramienta se queda. El cabello mojado sigue cerca del hervor mientras está mojado; eso no entra aquí.`,
  helixLeft: ({ at, halfLife, water, dampness, perBleach, measuredSeconds }) =>
    `La mitad se va en ${halfLife} de contacto a ${at}, antes si está más caliente, ${water} veces más rápido en mojado, ${dampness} en húmedo. Cada decoloración deja ${perBleach}. Medido a ${at}, hasta ${measuredSeconds}.`,
  matrixLeft: ({ at }) =>
    `A qué distancia de su límite deja el calor solo a lo que sujeta la hélice: medio camino en unos 5 min de contacto a ${at}, en cerca de 1 min si está decolorado. Lo que quita la propia decoloración, y el agua, no entran.`,
  tryptophanLeft: ({ measuredFrom, measuredTo, measuredMinutes }) =>
    `Por calor y minutos de contacto; el agua no cambia nada. Medido en cabello castaño claro y en cabello blanco o decolorado de ${measuredFrom} a ${measuredTo}, hasta ${measuredMinutes}.`,
  bleaches: ({ perBleach }) =>
    `Cada decoloración por la que pasó este cabello deja ${perBleach} de la hélice.`,
  boilingPoint: () => 'Altura sobre el mar, la presión del aire allí, y a qué hierve el agua con ella.',
  whereToSnip: () =>
    'En cada zona a la que va el color: donde menos queda según el extremo prudente del margen.',
};

/** For what a setting is hot enough, after "hot enough for". */
const reached: Readonly<Record<HairThresholdId, string>> = {
  waterBoils: 'hervir agua',
  poresBegin: 'huecos diminutos',
  helixMeltsInWater: 'fundirse en agua',
  poresRiseFast: 'muchos huecos diminutos',
  cortexSoftens: 'ablandarse',
  meltsOnSlowPasses: 'fundirse en pasadas lentas',
  hairBurns: 'quemarse',
  helixMeltsDry: 'fundirse en seco',
};

const why: Readonly<Record<SnipReason, string>> = {
  ironedWet: 'planchado mojado',
  mayBeIronedWet: 'quizá planchado mojado',
  ironed: 'más planchado',
  bleached: 'decolorado',
  mayBeBleached: 'quizá decolorado',
  mostBleach: 'allí hay más decoloración',
  overlap: 'el color pasa sobre cabello más viejo',
  oldest: 'su cabello más viejo',
  finest: 'el cabello más fino',
};

const kinds: Readonly<Record<MarkKind, string>> = {
  published: 'Publicado',
  practice: 'Práctica común, sin fuente',
  memory: 'De segunda mano',
  assumed: 'Supuesto por nosotros',
  exact: 'Exacto',
};

const shortKinds: Readonly<Record<MarkKind, string>> = {
  published: 'publicado',
  practice: 'práctica común',
  memory: 'práctica común',
  assumed: 'supuesto',
  exact: 'exacto',
};

/** What heat and bleach have done along the strand, as a picture and in figures. */
export const hair = {
  title: 'Calor a lo largo del mechón',
  about: (figure: string) => `cerca de ${figure}`,
  ironMinutes: 'minutos de plancha en el extremo',
  boils: '× 30 min en agua hirviendo',
  band: (range: string) => `(${range})`,
  likely: (likely: string, range: string) => `cerca de ${likely} (${range})`,
  fromTo: (from: string, to: string) => `de ${from} a ${to}`,
  onlyBand: (range: string) => `más allá de lo medido: ${range}`,
  nothingTold: 'No dijo calor ni decoloración. El mechón decide igual.',
  counts: 'minutos de plancha',
  scalp: 'cuero',
  landmarks: {
    ear: 'oreja',
    chin: 'mentón',
    collarbone: 'clavícula',
    braLine: 'sostén',
    waist: 'cintura',
  },
  reach: { fullHead: 'color: todo', roots: 'color: raíces', endsOut: 'color: sin puntas' },
  times: (times: string) => `${times}×`,
  bleached: (times: string) => `decolorado ${times}×`,
  mayBeBleached: (times: string) => `quizá decolorado ${times}×`,
  hotEnough: (what: string, kind: string) => `calor que basta para ${what} (${kind})`,
  mayBeHotEnough: (what: string, kind: string) => `quizá para ${what} (${kind})`,
  ofKind: (what: string, kind: string) => `${what} (${kind})`,
  reached,
  kinds,
  /** Beside a name on the map there is room for no more. */
  shortKinds,
  said: {
    line: (tip: string, minutes: string) =>
      `Del cuero cabelludo al extremo en ${tip}: hasta ${minutes} minutos de plancha`,
    snip: (number: string, where: string) => `Corte ${number}: ${where}`,
    bleached: (times: string, from: string, to: string) => `${times} de ${from} a ${to}`,
  },
  snip: (place: string, at: string, reasons: readonly string[]) =>
    `${place}, a ${at} por el mechón: ${reasons.join(', ')}`,
  /** A place around the head inside a sentence. */
  places: {
    hairline: 'el contorno',
    fringe: 'el flequillo',
    crown: 'la coronilla',
    whereIroned: 'donde plancha',
    oldBleach: 'la banda decolorada de antes',
    nape: 'la nuca',
  },
  snipHint: (place: string, at: string) =>
    `Según el mapa: ${place}, a ${at} por el mechón. No la nuca, salvo que esté peor.`,
  why,
  figures: {
    ageWeeks: 'Edad del cabello en el extremo',
    ironMin: 'Minutos de plancha en el extremo',
    boilEquivalents: 'Veces 30 min en agua hirviendo',
    contactMin: 'Minutos de contacto en el extremo',
    hairTemperature: 'Temperatura del cabello',
    helixLeft: 'Hélice que queda en el extremo',
    matrixLeft: 'Matriz: lo que deja el calor solo',
    tryptophanLeft: 'Triptófano que queda en el extremo',
    bleaches: 'Decoloraciones en el extremo',
    boilingPoint: 'El agua hierve aquí a',
    whereToSnip: 'Dónde cortar',
  } satisfies Readonly<Record<HeatFigure, string>>,
  how,
  from: 'De',
  howSaid: 'Cómo',
  measuredOnHer: 'Medido en ella',
  sentence: (parts: readonly string[]) => parts.map((part) => `${part}.`).join(' '),
  list: (parts: readonly string[]) => parts.join('; '),
  source: (kind: string, source: string) => (source === '' ? kind : `${kind}: ${source}`),
  inputs: {
    length: (length: string) => `largo ${length}`,
    growth: (growth: string) => `crecimiento ${growth} al mes`,
    tool: (tool: string, parts: readonly string[]) => `${tool}: ${parts.join(', ')}`,
    seconds: (seconds: string) => `${seconds} por sección`,
    usualSeconds: (seconds: string) => `${seconds} por sección, como es usual`,
    days: (days: string) => `${sayCount(days, 'día', 'días')} por semana`,
    months: (months: string) => `por ${sayCount(months, 'mes', 'meses')}`,
    stopped: (months: string) => `dejado hace ${sayCount(months, 'mes', 'meses')}`,
    setting: (setting: string) => `a ${setting}`,
    notKnown: {
      seconds: 'segundos por sección no se saben: margen amplio',
      days: 'días por semana no se saben: margen amplio',
      months: 'por cuánto tiempo no se sabe: margen amplio',
      stopped: 'cuándo lo dejó no se sabe: margen amplio',
      setting: 'ajuste no se sabe: margen amplio',
    },
    plate: (width: string) => `placa ${width}`,
    ironMinutes: (minutes: string) => `plancha ${minutes}`,
    wetMinutes: (minutes: string) => `mojado ${minutes}`,
    contact: (minutes: string) => `contacto ${minutes}`,
    hair: (temperature: string) => `cabello a ${temperature}`,
    bleaches: (count: string) => `decolorado ${sayCount(count, 'vez', 'veces')}`,
    noBleach: 'no dijo decoloración',
    wetness: { wet: 'mojado', damp: 'húmedo', dry: 'seco', unknown: 'mojado o seco, no se sabe' },
    altitude: (height: string) => `${height} sobre el mar`,
  },
  plateIsHotter: 'Por el ajuste. Una placa está más caliente que el cabello bajo ella.',
  months: (count: string) => sayCount(count, 'mes', 'meses'),
  beyond:
    'Más allá de lo medido un margen dice poco: llevado tan lejos, el cabello que se usa a diario saldría como perdido, y es claro que no lo está. El mechón decide.',
  notReckoned:
    'Alisador, permanente y color no están en ninguna de estas cifras: nada publicado dice cuánto quitan.',
  thresholdsTitle: 'Ajuste que basta para',
  settingNotKnown: 'Quizá: el ajuste no se sabe.',
};

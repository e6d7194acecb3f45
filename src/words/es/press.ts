import type { HairThresholdId } from '../../../shared/heat/thresholds';

/** From where on the outside is too hot: by what happens there. */
type TooHot = Extract<HairThresholdId, 'poresRiseFast' | 'cortexSoftens'>;

/** A picture to try: how hot a section gets between two plates. */
export const press = {
  way: 'Qué hace una pasada',
  title: 'Qué hace una pasada',
  kicker: 'Para probar, en el cabello de nadie',
  asks: {
    section: 'Sección',
    setting: 'Placas a',
    wetness: 'Cabello',
    onPlace: 'En un lugar',
  },
  /** How thick a section is, thinnest first. */
  sections: ['fina', 'media', 'gruesa', 'manojo'],
  wetness: { dry: 'seco', damp: 'húmedo', wet: 'mojado' },
  less: 'Menos calor',
  more: 'Más calor',
  again: 'Otra pasada',
  noMore: 'Basta para verlo',
  anew: 'Otra sección',
  reckoning: 'Calculando.',
  outside: 'Fuera',
  middle: 'Centro',
  lines: {
    plates: (at: string) => `placas ${at}`,
    tooHot: (at: string) => `límite ${at}`,
    works: (at: string) => `poco hasta ${at}`,
    boils: (at: string) => `agua hierve ${at}`,
  },
  bars: {
    pressed: (times: string, each: string) => `pasada ${times} × ${each}`,
    boiling: (time: string) => `hirviendo ${time}`,
    tooHot: (time: string) => `demasiado ${time}`,
  },
  /** What it came to, in one sentence. */
  verdicts: {
    coolMiddle: 'El centro está muy frío para trabajar. Con más pasadas, lo de fuera lo paga primero.',
    cookedOutside: (time: string, at: string) =>
      `El centro está muy frío para trabajar, y fuera pasó de ${at} durante ${time}.`,
    tooHot: (time: string, at: string) => `Caliente por dentro, pero fuera pasó de ${at} durante ${time}.`,
    through: (after: string) => `Caliente por dentro a los ${after}, y fuera nunca demasiado.`,
  },
  water: {
    dry: (time: string) => `Hasta el cabello seco tiene algo de agua: hirvió ${time}.`,
    soaked: (time: string, share: string, hair: string, times: string) =>
      `El agua hirvió ${time} y se llevó ${share} del calor. En ese tiempo el cabello ${hair} paga con ${times} la estructura. Séquelo antes.`,
  },
  times: (likely: string, range: string) => `unas ${likely} veces (${range}, supuesto)`,
  /** The picture as one text. */
  said: (section: string, hair: string, plates: string, pressed: string) =>
    `Sección: ${section}. Cabello: ${hair}. Placas a ${plates}, ${pressed}.`,
  ends: (outside: string, middle: string) => `Al final: fuera ${outside}, centro ${middle}.`,
  waterLeft: (time: string, left: string) => `El agua hirvió ${time}, queda ${left}.`,
  estimate: 'Calculado, no medido: el cabello real varía. Decide el mechón.',
  whyTitle: 'De dónde sale este dibujo',
  why: {
    conduction: 'El calor entra desde ambas placas y se junta en el centro, en una línea.',
    boilingPoint: (at: string) =>
      `Aquí el agua hierve a ${at}, por la altura de la estación. Lo mojado se queda en eso.`,
    works: (at: string) => `Ni diez pasadas a ${at} en el cabello mismo hicieron mucho.`,
    tooHot: {
      poresRiseFast: (at: string) =>
        `Demasiado, húmedo o mojado: desde ${at} crecen rápido huecos diminutos en el cabello.`,
      cortexSoftens: (at: string) => `Demasiado, seco: desde ${at} se ablanda el interior del cabello.`,
    } satisfies Readonly<Record<TooHot, (at: string) => string>>,
    heats: 'Lo que cabello y agua necesitan para calentarse, y el agua para evaporarse.',
    water: (dry: string, damp: string, wet: string) =>
      `Agua en el cabello, de su peso seco: seco ${dry}, húmedo ${damp}, mojado ${wet}.`,
    bundle: (share: string) =>
      `El cabello llena el ${share} del espacio entre las placas, y lo tocan igual en todas partes.`,
    pause: (time: string) => `Entre dos pasadas van ${time}.`,
    sections: (fine: string, bunch: string) =>
      `Una sección mide de ${fine} (fina) a ${bunch} (manojo) de grueso.`,
    structure: (damp: string, wet: string) =>
      `Estructura: el mismo tiempo le quita al cabello húmedo ${damp}, y al mojado ${wet}, lo que le quita al seco.`,
  },
  leftOut:
    'Sin contar: vapor que lleva calor adentro, cabello que se aplasta, la última agua que el cabello retiene, placas que se enfrían. Una herramienta puede dar más o menos calor que el marcado.',
};

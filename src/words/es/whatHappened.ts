import type { CovariateName } from '../../../shared/judgement/chance/covariates';

/** What may lie behind a strand that broke, in words for the client: never blame, never certain. */
const canExplain: Readonly<Record<CovariateName, string>> = {
  helixLost: 'El calor y el decolorante de sus años se suman a lo largo, más que nada en las puntas.',
  tryptophanLost: 'El calor ha dejado sus marcas en este cabello.',
  ironedWet: 'El agua bajo una placa caliente hierve dentro del cabello y lo debilita.',
  scorched: 'Donde humeó u olió a quemado, hubo más calor del que el cabello aguanta.',
  bleaches: 'Cada decoloración se lleva su parte, y las partes se suman.',
  curlLost: 'El rizo se perdió en las puntas: han pasado por más que la raíz.',
  slowStretch: 'Mojado, tardó en volver o no volvió, ya antes de ponerle nada.',
  porous: 'Bebe rápido, así que una mezcla trabaja más fuerte en él.',
  breakage: 'Ya se rompía antes de hoy, sin ninguna mezcla.',
  veryHot: 'A esa temperatura el núcleo del cabello se ablanda.',
  smoothing: 'Una queratina y la plancha que la sella dejan menos con que trabajar.',
  relaxer: 'Un alisador o permanente abrió lo que une al cabello, y una mezcla lo abre otra vez.',
  strangeColour: 'Sales metálicas, o un color desconocido, pueden calentar y romper el cabello en la mezcla.',
};

export const whatHappened = {
  open: '¿Qué pasó?',
  title: (zone: string) => `¿Qué pasó? ${zone}`,
  broke: {
    gummy: (zone: string, minutes: string) => `El mechón de ${zone} quedó gomoso a los ${minutes}.`,
    broken: (zone: string, minutes: string) => `El mechón de ${zone} se rompió a los ${minutes}.`,
  },
  /** Better a strand than the head. */
  good: 'Fue un mechón, no su cabellera: para eso sirve.',
  explain: 'Qué puede explicarlo',
  canExplain,
  notKnown: 'Lo que ella no sabe se cuenta aquí como si fuera así.',
  nothing: 'Nada de lo que dijo ni de lo que se sintió lo explicaría.',
  elseTitle: 'Qué más puede causarlo',
  metal: 'Sales metálicas: tinte de caja, henna, restauradores, agua de pozo o piscina.',
  otherwise: [
    'Un tinte o decoloración que olvidó, o de antes de venir con ustedes.',
    'La propia mezcla: oxidante, proporción o tiempo distintos de lo anotado.',
  ],
  doTitle: 'Qué se puede hacer',
  doNow: ['Corte lo que falló: nada lo repara.', 'Deje que crezca, y no toque este largo.'],
  /** Only to whoever told of an iron. */
  doIroning: 'Desde ahora más seco y menos caliente: todo seco antes, una pasada, menos temperatura.',
  sure: 'Nadie ve dentro de un cabello. Esto puede explicarlo; nada de ello es seguro.',
};

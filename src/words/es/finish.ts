import type { planForm } from '../../../shared/records/forms/bowl';
import type { FormWords } from '../formWords';
import { figures } from './figures';

const plan: FormWords<typeof planForm> = {
  settingC: { ask: 'Plancha, no más de', hint: 'Lo más bajo que aún funcione.' },
  passes: {
    ask: 'Pasadas por sección',
    hint: `Una es lo mejor. Cada una dura ${figures.longestPass} como máximo.`,
  },
  restH: {
    ask: 'Nada caliente por, horas',
    short: 'Sin calor, horas',
    hint: `${figures.restHours} h tras el color como mínimo.`,
  },
  back: {
    ask: '¿Cuándo ha de volver?',
    short: 'Vuelve',
    options: {
      weeks4: 'En 4 semanas',
      weeks6: 'En 6 semanas',
      weeks8: 'En 8 semanas',
      weeks12: 'En 12 semanas',
      noDate: 'Sin fecha',
    },
  },
  skinNow: {
    ask: '¿Cómo está su piel ahora?',
    short: 'Piel ahora',
    hint: 'Pregúntele, y mire el contorno del cabello.',
    options: { calm: 'Tranquila', pink: 'Rosada, sin dolor', burns: 'Escuece, quema o se hincha' },
  },
  toolsNow: {
    ask: '¿Dónde están las planchas?',
    short: 'Planchas',
    options: { noneUsed: 'Ninguna se encendió', offCooling: 'Apagadas, enfriando' },
  },
  lateItching: {
    ask: 'Comezón tardía: ¿a quién llama?',
    short: 'Comezón tardía',
    hint: 'Una reacción puede venir días después.',
    options: { saidItBack: 'Lo repitió', toldHer: 'Se le dijo', notTold: 'No se le dijo' },
  },
  cardNow: {
    ask: '¿Cómo se lleva su tarjeta?',
    short: 'Tarjeta',
    hint: '«Impresa» abre la ventana de impresión. Para una foto se muestra enseguida.',
    options: {
      printed: 'Impresa',
      byHand: 'Escrita a mano',
      photographed: 'Foto',
      notWanted: 'No la quiere',
    },
  },
};

export const finish = {
  plan,
  title: 'A casa con un plan de calor',
  goThere: 'Terminar: el plan de calor',
  /** `passes`: how many of a section, null where it is one; a protectant is a must where the iron is that hot. */
  rules: (passes: string | null, isProtectantMust: boolean) => [
    'Primero, seco del todo. Jamás una herramienta para cabello mojado.',
    passes === null
      ? `Secciones finas, una pasada, en ${figures.longestPass} como máximo.`
      : `Secciones finas, ${passes} pasadas como máximo, cada una en ${figures.longestPass} como máximo.`,
    isProtectantMust ? 'Protector térmico cada vez: a ese calor es obligado.' : 'Protector térmico cada vez.',
    'Ni aerosol ni espray con alcohol cerca de placas calientes.',
    'El cabello quemado no se recupera: se corta.',
  ],
  lateItching: (whom: string) => `Comezón o sarpullido tardíos: llame a ${whom}; vea a un médico.`,
  /** Where the salon has set nobody to call. */
  lateItchingAlone: 'Comezón o sarpullido tardíos: consulte a un médico, o llame al número de emergencia.',
  toCall: 'Llamar a:',
  noNumber: 'No hay número puesto (Ajustes, El salón): escriba uno en su tarjeta.',
  emergency: 'Garganta, respiración o desmayo: el número de emergencia de inmediato.',
  whyThis: {
    weak: 'Una estimación: este cabello ha mostrado daño, o mucho de él no se sabe.',
    lower: 'Una estimación: menos que lo más caliente que dijo.',
    least: 'Una estimación: lo más bajo que hace algo; menos solo tarda más.',
    usual: 'Una estimación: no dijo ninguna herramienta de calor.',
  },
  /** Said beside a figure that is hotter than the suggested one: as the page's name, and at the figure itself. */
  hotter: 'Más caliente de lo sugerido',
  hotterWhy: (heat: string) => `Más caliente que los ${heat} sugeridos para este cabello.`,
  print: 'Imprimir su tarjeta',
  printHint: 'Una página A5. Mientras está abierta la ventana de impresión no suena nada.',
  mapTitle: 'Lo que hicieron el calor y la decoloración, según dijo: una estimación',
  card: 'Su plan de calor',
  cardTitle: (ticket: string) => `${ticket}: calor en casa`,
  noHotter: 'No más de',
  passes: 'Pasadas',
  rest: 'Sin calor por',
  back: 'Vuelva',
  hours: (hours: string) => `${hours} h`,
  openYet: 'Cuando estén las respuestas, su plan se ve aquí como una tarjeta.',
  ironsStayHot: (heat: string) => `Una plancha sigue a más de ${heat} de 6 a 8 min.`,
  give: 'Darle el plan y cerrar',
  done: 'Hoy:',
  bowl: (zone: string, line: string, bottle: string, minutes: string) =>
    `${zone} ${line}, ${bottle}, ${minutes}.`,
  hair: {
    line: (zone: string, told: readonly string[]) => `${zone}: ${told.join(', ')}.`,
    parts: {
      leftOut: 'hoy no se tocó',
      broken: 'un mechón se rompió',
      gummy: 'un mechón quedó gomoso',
      brokeOnHead: 'se rompió con el color puesto',
      snapped: 'se partió al tirar en mojado',
      toCut: 'se corta primero',
    },
  },
  burns:
    'Aún no a casa. Agua ya; garganta, respiración o desmayo: llame al 112 o a su número de emergencia local.',
  caution: 'Pegue el mechón probado en su tarjeta. Nadie se va con color puesto.',
};

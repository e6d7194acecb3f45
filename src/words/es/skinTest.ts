import type { skinTestForms } from '../../../shared/records/forms/skinTest';
import type { FormWords } from '../formWords';

const form: FormWords<Omit<(typeof skinTestForms)['SKIN_TEST_PUT_ON'], 'forVisit'>> = {
  ticket: {
    ask: '¿De quién es? Iniciales o ficha',
    short: 'De quién',
    hint: 'Como al empezar una clienta.',
  },
  line: {
    ask: '¿Qué línea de producto?',
    short: 'Línea',
    hint: 'Si la sabe: la prueba es solo de ese producto. Con decolorante, siga al fabricante.',
  },
  method: {
    ask: '¿Cómo se hace?',
    short: 'Método',
    options: {
      makersMethod: 'Método del fabricante',
      openApplication: 'Al aire, 45 min',
      unknown: 'No se sabe',
    },
  },
  site: {
    ask: '¿Dónde se pone?',
    short: 'Lugar',
    options: {
      behindEar: 'Tras la oreja',
      innerElbow: 'Pliegue del codo',
      forearm: 'Antebrazo',
      unknown: 'No se sabe',
    },
  },
  consent: {
    ask: '¿Acepta ella que se guarde?',
    short: 'Su registro',
    options: {
      notAsked: 'Se guarda; nadie le preguntó',
      kept: 'Se guarda; ella aceptó',
      thisVisit: 'Solo para esta visita',
    },
  },
  putOnAtMs: {
    ask: '¿Cuándo se puso?',
    short: 'Puesta',
    hint: 'A esta hora del día. Otra hora: escríbala.',
  },
  seen: {
    ask: '¿Qué se ve?',
    short: 'Visto',
    options: {
      notReadYet: 'Aún sin leer',
      nothing: 'Nada visible',
      reaction: 'Rojez, picazón, hinchazón',
    },
  },
};

/** The skin test: how it stands and what is next. */
export const skinTest = {
  form,
  title: 'Prueba de piel',
  notNeeded: 'Sus reglas locales no la piden para este servicio. Primero, las instrucciones del fabricante.',
  missing: 'Aún no hay. Póngala hoy; ella vuelve para que se lea.',
  waiting: (putOn: string, readable: string) => `Puesta el ${putOn}. Se puede leer desde el ${readable}.`,
  cameIn: (came: string, here: string, there: string) =>
    `Llegó de otra estación el ${came} · se lee aquí desde el ${here}; en su estación desde el ${there}.`,
  toRead: (putOn: string) => `Puesta el ${putOn}. Ya es hora: mire y diga qué se ve.`,
  clear: (putOn: string, lapses: string) => `Nada visible; puesta el ${putOn}. Cuenta hasta el ${lapses}.`,
  neverSafe: '“Nada visible” nunca significa seguro.',
  lapsed: (putOn: string) => `Vencida; puesta el ${putOn}. Ponga una nueva.`,
  positive: 'Reaccionó. A esta clienta no se le pone nada.',
  putOnNow: 'Poner ahora',
  earlier: 'Se puso antes',
  mayBeRead: (when: string) => `Se puede leer desde el ${when}.`,
  whenToRead: 'Cuándo leerla',
  keep: 'Guardarla: ella acepta',
  keepNow: 'Puesta: acepta que se guarde',
  keepForVisit: 'Solo esta visita',
  keepNowForVisit: 'Puesta: solo para esta visita',
  /** Said before either is tapped: what a no means. */
  consent:
    'Pregúntele: ¿se puede guardar con su ficha? Si no, cuenta hasta cerrar esta visita, y la próxima vez se pone otra. Una reacción la detiene igual.',
  consentByTicket:
    'Pregúntele: ¿se puede guardar con su ficha? Si no, empiécela como clienta y póngala allí.',
  placeAndLine: (site: string, line: string) => `${site}, ${line}`,
  place: (method: string, site: string, line: string) =>
    line === '' ? `${method}, ${site.toLowerCase()}.` : `${method}, ${site.toLowerCase()}, ${line}.`,
  /** What the line in a step leads to. */
  open: { putOn: 'Poner o anotar', read: 'Leerla', look: 'Verla' },
  notHers: 'No es su prueba',
  notHersTitle: (ticket: string) => `¿Otra clienta llamada ${ticket}?`,
  notHersLead: 'La prueba queda con la otra clienta. Entonces esta no tiene.',
  correct: 'Corregirla',
  leaveIt: 'Dejarla como está',
  correctTitle: '¿Prueba de piel mal anotada?',
  /** Beside the first steps, so that it is no surprise at the mix. */
  mixWaits: {
    missing: (when: string) => `Sin prueba de piel no hay mezcla. Si se pone ahora, se lee desde el ${when}.`,
    waiting: (when: string) => `Prueba de piel puesta: sin mezcla hasta leerla, desde el ${when}.`,
    waitingHere: (here: string, there: string) =>
      `Prueba de piel puesta: sin mezcla hasta leerla, aquí desde el ${here}; en su estación desde el ${there}.`,
    toRead: 'La prueba de piel ya se puede leer.',
    lapsed: (when: string) => `Prueba de piel vencida: no hay mezcla. Una nueva se lee desde el ${when}.`,
  },
  nothingSeen: 'Nada visible',
  reactionSeen: 'Reaccionó',
};

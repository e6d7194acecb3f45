/** What is said beside the questions. */
export const asking = {
  /** The plan is changed: which answer, and what that does to what was tested. */
  planToChange: {
    what: 'Toque en la lista lo que cambia: qué desea, hasta dónde, el largo. Los mechones del plan anterior ya no cuentan.',
    hints: {
      length: 'Como queda tras el corte. Los mechones de antes ya no cuentan.',
      service: '«Solo depósito», baño de brillo o matiz. Los mechones de antes ya no cuentan.',
    },
  },
  ageBand: (line: string) => ({
    ask: '¿Qué edad tiene?',
    short: 'Edad',
    options: { over: `${line} o más`, under: `Menos de ${line}` },
  }),
  missing: (count: string) => `Por responder o corregir: ${count}`,
  dampTitle: 'Húmedo: séquelo y vuelva a revisar.',
  damp: 'Toalla y aire frío, sin herramienta de calor: el agua oculta cómo está el cabello.',
  dryNow: 'Palpado otra vez: seco en todo',
  touch: {
    ask: '¿Está seco al tacto?',
    hint: 'En la nuca, los medios y las puntas.',
    all: 'Seco en todo',
    apart: 'Húmedo en parte',
  },
  glassDue:
    'Lo que ha llevado pide una prueba en vaso: un recorte se pone en peróxido antes de poner nada en la cabeza.',
  heatTitle: 'Calor hasta hoy',
  glassTitle: 'Prueba en vaso',
  todayTitle: 'Calor de hoy',
  glassNotDue: 'Lo que ha llevado no pide prueba en vaso.',
  glassDone: 'La prueba en vaso se leyó: no se vio nada.',
  shelfEmpty: 'Aún no hay protector en el estante. Escriba su nombre o agréguelo en ajustes.',
};

import { figures } from './figures';

/** Behind a strand that is no card like any other: in what way. */
const stamps = {
  broke: 'Se rompió',
  discarded: 'Descartado: no cuenta para nada',
  noOutcome: 'Aún sin resultado',
};

/** The same in a word, beside its name. */
const briefly = { broke: 'se rompió', discarded: 'descartado', noOutcome: 'sin resultado' };

/** How it left its mix; `why` is the word that was tapped. */
const endedBy = {
  takenOff: (why: string) => why,
  broke: () => 'Se rompió en la mezcla',
  discarded: (why: string) => `Descartado: ${why}`,
};

/** Behind a name: what she did. */
const did = {
  started: 'lo empezó',
  takenOff: 'lo quitó',
  broke: 'vio la rotura',
  discarded: 'lo descartó',
  recorded: (time: string) => `lo anotó ${time}`,
  decided: (time: string) => `decidió ${time}`,
};

/** The card a tested strand is taped to. */
export const strandCard = {
  open: 'Imprimir tarjeta de mechón',
  print: 'Imprimir esta tarjeta',
  whilePrinting: 'Una tarjeta A6. Con la ventana de impresión abierta nada llama: ciérrela pronto.',
  callsAt: (whose: string, time: string) =>
    `Ahora no: ${whose} llama a las ${time}, y con la ventana de impresión abierta nada llama. Imprima después.`,
  callsNow: (whose: string, since: string) =>
    `Ahora no: ${whose} espera desde las ${since}, y con la ventana de impresión abierta nada llama. Atiéndalo primero.`,
  title: (number: string) => `Mechón ${number}`,
  kinds: { full: 'mechón completo', short: 'mechón corto' },
  stamps,
  briefly,
  from: 'De',
  hairs: (count: string) => `${count} cabellos`,
  washedOff: 'restos lavados',
  mix: 'Mezcla',
  times: 'En la mezcla',
  fromTo: (from: string, to: string) => `${from}\u00a0a\u00a0${to}`,
  /** `counts` is null where it counts for nothing. */
  onFor: (on: string, counts: string | null) =>
    counts === null ? `puesto\u00a0${on}` : `puesto\u00a0${on}, cuenta\u00a0${counts}`,
  planned: (planned: string, set: string | null) =>
    set === null ? `previsto\u00a0${planned}` : `previsto\u00a0${planned}, luego\u00a0${set}`,
  why: 'Quitado por',
  endedBy,
  looks: 'Revisiones, m:ss',
  feels: { rough: 'áspero', stretchy: 'elástico de más' },
  lookAt: (at: string, level: string, feel: string | null) =>
    [`${at}\u00a0${level}`, ...(feel === null ? [] : [feel])].join('\u00a0'),
  missedAt: (at: string) => `${at}\u00a0sin hacer`,
  looksLeft: (count: string) => `(${count} no mostradas)`,
  noLook: 'ninguna',
  noLevel: 'sin nivel',
  level: 'Nivel',
  levels: (start: string | null, reached: string | null, wanted: string | null) =>
    [
      start === null ? [] : `desde ${start}`,
      reached === null ? [] : `llegó a ${reached}`,
      wanted === null ? [] : `deseado ${wanted}`,
    ]
      .flat()
      .join(' · '),
  undertone: 'Fondo',
  seenLast: (names: readonly string[]) => `${names.join(' a ')}, lo último visto`,
  toExpect: (names: readonly string[]) => names.join(' a '),
  /** Behind what was reckoned and not seen. */
  estimate: 'lo esperable: una estimación',
  outcome: 'Resultado',
  notRecorded: (takenBack: string | null) =>
    takenBack === null ? 'aún sin anotar' : `aún sin anotar; retirado: ${takenBack}`,
  fibre: 'Fibra',
  graded: (grade: string) => `cuenta como ${grade}`,
  stretch: 'Elasticidad',
  wentPast: `más de ${figures.lightPull}`,
  evenness: 'Uniformidad',
  decision: 'Decidido',
  nothingOn: (zone: string) => `nada en ${zone}`,
  by: 'Por',
  did,
  whoDid: (name: string, acts: readonly string[]) => `${name} ${acts.join(', ')}`,
  none: '–',
  tape: 'Pegue aquí el mechón probado',
};

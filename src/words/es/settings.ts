import type { settingsForm } from '../../../shared/records/forms/settings';
import type { FormWords } from '../formWords';
import { figures } from './figures';
import { sayCount } from './sayCount';

const questions: FormWords<typeof settingsForm> = {
  /** Each language in itself, and the question in both: it is looked for by whoever reads only one of them. */
  locale: { ask: 'Language · Idioma', options: { en: 'English', es: 'Español' } },
  temperature: { ask: 'Calor', options: { C: '°C', F: '°F' } },
  mass: { ask: 'Peso', options: { g: 'Gramos', oz: 'Onzas' } },
  length: { ask: 'Largo', options: { cm: 'cm', in: 'Pulgadas' } },
  altitude: { ask: 'Altura sobre el mar', hint: 'Más arriba, el agua hierve a menos grados.' },
  scaleStepG: { ask: 'La báscula muestra', options: { '0.1': '0,1 g', '0.5': '0,5 g', '1': '1 g' } },
  chairs: { ask: '¿Cuántas sillas?' },
  staff: {
    ask: '¿Quién trabaja aquí?',
    rows: { name: { ask: 'Nombre' } },
    rowTitle: (row) => `Persona ${row}`,
    addRow: 'Agregar una persona',
    removeRow: (row) => `Quitar la persona ${row}`,
  },
  figuresByStylist: {
    ask: '¿Puede el informe semanal nombrar a quien trabaja aquí?',
    hint: 'Da mechones, altos levantados, relojes pasados y revisiones sin hacer por nombre: cifras de personas, no de cabello. Avise antes a todas; la ley local puede pedir más.',
    options: { no: 'No, solo el salón entero', yes: 'Sí, se avisó a todas' },
  },
  shelf: {
    ask: '¿Qué hay en el estante?',
    hint: 'Se ofrece al preguntar por un mechón o un protector.',
    rows: {
      name: { ask: 'Línea de producto' },
      kind: {
        ask: 'Tipo',
        options: { lightener: 'Decolorante', colour: 'Color', spray: 'Protector térmico' },
      },
      ingredients: {
        ask: 'Lista de ingredientes',
        hint: 'Escrita o pegada del envase, una vez.',
      },
      makerSaysUpToC: { ask: 'El fabricante dice: hasta', hint: 'Solo una cifra del envase.' },
      useWithinMin: {
        ask: 'Mezclado, usar en',
        hint: `Los minutos del fabricante. Vacío: ${figures.useWithin}.`,
      },
      trial: {
        ask: 'Ensayo de calor',
        rows: {
          atMs: { ask: 'Cuándo' },
          bareS: { ask: 'Antebrazo sin nada' },
          sprayedS: { ask: 'Antebrazo rociado' },
        },
        rowTitle: (row) => `Ensayo ${row}`,
        addRow: 'Agregar un ensayo',
        removeRow: (row) => `Quitar el ensayo ${row}`,
      },
    },
    rowTitle: (row) => `Producto ${row}`,
    addRow: 'Agregar un producto',
    removeRow: (row) => `Quitar el producto ${row}`,
  },
  coverAfter: {
    ask: '¿Cuándo se cubre lo que dijeron las clientas?',
    hint: `Tras ese tiempo sin un toque, con aviso ${figures.coverWarning} antes. Relojes y alarmas quedan, por silla; un toque la quita.`,
    options: { never: 'Nunca', 2: '2 min', 3: '3 min', 4: '4 min', 5: '5 min' },
  },
  carried: {
    ask: '¿Puede un brillo que se repite valerse de su último mechón?',
    hint: `Solo depositar, la misma mezcla, nada nuevo, un mechón de hasta ${figures.carriedLapsesWeeks} semanas y la elasticidad de hoy, mojado. Si no, un mechón cada vez.`,
    options: { no: 'No, un mechón cada vez', yes: 'Sí' },
  },
  spoken: {
    ask: '¿Se dice una frase después de los pulsos?',
    hint: '“Silla 3: enjuague.” Sin nombre ni ficha: otras clientas la oyen.',
    options: { no: 'No', yes: 'Sí' },
  },
  contact: {
    ask: '¿A quién llama ella si le pica más tarde?',
    hint: 'Va en su tarjeta: un número, o donde el salón responde.',
  },
  ceilingPercent: {
    ask: 'La botella más fuerte aquí',
    hint: `El tope de la ley es ${figures.ceiling} (EU Reg. 1223/2009, Annex III). Esta casa puede bajarlo.`,
  },
  isAnyReactionAbsolute: {
    ask: '¿También la detiene un hormigueo que cesó al enjuagar?',
    hint: '“Cualquier reacción” (texto de etiqueta, Reg. 1223/2009, Annex III), al pie de la letra. Si no, juzga una persona con nombre: práctica común.',
    options: { no: 'No, juzga una persona', yes: 'Sí, la detiene' },
  },
  keeps: {
    ask: '¿Cuánto se guardan los registros cerrados y las pruebas de piel?',
    hint: 'La ley del lugar dice cuánto se deben y se pueden guardar. Pregunte allí: esta estación no la conoce.',
    options: { months: 'Tantos meses', noEnd: 'Sin fin' },
  },
  keepMonths: {
    ask: 'Meses que se guardan',
    hint: `Desde el día en que se cerró. ${figures.keepMonths} es elección nuestra: una queja puede llegar mucho después.`,
  },
  erasesByItself: {
    ask: '¿Y después?',
    hint: 'Un alto en pie nunca se borra solo, ni nada de una clienta abierta.',
    options: { no: 'Alguien lo borra', yes: 'Se borra solo' },
  },
  hasAgeLine: {
    ask: '¿Hay una edad mínima para colorear aquí?',
    hint: 'Etiqueta de la UE y el Reino Unido: no destinado a menores de 16 (Reg. 1223/2009, Annex III).',
    options: { yes: 'Sí', no: 'No' },
  },
  ageLine: { ask: 'La edad mínima' },
  skinTestWaitH: {
    ask: 'La prueba se lee tras, horas',
    hint: 'Protocolo de un fabricante: 48 (Cosmetics Europe 2023). Primero valen las instrucciones del fabricante.',
  },
  skinTestLapsesDays: {
    ask: 'La prueba vence tras, días',
    hint: `${figures.skinTestLapsesDays} es elección nuestra. El fabricante decide cada cuánto.`,
  },
  skinTestFor: {
    ask: '¿Qué servicios piden prueba de piel?',
    hint: 'La etiqueta pide una prueba previa (21 U.S.C. 361(a)); consejo: cada vez.',
    options: {
      never: 'Ninguno',
      lighten: 'Decolorar',
      liftAndDeposit: 'Aclarar y depositar',
      depositOnly: 'Solo depositar',
      gloss: 'Baño de brillo',
      tone: 'Matizar',
    },
  },
};

type Say = (question: string) => string;

/** What a figure or a name may be, with its unit. */
const ranges = {
  altitude: (low: string, high: string, unit: string) => `${low} a ${high} ${unit}.`,
  ceilingPercent: (low: string, high: string) => `${low} a ${high}.`,
  chairs: (low: string, high: string) => `${low} a ${high}.`,
  keepMonths: (low: string, high: string) => `${low} a ${high} meses.`,
  ageLine: (low: string, high: string) => `${low} a ${high} años.`,
  skinTestWaitH: (low: string, high: string) => `${low} a ${high} horas.`,
  skinTestLapsesDays: (low: string, high: string) => `${low} a ${high} días.`,
  staff: (people: string, letters: string) =>
    `Hasta ${people} nombres, de ${letters} letras cada uno como máximo.`,
  shelf: (products: string, letters: string) =>
    `Hasta ${products} productos, de ${letters} letras cada uno como máximo.`,
};

export const settings = {
  backup: {
    title: 'Copia y traslado',
    tile: 'Guardar toda la estación en un archivo, o traer uno',
    saveTitle: 'Guardar',
    saveHint: 'Cada clienta, prueba y ajuste de esta estación en un archivo.',
    save: 'Guardar la estación',
    bringTitle: 'Traer',
    bringHint:
      'A una estación sin clientas llega todo, también los ajustes. Junto a clientas llegan registros cerrados y pruebas de piel; los ajustes de aquí quedan.',
    bring: 'Elegir un archivo',
    /** Empty where nothing went. */
    gone: (entries: string) => (entries === '0' ? '' : ` Borrado allí y por eso también aquí: ${entries}.`),
    tests: (count: string) =>
      `Llegaron o siguieron: ${sayCount(count, 'prueba de piel', 'pruebas de piel')}.`,
    toldTwice: (tickets: string) => `${tickets}: aquí consta de otro modo; se guardan ambos.`,
    nothingNew: 'No trae nada nuevo.',
    open: (tickets: string) => `${tickets}: abierta allí, y allí queda.`,
    moved: (closed: string) => `Todo está aquí. Registros cerrados: ${closed}.`,
    care: 'El archivo nombra a las clientas por ficha: guárdelo donde solo el personal pueda leerlo. Trasladada la estación, retire la tableta vieja: una clienta abierta está en una sola estación.',
  },
  ranges,
  questions,
  title: 'Ajustes',
  sectionTitle: (section: string) => `Ajustes · ${section}`,
  all: 'Todos los ajustes',
  toShelf: 'El estante',
  unnamedSpray: 'Protector sin nombre',
  sections: {
    salon: 'El salón',
    staff: 'Quién trabaja aquí',
    shelf: 'El estante',
    units: 'Unidades y báscula',
    skinTest: 'Pruebas de piel',
    keeping: 'Qué se guarda',
    cover: 'Cubierta y PIN',
    rules: 'Reglas de la casa',
  },
  nobodyYet: 'nada aún',
  andMore: (names: string, more: string) => `${names} y ${more} más`,
  undo: {
    undo: 'Deshacer',
    /** What was saved last, and by whom; either may be empty. */
    last: (topics: string, by: string) => `Último cambio${topics && `: ${topics}`}${by && ` · ${by}`}`,
    done: 'Deshecho: vale otra vez lo de antes.',
  },
  /** What holds now, in one line; `say` answers one question. */
  summaries: {
    salon: (say: Say) => `${say('locale')} · ${say('chairs')} sillas · ${say('altitude')} sobre el mar`,
    staff: (say: Say) => say('staff'),
    shelf: (say: Say) => say('shelf'),
    units: (say: Say) => [say('temperature'), say('mass'), say('length'), say('scaleStepG')].join(' · '),
    skinTest: (say: Say) =>
      `se lee a las ${say('skinTestWaitH')} h, vence a los ${say('skinTestLapsesDays')} días`,
    keeping: (say: Say) =>
      say('keepMonths') === ''
        ? 'registros cerrados: sin fin'
        : `registros cerrados: ${say('keepMonths')} meses, luego ${say('erasesByItself').toLowerCase()}`,
    cover: (say: Say) => `se cubre tras: ${say('coverAfter').toLowerCase()}`,
    rules: (say: Say) =>
      [
        say('ageLine') === '' ? 'sin edad mínima' : `nadie menor de ${say('ageLine')}`,
        `ninguna botella de más de ${say('ceilingPercent')}`,
        `brillo repetido: ${say('carried').toLowerCase()}`,
      ].join(' · '),
  },
  altitudeIn: (unit: string) => `Altura sobre el mar, ${unit}`,
  altitudeTold: (figure: string, unit: string) => `${figure} ${unit}`,
  altitudeUnits: { m: 'metros', ft: 'pies' },
  note: 'Primero valen la ley local, las instrucciones del fabricante y el criterio de una profesional con licencia.',
  save: 'Guardar',
  saved: 'Guardado. Vale para cada clienta desde ahora.',
  unsaved: 'Aún sin guardar.',
};

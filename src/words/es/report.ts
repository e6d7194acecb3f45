import type { ReportFault } from '../../../shared/records/report/reportFault';
import type { Place } from '../../../shared/records/report/reportFile';
import { day } from './day';
import { general } from './general';
import { rules } from './rules';
import { sayCount } from './sayCount';
import { settings } from './settings';

const outOfReport = 'Queda fuera de estas cifras.';

/** Why a whole file is left out, and what helps. */
const files: Readonly<Record<(ReportFault & { of: 'file' })['why'], string>> = {
  notRead: 'No se puede leer. ¿Está ahí, y puede usted abrirlo?',
  empty: 'No tiene nada. Guárdelo otra vez en la estación.',
  anotherProgram: 'No es un archivo de estación. Dele lo que hizo “Guardar JSON” o “Guardar la estación”.',
  table: 'Es la tabla para hojas de cálculo, que omite toques. Dele el JSON de los mismos días.',
  notText: 'Otro programa lo guardó con sus propias letras. Cópielo otra vez, sin abrirlo en el camino.',
  cutOff: 'Termina antes de tiempo. Cópielo o guárdelo otra vez.',
  damaged: 'Se dañó o cambió desde que se guardó. Cópielo o guárdelo otra vez.',
  newer: 'Es de una edición más nueva de la estación. Ponga al día esta copia del programa.',
  beyondDays:
    'Dice que se guardó en un momento fuera de toda fecha. Ponga bien el reloj de su tableta y guárdelo otra vez.',
};

/** "hall.backup, línea 12", "bar.json, consulta 3 (Q.F.)". */
function sayPlace(name: string, place: Place | null): string {
  if (place === null) return name;
  if ('line' in place) return `${name}, línea ${place.line}`;
  return `${name}, consulta ${place.consultation}${place.ticket === null ? '' : ` (${place.ticket})`}`;
}

/** " de Q.F.", where the place does not say so already. */
const sayWhose = ({ place, ticket }: { readonly place: Place; readonly ticket: string | null }): string =>
  'line' in place && ticket !== null ? ` de ${ticket}` : '';

function sayFault(fault: ReportFault): string {
  switch (fault.of) {
    case 'file':
      return `${sayPlace(fault.name, fault.place)}: ${files[fault.why]}`;
    case 'record': {
      const where = sayPlace(fault.name, fault.place);
      if (fault.entry === null) return `${where}: No es un registro que esta edición conozca. ${outOfReport}`;
      const whose = sayWhose(fault);
      return `${where}: El registro${whose} no cuadra: la entrada ${fault.entry} no pudo tocarse así. ${outOfReport}`;
    }
    case 'beyondDays':
      return `${sayPlace(fault.name, fault.place)}: La entrada ${fault.entry} del registro${sayWhose(fault)} dice un momento fuera de toda fecha. ${outOfReport}`;
    case 'fromLater':
      return `${sayPlace(fault.name, fault.place)}: La entrada ${fault.entry} del registro${sayWhose(fault)} es de más de un día después de guardarse el archivo: un reloj estaba mal, no se fíe de sus días.`;
    case 'differing': {
      const places = fault.places.map(({ name, place }) => sayPlace(name, place)).join('; ');
      return `${places}: Cuentan de otro modo la misma consulta de ${fault.ticket}. No se cuenta de ninguno: pregunte a quien estuvo con ella.`;
    }
    case 'mixed':
      return `${fault.invented.join(', ')}: del salón inventado, y ${fault.real.join(', ')} no. Dé una sola clase a la vez.`;
    case 'names':
      return `${fault.names.join(', ')}: Esa estación no deja que las cifras nombren a quien trabaja allí. Si se avisó a todas, responda que sí a “${settings.questions.figuresByStylist.ask}” en Ajustes, ${settings.sections.staff}; cuando se haya tocado algo más allí, guarde el archivo otra vez.`;
  }
}

/** The report of a week for owner and trainer, on paper or in a terminal. */
export const report = {
  title: (from: string, to: string) => (from === to ? `Informe de ${from}` : `Informe, ${from} a ${to}`),
  invented: 'INVENTADO: del salón hecho para mirar. Aquí no hay ninguna clienta real.',
  note: 'Una regla, un reloj pasado o una revisión sin hacer es una pregunta sobre cómo va el día antes que sobre una persona. Las probabilidades son estimaciones; decide el mechón. Primero valen la ley local, las instrucciones del fabricante y el criterio de una profesional con licencia.',
  daysBy: (zone: string) => `Días según ${zone}.`,
  ofThisMachine: (zone: string) => `${zone}, la zona de este equipo, pues los archivos no dan ninguna`,
  offsetsDiffer: (offsets: string) =>
    `Los relojes de los archivos no coincidían (${offsets}): --zone lo decide.`,
  sayFault,
  leftOut: 'Fuera o en duda',
  clients: {
    title: 'Clientas',
    heads: ['Terminó', 'Clientas'],
    all: 'todas con quienes se hizo algo',
    endings: day.endings,
    open: 'aún abiertas, o cerradas después de estos días',
    nobody: 'Nadie en estos días.',
  },
  strands: {
    title: 'Mechones',
    heads: ['Contado como', 'Mechones'],
    grades: day.outcomeCount,
    none: day.nothingTested,
  },
  chance: {
    title: 'Probabilidad dicha y lo visto',
    heads: [
      'Dicha',
      'En promedio',
      'Mechones',
      'Rotos',
      'Parte que se rompió',
      'Parte real, 19 de cada 20 veces',
    ],
    band: (from: string, to: string) => `${from} a ${to}`,
    hint: 'Mechones de decoloración y aclarado; gomoso cuenta como roto. Lo dicho es la estimación antes de aprender nada. Pocos mechones dicen poco.',
    score: (ours: string, ofBaseRate: string) =>
      `Error cuadrático medio (Brier): ${ours}. Decir lo mismo de cada mechón erraría en ${ofBaseRate}.`,
    none: 'En estos días no terminó ningún mechón que enseñe.',
  },
  late: {
    title: day.late,
    heads: ['Clienta', 'Reloj', 'De más, min:s'],
    clock: (kind: 'strand' | 'head', zone: string | null) =>
      day.lateBy(kind, zone === null ? '' : general.zones[zone as keyof typeof general.zones]),
    none: day.nothingLate,
  },
  missed: {
    title: day.missed,
    heads: ['Clienta', 'Revisiones'],
    none: day.nothingMissed,
  },
  rules: {
    title: 'Altos',
    heads: ['Regla', 'Detenidas', 'Levantado para', ''],
    what: (rule: keyof typeof rules) => rules[rule].what,
    often: 'levantado en más de la mitad: puede estar mal escrita',
    none: 'Ninguna regla detuvo a nadie.',
  },
  told: {
    title: day.told,
    heads: ['Clienta', 'En qué quedó'],
    came: { recorded: 'anotado', none: 'no era', open: day.toldOpen },
    none: 'No se dijo nada.',
  },
  open: {
    title: day.open,
    heads: ['Clienta', 'Cómo estaba al guardar su archivo'],
    how: { ...day.holds, parked: day.parked, carriesOver: day.carriesOver },
    none: day.nothingOpen,
  },
  people: {
    title: 'Por nombre',
    heads: [
      'Nombre',
      'Clientas',
      'Sanos',
      'Ásperos',
      'Gomosos',
      'Rotos',
      'Relojes pasados',
      'Revisiones sin hacer',
      'Altos levantados',
    ],
    hint: 'Mechones, relojes y revisiones son de las clientas que atienden; un alto levantado, de quien lo levantó. Pocos de algo dicen poco.',
    none: 'Nadie en estos días.',
  },
  files: {
    title: 'Archivos leídos',
    heads: ['Archivo', 'Qué', 'Consultas'],
    kinds: { records: 'registros de días', backup: 'copia de una estación' },
    unread: (count: string) => `${sayCount(count, 'registro', 'registros')} que su estación no pudo leer`,
    again: (count: string) => `En más de un archivo, contado una vez: ${count}.`,
    erased: (count: string) => `Borrado en una estación, queda fuera: ${count}.`,
    outside: (count: string) => `De otros días: ${count}.`,
  },
  calls: {
    usage: `npm run report -- ARCHIVO… [--from 2026-11-16] [--to 2026-11-22] [--zone Europe/Lisbon] [--lang es] [--by-stylist] [--html PÁGINA.html] [--json]

Lee lo que guardaron las estaciones (“Guardar JSON” de un día o de varios, y copias de toda una estación), de
cualquier número de tabletas, y dice en qué quedó la semana. La misma consulta en dos archivos cuenta una vez.

  --from, --to    días como AAAA-MM-DD; si no, los siete días hasta la entrada más nueva que no pase de un día
                  después de guardarse su archivo
  --zone          la zona horaria del salón, que separa los días; si no, la que diga el archivo más nuevo
  --lang          en o es; si no, en
  --by-stylist    también por nombre, donde los ajustes de cada archivo lo permitan
  --html ARCHIVO  escribe además el informe como una página para papel (A4 o Letter)
  --json          da las cifras como JSON en lugar de texto
  --help          esto

Termina con 0; con 1 si algo quedó fuera, rechazado o en duda (se nombra); y con 2 si se llamó mal.`,
    noFiles: '¿Qué archivos? Nombre al menos uno.',
    badDay: (option: string, given: string) => `${option} lleva un día como 2026-11-16, no “${given}”.`,
    backwards: (from: string, to: string) => `Los días terminan antes de empezar: ${from} a ${to}.`,
    badLanguage: (given: string) => `No hay informe en “${given}”. Se escribe en en o es.`,
    badZone: (given: string) => `No hay zona horaria “${given}”. Se escribe como Europe/Lisbon.`,
    notWritten: (name: string, why: string) => `${name}: No se pudo escribir la página (${why}).`,
    isRead: (name: string) =>
      `${name}: Este archivo se lee, y la página ocuparía su lugar. Dele otro nombre a la página.`,
    isOfOthers: (name: string) =>
      `${name}: Ahí hay otra cosa que ningún informe escribió. Dele otro nombre a la página.`,
    written: (name: string) => `Escrito: ${name}`,
  },
};

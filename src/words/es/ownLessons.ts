import type { Failing } from '../../../machines/practice/passing';
import type { LessonFault } from '../../../machines/practice/readLesson';
import { practice } from './practice';

const faults: Readonly<Record<LessonFault['code'], string>> = {
  notJson: 'está cortado o no es JSON',
  malformed: 'no es como dice la clave del archivo',
  notTrueAnswer: 'no es una respuesta que tome esta pregunta',
  noSuchQuestion: 'no es una pregunta que se haga',
  neverTrue: 'ni preguntada más a fondo dice lo que es cierto',
};

/** Lessons of the salon's own, by a file. */
export const ownLessons = {
  way: 'Lecciones propias',
  title: 'Lecciones propias',
  kicker: 'Solo clientas inventadas: la historia real de nadie',
  lead: 'Guarde una lección, cambie su texto con la clave al lado, dele un id propio y tráigala.',
  own: 'propia',
  save: 'Guardar JSON',
  remove: 'Borrar',
  undo: (title: string) => `Traer de vuelta “${title}”`,
  bring: 'Traer una lección',
  key: 'Guardar la clave',
  saved: (name: string) => `Guardada como ${name}`,
  came: (title: string) => `“${title}” ya está aquí.`,
  page: (page: string, pages: string) => `Página ${page} de ${pages}`,
  notRead: 'No se puede leer este archivo. Elíjalo otra vez.',
  notKept: 'No se pudo guardar. Pruebe otra vez.',
  refused: {
    notJson: 'No se tomó: el archivo está cortado o no es JSON.',
    otherFile: 'No se tomó: no es una lección, sino el archivo de otra cosa.',
    newerVersion: 'No se tomó: lo escribió una edición más nueva de esta estación.',
    unmarked: (places: string) =>
      `No se tomó: una afirmación no tiene porqué o no tiene fuente. Mire ${places}.`,
    faults: (places: string) => `No se tomó: ${places}.`,
    sameId: (title: string) => `No se tomó: “${title}” tiene este id y dice otra cosa. Dele otro id.`,
    cannotBePassed: (why: string) => `No se tomó: ni quien lo hace todo bien puede aprobarla. ${why}`,
  },
  faultAt: (path: string, code: LessonFault['code']) =>
    `${path === '' ? 'el archivo' : path}: ${faults[code]}`,
  sayFailing: (failing: Failing): string => practice.failedBy[failing],
};

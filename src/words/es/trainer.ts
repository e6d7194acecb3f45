import type { SittingResult } from '../../../machines/practice/tellTrainees';
import { sayCount } from './sayCount';

const results: Readonly<Record<SittingResult, string>> = {
  passed: 'Aprobada',
  notPassed: 'No aprobada',
  leftOff: 'Abandonada',
  underWay: 'En curso',
  notTold: 'Ya no se puede contar: la lección cambió desde entonces.',
};

/** Who learned what, for whoever trains. */
export const trainer = {
  title: 'Formación',
  lead: 'Quién aprendió. Nada de clientas; sí los nombres de quienes aprenden: avíseles.',
  reckoning: 'Calculando cómo les fue …',
  nobodyYet: 'Aquí nadie ha hecho aún una lección.',
  sittings: (count: string) => sayCount(count, 'lección hecha', 'lecciones hechas'),
  results,
  withScore: (result: string, points: string) => `${result} · ${points} de 100`,
  goneLesson: (id: string) => `${id} (cambió, o ya no está)`,
  rowOf: (by: string, how: string, when: string) => `${by} · ${how} · ${when}`,
  page: (page: string, pages: string) => `Página ${page} de ${pages}`,
  misses: 'Lo más pasado por alto',
  nothingMissed: 'Nada se pasó por alto en una lección llevada hasta el final.',
  redFlag: (flag: string) => `Su cabello: ${flag}.`,
  missOf: (missed: string, of: string) => `${missed} de ${of}`,
  missesWhat:
    'De las lecciones que lo tenían y llegaron a su final. Una lección abandonada no cuenta en ninguna.',
  further: (count: string) => (count === '1' ? 'Y otra más.' : `Y ${count} más.`),
  save: 'Guardar como tabla',
  saved: (name: string) => `Guardado como ${name}`,
};

/** The invented salon: offered by an empty station, marked wherever it is shown. */
export const demo = {
  offer: 'Vea un salón inventado',
  offerHint: 'Nadie en él es real. Se quita con un toque sostenido y no deja nada.',
  loading: 'Preparando el salón inventado …',
  failed: 'No se pudo preparar el salón inventado. No queda nada de él.',
  mark: 'DEMO',
  ribbon: 'Salón inventado. No empiece aquí a una clienta real.',
  leave: 'Salir de la demo',
  leaveTitle: '¿Salir del salón inventado?',
  leaveWhat: 'Se va todo lo que hay en él, también lo que probó. La estación queda tan vacía como antes.',
  remove: 'Quitar la demo',
  removing: 'Quitando …',
  notRemoved: 'No se pudo quitar el salón inventado: sigue aquí. Mantenga una vez más.',
  windowTitle: (title: string) => `DEMO · ${title}`,
  title: 'Strandproof',
};

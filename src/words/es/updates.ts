/** A newer build of the station, and which one runs. */
export const updates = {
  /** A version and the eight digits of its build, as one name. */
  name: (version: string, digits: string) => (digits === '' ? version : `${version} (${digits})`),
  unnamed: 'una que no dice cuál es',
  offer: (next: string, now: string) => `Hay una versión más nueva: ${next}. Esta tableta usa ${now}.`,
  take: 'Actualizar',
  taking: 'Actualizando …',
  later: 'Más tarde',
  inUse: 'Otra ventana de esta tableta está en uso. Llévela a la barra o ciérrela y toque otra vez.',
  notTaken: 'No se pudo poner la versión nueva. Esta sigue: toque otra vez o encienda de nuevo la tableta.',
};

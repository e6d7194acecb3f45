import type { Zone } from '../../../shared/records/zones';

const zones: Readonly<Record<Zone, string>> = { roots: 'raíces', lengths: 'medios', ends: 'puntas' };

/** What stands on more than one screen. */
export const general = {
  zones,
  next: 'Siguiente',
  signed: 'Firmado',
  doNotSign: 'Espere, no firmar',
  signedHint: 'Se guarda con el nombre y las palabras.',
  back: 'Atrás',
  bar: 'La barra',
  cancel: 'Cancelar',
  close: 'Cerrar',
  why: '¿Por qué?',
  whyOf: (title: string) => `¿Por qué? ${title}`,
  dontKnow: 'No se sabe',
  more: 'Más preguntas',
  less: 'Menos preguntas',
  moreForClient: 'Más para ella',
  reaction: 'Ardor o reacción',
  holdHint: 'Mantenga',
  keepHolding: 'Siga así',
  confirmHold: (label: string) => `Confirmar: ${label}`,
  confirmWithin: 'Faltó mantenerlo más. Manténgalo, o toque «Confirmar» mientras está aquí.',
  chairAndTicket: (chair: string, ticket: string) => `Silla ${chair} · ${ticket}`,
  estimate: 'Una estimación. El mechón decide.',
};

import type { Zone } from '../../../shared/records/zones';

const zones: Readonly<Record<Zone, string>> = { roots: 'roots', lengths: 'lengths', ends: 'ends' };

/** What stands on more than one screen. */
export const general = {
  zones,
  next: 'Next',
  signed: 'Signed',
  doNotSign: 'Wait, do not sign',
  signedHint: 'It is kept with the name and the words.',
  back: 'Back',
  bar: 'The bar',
  cancel: 'Cancel',
  close: 'Close',
  why: 'Why?',
  whyOf: (title: string) => `Why? ${title}`,
  dontKnow: "Don't know",
  more: 'More questions',
  less: 'Fewer questions',
  moreForClient: 'More for this client',
  reaction: 'Burning or reaction',
  holdHint: 'Press and hold',
  keepHolding: 'Keep holding',
  confirmHold: (label: string) => `Confirm: ${label}`,
  confirmWithin: 'Not held long enough. Hold it, or press “Confirm” while it is here.',
  chairAndTicket: (chair: string, ticket: string) => `Chair ${chair} · ${ticket}`,
  estimate: 'An estimate. The strand decides.',
};

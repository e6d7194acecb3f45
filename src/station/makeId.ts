const alphabet = 'abcdefghijkmnpqrstuvwxyz23456789';

/** Twelve letters and digits that are not mistaken for each other: 60 bits of chance. */
export const makeId = (): string =>
  [...crypto.getRandomValues(new Uint8Array(12))].map((byte) => alphabet[byte % alphabet.length]).join('');

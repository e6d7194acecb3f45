import { PIN_ROUNDS } from '../../../shared/pin/pinRecord';

/** Bytes of salt, as many as OWASP and NIST SP 800-132 ask for (from memory: 128 bits). */
const SALT_BYTES = 16;

const toHex = (bytes: Uint8Array): string =>
  [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
const fromHex = (hex: string): Uint8Array<ArrayBuffer> =>
  Uint8Array.from({ length: hex.length / 2 }, (_, index) =>
    Number.parseInt(hex.slice(index * 2, index * 2 + 2), 16),
  );

/** PBKDF2 with HMAC-SHA-256 of the browser, 32 bytes as hex. */
async function derive(pin: string, salt: string, rounds: number): Promise<string> {
  const typed = await crypto.subtle.importKey('raw', new TextEncoder().encode(pin), 'PBKDF2', false, [
    'deriveBits',
  ]);
  const bits = await crypto.subtle.deriveBits(
    { name: 'PBKDF2', hash: 'SHA-256', salt: fromHex(salt), iterations: rounds },
    typed,
    256,
  );
  return toHex(new Uint8Array(bits));
}

/** How a PIN is checked: a fresh salt, the rounds of today, and what comes out. */
export async function makeVerifier(
  pin: string,
  rounds: number = PIN_ROUNDS,
): Promise<{ salt: string; rounds: number; key: string }> {
  const salt = toHex(crypto.getRandomValues(new Uint8Array(SALT_BYTES)));
  return { salt, rounds, key: await derive(pin, salt, rounds) };
}

/** Is it this one? Every digit of the key is looked at, whichever the first wrong one is. */
export async function isRightPin(
  pin: string,
  { salt, rounds, key }: { readonly salt: string; readonly rounds: number; readonly key: string },
): Promise<boolean> {
  const derived = await derive(pin, salt, rounds);
  let differs = derived.length ^ key.length;
  for (let index = 0; index < derived.length; index += 1)
    differs |= derived.charCodeAt(index) ^ key.charCodeAt(index);
  return differs === 0;
}

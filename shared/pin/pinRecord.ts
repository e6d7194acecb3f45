import * as v from 'valibot';

/** A PIN is so many digits. Common practice, no source. */
export const PIN_DIGITS = 6;

/** Rounds of PBKDF2 with HMAC-SHA-256 for a PIN that is set now. Published: OWASP Password Storage Cheat Sheet (600,000). */
export const PIN_ROUNDS = 600_000;

/** A wrong PIN waits so long at the most, ms. Assumed because all million PINs then take nine years, and an owner waits five minutes. */
export const ASSUMED_LONGEST_PIN_WAIT_MS = 300_000;

/**
 * So long after somebody said that the PIN is forgotten it falls, ms. Assumed because whoever knows it comes to a salon
 * within a day that it is open, and one who asks at night waits for the next evening.
 */
export const ASSUMED_FORGOTTEN_PIN_MS = 24 * 3_600_000;

const hex = (bytes: number) => v.pipe(v.string(), v.regex(new RegExp(`^[0-9a-f]{${bytes * 2}}$`)));
const moment = v.pipe(v.number(), v.safeInteger());

/**
 * What a tablet keeps of its PIN: how it is checked, with the rounds, so that they can be raised, and how often it was
 * wrong. It lies beside the records and goes nowhere with them. Rounds: read up to ten million (ASSUMED, only to keep
 * rubbish out).
 */
export const pinRecordSchema = v.strictObject({
  salt: hex(16),
  rounds: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(10_000_000)),
  key: hex(32),
  /** Wrong ones since the last right one, and when the last of them was. */
  wrong: v.pipe(v.number(), v.safeInteger(), v.minValue(0)),
  wrongAtMs: moment,
  /** When somebody said that it is forgotten; null while nobody has. */
  forgottenAtMs: v.nullable(moment),
});

export type PinRecord = Readonly<v.InferOutput<typeof pinRecordSchema>>;

/** ms from a wrong PIN to the next try: a second, doubled by each further one; common practice, no source. */
export const findPinWaitMs = (wrong: number): number =>
  wrong === 0 ? 0 : Math.min(ASSUMED_LONGEST_PIN_WAIT_MS, 1000 * 2 ** Math.min(wrong - 1, 30));

/** ms that are left to wait at this moment; all of it where the clock stands before the wrong one. */
export const findPinWaitLeftMs = ({ wrong, wrongAtMs }: PinRecord, nowMs: number): number =>
  Math.max(0, findPinWaitMs(wrong) - Math.max(0, nowMs - wrongAtMs));

/** When it falls, as forgotten; null while nobody said so. */
export const findPinFallsAtMs = ({ forgottenAtMs }: PinRecord): number | null =>
  forgottenAtMs === null ? null : forgottenAtMs + ASSUMED_FORGOTTEN_PIN_MS;

/** The same for a clock that was set back: what was stamped later than now is stamped now, so no wait gets shorter and none is for ever. */
export const settlePinClock = (record: PinRecord, nowMs: number): PinRecord => ({
  ...record,
  wrongAtMs: Math.min(record.wrongAtMs, nowMs),
  forgottenAtMs: record.forgottenAtMs === null ? null : Math.min(record.forgottenAtMs, nowMs),
});

/** Six digits, as typed. */
export const isPin = (text: string): boolean => /^\d{6}$/.test(text);

/** One digit six times, or six in their order: what is tried first. */
export const isEasyPin = (pin: string): boolean =>
  /^(\d)\1{5}$/.test(pin) || '0123456789'.includes(pin) || '9876543210'.includes(pin);

import * as v from 'valibot';
import { accept, type Result, refuse } from '../../../shared/result';
import { saidSchema } from './answers';
import type { ReplicaFailure } from './replica';

/**
 * So much is taken at one go, bytes. Assumed because a hundred records are some 3 MB, and a tablet holds this much of text
 * without trouble; what is more is asked for in smaller pieces.
 */
export const ASSUMED_TAKEN_MAX_BYTES = 24_000_000;

/** An answer is waited for so long, ms. Assumed because a salon's own server answers within a second, and nobody waits for it. */
export const ASSUMED_ANSWER_WAIT_MS = 30_000;

/** Why a question has no answer. `tooLarge`: what was sent or what came is more than is taken at one go. */
export type AskFailure = ReplicaFailure | 'tooLarge';

/** Where questions go, and by what they are carried. */
export interface AskParts {
  /** Ends with a slash: `/replica/` of the page's own origin. */
  readonly base: string;
  readonly fetch: typeof globalThis.fetch;
  readonly maxBytes?: number;
  readonly waitMs?: number;
}

/** The whole text; null as soon as it is more than may be, without reading on. */
async function readAtMost(answer: Response, maxBytes: number): Promise<string | null> {
  const reader = answer.body?.getReader();
  if (reader === undefined) return '';
  const decoder = new TextDecoder();
  let text = '';
  let size = 0;
  for (let piece = await reader.read(); !piece.done; piece = await reader.read()) {
    size += piece.value.byteLength;
    if (size > maxBytes) {
      await reader.cancel();
      return null;
    }
    text += decoder.decode(piece.value, { stream: true });
  }
  return text + decoder.decode();
}

function parse(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** What is said instead of an answer: by the station's own server, or by whatever else stands there. */
function nameSaid(status: number, text: string | null): AskFailure {
  const said = v.safeParse(saidSchema, parse(text ?? ''));
  if (said.success) return said.output.error === 'gone' ? 'silent' : 'turnedAway';
  return status >= 500 ? 'gone' : 'strange';
}

/** A hand that asks the database through the station's own server. */
export type Ask = <S extends v.GenericSchema>(
  path: string,
  schema: S,
  body?: unknown,
) => Promise<Result<v.InferOutput<S>, AskFailure>>;

/**
 * Asks one thing, and takes an answer only in the shape that is expected. Never throws and never waits for ever.
 * Checked in tests/src/storage/replica/poison.test.ts.
 */
export const makeAsk =
  (
    { base, fetch, maxBytes = ASSUMED_TAKEN_MAX_BYTES, waitMs = ASSUMED_ANSWER_WAIT_MS }: AskParts,
    stop: AbortSignal,
  ): Ask =>
  async (path, schema, body) => {
    const signal = AbortSignal.any([stop, AbortSignal.timeout(waitMs)]);
    const how = body === undefined ? {} : { method: 'POST', body: JSON.stringify(body) };
    const headers = { Accept: 'application/json', 'Content-Type': 'application/json' };
    try {
      const answer = await fetch(base + path, {
        ...how,
        headers,
        signal,
        redirect: 'error',
        cache: 'no-store',
      });
      if (answer.status === 404 || answer.status === 204) return refuse('off');
      if (answer.status === 413) return refuse('tooLarge');
      const text = await readAtMost(answer, maxBytes);
      if (!answer.ok) return refuse(nameSaid(answer.status, text));
      if (text === null) return refuse('tooLarge');
      const read = v.safeParse(schema, parse(text));
      return read.success ? accept(read.output) : refuse('strange');
    } catch {
      return refuse(stop.aborted ? 'stopped' : 'gone');
    }
  };

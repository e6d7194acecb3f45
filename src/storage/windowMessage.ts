import * as v from 'valibot';
import type { Json } from './json';

const name = v.string();
const seq = v.pipe(v.number(), v.integer(), v.minValue(0));
const entry = v.custom<Json>((value) => value !== undefined, 'an entry is missing');

const messageSchema = v.variant('kind', [
  /** A watcher: what is there? */
  v.object({ kind: v.literal('hello') }),
  /** A watcher: may I have the writer's place? */
  v.object({ kind: v.literal('askTakeOver') }),
  /** The writer: all there is, but for the logs named, which are told one by one. */
  v.object({
    kind: v.literal('all'),
    logs: v.map(name, v.array(entry)),
    later: v.optional(v.array(name), []),
  }),
  /** A watcher: what is in this log that is told by itself? */
  v.object({ kind: v.literal('askLater'), name }),
  /** The writer: this is in it, each entry as its JSON. */
  v.object({ kind: v.literal('later'), name, texts: v.array(v.string()) }),
  /** The writer: this is in both copies now. */
  v.object({ kind: v.literal('acknowledged'), name, seq, entry }),
  /** The writer: this log is no longer among the logs. */
  v.object({ kind: v.literal('dropped'), name }),
]);

/** What windows of one station say to each other. */
export type WindowMessage = v.InferOutput<typeof messageSchema>;

/** What did the other window say? null when it is none of these, as from a window of another edition. */
export const readMessage = (data: unknown): WindowMessage | null => {
  const parsed = v.safeParse(messageSchema, data);
  return parsed.success ? parsed.output : null;
};

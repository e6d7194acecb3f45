/** What a person asked for, or why it was refused. Refusals a person can cause are values, not exceptions. */
export type Result<T, E> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly error: E };

/** Wraps what was asked for. */
export const accept = <T>(value: T): { readonly ok: true; readonly value: T } => ({ ok: true, value });

/** Wraps the reason for a refusal. */
export const refuse = <E>(error: E): { readonly ok: false; readonly error: E } => ({ ok: false, error });

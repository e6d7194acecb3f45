/** The name of a document, as `documents/document.ts` writes it: its kind, its record, the digest of its content. */
const shape = /^(?:(?:consultation|skinTest):([a-z0-9]{4,32}):|erased:)[0-9a-f]{64}$/;

/** Is this the name of a document, and of which record? null: of an erasing; undefined: no name at all. */
export function readRecordId(id: string): string | null | undefined {
  const read = shape.exec(id);
  return read === null ? undefined : (read[1] ?? null);
}

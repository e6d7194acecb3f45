/** Which of the four marks a source begins with, and what stands behind it. */
export type MarkKind = 'published' | 'practice' | 'memory' | 'assumed' | 'exact';

const starts: Readonly<Record<MarkKind, string>> = {
  published: 'published: ',
  practice: 'common practice, no source',
  memory: 'from memory: ',
  assumed: 'assumed: ',
  exact: 'exact: ',
};

const kinds = Object.keys(starts) as readonly MarkKind[];

/** What kind of number is this, and where does it stand? The source is not translated: it is a citation. */
export function readMark(mark: string): { readonly kind: MarkKind; readonly source: string } {
  const kind = kinds.find((each) => mark.startsWith(starts[each]));
  if (kind === undefined) return { kind: 'assumed', source: mark };
  return { kind, source: mark.slice(starts[kind].length).replace(/^: /, '') };
}

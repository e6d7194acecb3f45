import { describe, expect, it } from 'vitest';
import { digest } from '../../../../shared/records/documents/canonical';
import { readDocument } from '../../../../shared/records/documents/document';
import { world } from './world';

const carried = (document: unknown): unknown => JSON.parse(JSON.stringify(document));
const [first] = world;
if (first?.kind !== 'consultation') throw new Error('no consultation in this world');
const verdictOn = (told: unknown): string => {
  const read = readDocument(told);
  return read.ok ? 'read' : read.error;
};

describe('a document', () => {
  it('is read as it was told, of every kind', () => {
    expect(new Set(world.map(({ kind }) => kind)).size).toBe(3);
    for (const each of world) expect(readDocument(carried(each))).toEqual({ ok: true, value: carried(each) });
  });

  it('has a name of its own for each content', () =>
    expect(new Set(world.map(({ id }) => id)).size).toBe(world.length));

  it('is refused where a word of it was changed, its record or its kind', () => {
    const changed = [
      { ...first, body: { ...first.body, log: first.body.log.slice(1) } },
      { ...first, body: { ...first.body, id: 'another' } },
      { ...first, id: first.id.replace(first.body.id, 'another') },
      { ...first, kind: 'skinTest' },
    ];
    for (const each of changed) expect(verdictOn(carried(each))).toBe('changed');
  });

  it('that is whole and of a newer edition is not understood, and what is none is none', () => {
    const named = (kind: string, body: { readonly id: string }) => ({
      id: `${kind}:${body.id}:${digest(body)}`,
      kind,
      body,
    });
    expect(verdictOn(named('letter', { id: 'abcd' }))).toBe('notUnderstood');
    expect(verdictOn(named('consultation', { ...first.body, settings: [] } as never))).toBe('notUnderstood');
    for (const each of [null, 'consultation', {}, { ...first, more: 1 }, { id: first.id, kind: first.kind }])
      expect(verdictOn(each)).toBe('notADocument');
  });
});

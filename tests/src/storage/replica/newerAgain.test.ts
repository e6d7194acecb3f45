import { expect, it } from 'vitest';
import { digest } from '../../../../shared/records/documents/canonical';
import { type NewerDocument, readDocument } from '../../../../shared/records/documents/document';
import { accept, refuse } from '../../../../shared/result';
import { pull } from '../../../../src/storage/replica/pull';
import type { Here } from '../../../../src/storage/replica/replica';

it('offers a document of a newer edition again until it could be noted, and once after that', async () => {
  const body = { id: 'there0001', log: [{ payload: { ticket: 'Q.F.' } }], since: 'a newer edition' };
  const id = `consultation:there0001:${digest(body)}`;
  expect(readDocument({ id, kind: 'consultation', body })).toMatchObject({ ok: false });
  const noted: NewerDocument[] = [];
  let isFull = true;
  const here: Here = {
    readIds: async () => new Set<string>(),
    read: () => [],
    isErased: () => false,
    isHeldBack: () => false,
    take: async (_documents, newer = []) => {
      if (isFull) return refuse('notTaken' as const);
      noted.push(...newer);
      return accept({ refused: [], later: [] });
    },
  };
  const ask = async () => accept({ rows: [{ doc: { _id: id, kind: 'consultation', body } }] });
  const looked = new Map();
  const round = () => pull(ask as never, here, { revs: new Map([[id, '1-a']]) } as never, looked);
  expect((await round()).ok).toBe(false);
  isFull = false;
  expect((await round()).ok).toBe(true);
  expect((await round()).ok).toBe(true);
  expect(noted.map((each) => each.id)).toEqual([id]);
});

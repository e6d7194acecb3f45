import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Documents,
  gatherDocuments,
  mergeDocuments,
} from '../../../../shared/records/documents/mergeDocuments';
import { holds } from '../../seeded';
import { toldTests, world } from './world';

const namesOf = (documents: Documents): readonly string[] => [...documents.keys()].sort();
const station = fc.subarray([...world]).map(gatherDocuments);
const several = fc.array(station, { minLength: 3, maxLength: 6 });
const nothing: Documents = new Map();
const mergeAll = (each: readonly Documents[]): Documents => each.reduce(mergeDocuments, nothing);
const named = (index: number): string => toldTests[index]?.id ?? '';

describe('documents of several stations', () => {
  it('come to the same whatever the order, the grouping and however often they come', () => {
    holds(
      fc.property(several, fc.array(fc.nat(5), { minLength: 6, maxLength: 20 }), (stations, extra) => {
        const once = namesOf(mergeAll(stations));
        const again = extra.flatMap((at) => stations.slice(at, at + 1));
        expect(namesOf(mergeAll([...again, ...[...stations].reverse(), ...again]))).toEqual(once);
        const [first = nothing, ...rest] = stations;
        expect(namesOf(mergeDocuments(first, mergeAll(rest)))).toEqual(once);
        expect(namesOf(mergeDocuments(mergeAll(stations), mergeAll(stations)))).toEqual(once);
      }),
      150,
    );
  });

  it('come back by no merge once they are erased', () => {
    const erasings = world.filter(({ kind }) => kind === 'erased');
    const erased = new Set(erasings.flatMap(({ body }) => (body as { ids: string[] }).ids));
    expect(erased.size).toBe(3);
    holds(
      fc.property(several, (stations) => {
        const all = mergeAll([...stations, gatherDocuments(erasings), ...stations]);
        const left = [...all.values()].map(({ body }) => (body as { id?: string }).id ?? '');
        expect(left.filter((id) => erased.has(id))).toEqual([]);
      }),
      150,
    );
  });

  it('lose nothing else than what is erased and the beginnings of what is there', () => {
    const records = world.filter(({ kind }) => kind !== 'erased');
    const kept = namesOf(gatherDocuments(records));
    expect(records.map(({ id }) => id).filter((id) => !kept.includes(id))).toEqual([named(0), named(1)]);
  });

  it('of a skin test: the longer log stays, and what two read otherwise stays twice', () => {
    const all = namesOf(gatherDocuments(toldTests));
    expect(all).toEqual([named(2), named(3)].sort());
  });
});

import { isOfDecision } from '../../shared/judgement/rules';
import type { ByZone, Zone } from '../../shared/records/zones';
import type { Facts, StrandFact } from './facts';

/** Something of each zone, changed zone by zone. */
export const mapZones = <T>(from: ByZone<T>, change: (value: T, zone: Zone) => T): ByZone<T> => ({
  roots: change(from.roots, 'roots'),
  lengths: change(from.lengths, 'lengths'),
  ends: change(from.ends, 'ends'),
});

/** The list with this member in it, once. */
export const withMember = <T>(list: readonly T[], member: T): readonly T[] =>
  list.includes(member) ? list : [...list, member];

/** Not decided, and nobody's leave to decide or to weigh more freely. */
export const undecide = (facts: Facts): Pick<Facts, 'decided' | 'overridden'> => ({
  decided: null,
  overridden: facts.overridden.filter((rule) => !isOfDecision(rule)),
});

/** The strand of one zone, as it is now. */
export const setStrand = (facts: Facts, zone: Zone, strand: StrandFact): Pick<Facts, 'strands'> => ({
  strands: { ...facts.strands, [zone]: strand },
});

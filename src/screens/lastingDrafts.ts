import * as v from 'valibot';
import type { Raw, RawForm } from '../../shared/records/readForm';
import { type Kept, keep, ofTablet, readKept } from '../tablet/keep';

const KEY = 'strandproof.bowlsBegun';

/**
 * So many half-filled forms outlive a reload; the oldest goes first. Assumed because eight chairs with a bowl for lengths
 * and one for ends are sixteen bowls, each of them what was ordered and what was poured.
 */
export const ASSUMED_MOST_KEPT = 32;

const rawSchema: v.GenericSchema<Raw> = v.lazy(() =>
  v.nullish(v.union([v.string(), v.number(), v.array(v.string()), v.array(formSchema)])),
);
const formSchema: v.GenericSchema<RawForm> = v.record(v.string(), rawSchema);
const schema = v.array(v.tuple([v.string(), formSchema]));

/**
 * The forms that outlive a reload of the page, by name: what is in a bowl that is being weighed, and since when. Beside both
 * copies and in neither: nothing is judged by it before the bowl is called weighed. Without it the scale would begin anew
 * while the same bowl goes on ageing. Checked in tests/src/screens/mix/reloadedBowl.test.tsx.
 */
export function createLasting(kept: Kept) {
  const list = () => readKept(kept, KEY, schema) ?? [];
  const without = (name: string) => list().filter(([each]) => each !== name);
  return {
    read: (name: string): RawForm | undefined => list().find(([each]) => each === name)?.[1],
    keep: (name: string, raw: RawForm) =>
      keep(kept, KEY, [...without(name), [name, raw]].slice(-ASSUMED_MOST_KEPT)),
    forget: (begins: string) => {
      const left = list().filter(([name]) => !name.startsWith(begins));
      if (left.length < list().length) keep(kept, KEY, left);
    },
  };
}

export type Lasting = ReturnType<typeof createLasting>;

/** Those of this tablet. */
export const lasting = createLasting(ofTablet);

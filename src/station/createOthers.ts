import { createSignal } from 'solid-js';
import * as v from 'valibot';
import { makeCouch } from '../storage/replica/couch';
import { type Kept, keep, readKept } from '../tablet/keep';
import { makeHeldDocuments } from './heldDocuments';
import { makeReplicating, type Others } from './replicating';
import type { Station } from './station';

/** Whether this tablet ever had other stations. */
const KNOWN = 'strandproof.others';

/** The station's own server, which hands it on: the page never leaves its origin. */
const BASE = '/replica/';

/** Other stations beside this one, as long as this window writes. Nothing of it is asked before it is started. */
export function createOthers(
  station: Pick<Station, 'readHeld' | 'isErased' | 'isHeldBack' | 'takeDocuments' | 'note'>,
  kept: Kept,
) {
  const [others, show] = createSignal<Others | null>(null);
  const held = makeHeldDocuments(station.readHeld);
  const replicating = makeReplicating({
    replica: makeCouch({ base: BASE, fetch: (address, how) => fetch(address, how) }),
    here: {
      ...held,
      isErased: station.isErased,
      isHeldBack: station.isHeldBack,
      take: station.takeDocuments,
    },
    now: Date.now,
    chance: Math.random,
    show,
    known: {
      read: () => readKept(kept, KNOWN, v.boolean()) === true,
      keep: (isKnown) => keep(kept, KNOWN, isKnown),
    },
    onRefused: (count) => station.note({ kind: 'leftOut', count }),
  });
  return { ...replicating, others };
}

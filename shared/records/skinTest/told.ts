import * as v from 'valibot';
import { type LocalProfile, type Settings, settingsSchema } from '../settings';

/** One entry of a skin test, and the local rules of the house in which it was made: a test may be read at another station. */
export interface ToldEntry {
  readonly entry: unknown;
  readonly profile: LocalProfile;
}

/** What came in of a skin test from another station, as it is stored: in one piece, so that no part of it counts alone. */
export interface ToldPiece {
  readonly told: readonly ToldEntry[];
  /**
   * When it came in, by this tablet's clock; lacking in pieces from before that was kept. It is of this tablet alone and goes
   * along with no document.
   */
  readonly cameAtMs?: number;
}

/** One entry as it lies here. `came`: it was told by another station; null: it was noted here. */
export interface StoredEntry extends ToldEntry {
  readonly came: { readonly atMs: number | null } | null;
}

export const toldEntrySchema = v.strictObject({
  entry: v.looseObject({}),
  profile: settingsSchema.entries.profile,
});
const pieceSchema = v.strictObject({
  told: v.array(toldEntrySchema),
  cameAtMs: v.exactOptional(v.pipe(v.number(), v.safeInteger())),
});
const namesSettings = v.looseObject({ settingsId: v.number() });

/** Is this stored entry what came in from another station? */
export const isTold = (entry: unknown): entry is ToldPiece => v.is(pieceSchema, entry);

/** The entries of a stored log one by one, each with the rules it was judged under: its own house's where it came in. */
export const listStored = (
  log: readonly unknown[],
  find: (settingsId: number) => Settings,
): readonly StoredEntry[] =>
  log.flatMap((entry): readonly StoredEntry[] => {
    if (isTold(entry)) return entry.told.map((each) => ({ ...each, came: { atMs: entry.cameAtMs ?? null } }));
    const settingsId = v.is(namesSettings, entry) ? entry.settingsId : 0;
    return [{ entry, profile: find(settingsId).profile, came: null }];
  });

/** The same as another station is told it: without when anything came in here. */
export const tellEntries = (
  log: readonly unknown[],
  find: (settingsId: number) => Settings,
): readonly ToldEntry[] => listStored(log, find).map(({ entry, profile }) => ({ entry, profile }));

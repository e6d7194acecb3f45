import { salon } from '../../../seeds/salon';
import { digest } from '../../../shared/records/documents/canonical';
import { makeHeldDocuments } from '../../../src/station/heldDocuments';
import { makeCouch } from '../../../src/storage/replica/couch';
import type { Database } from '../storage/replica/database';
import { makeTablet, type Tablet } from '../storage/tablet';
import { startStation } from './stationUnderTest';

/** A station of the salon that shares with others through this database, whose ids begin so. */
export async function startSharing(
  database: Database,
  idBegins: string,
  tablet: Tablet = makeTablet(),
  atMs?: number,
) {
  const under = await startStation(tablet, undefined, undefined, atMs, idBegins);
  const { station } = under;
  await station.saveSettings('Opal', salon);
  const held = makeHeldDocuments(station.readHeld);
  const { isErased, isHeldBack } = station;
  const here = { ...held, isErased, isHeldBack, take: station.takeDocuments };
  const replica = makeCouch({ base: database.base, fetch });
  const listIds = async (): Promise<readonly string[]> => [...(await held.readIds())].sort();
  const tryExchange = () => replica.exchange(here, new AbortController().signal);
  return {
    ...under,
    tablet,
    held,
    tryExchange,
    async exchange() {
      const ended = await tryExchange();
      if (!ended.ok) throw new Error(ended.error);
      return ended.value;
    },
    listIds,
    /** Of the names of all it shares. */
    digest: async () => digest(await listIds()),
  };
}

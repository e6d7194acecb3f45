import { beginDemo, clearUnmarkedDemo, isDemoHere, markDemo, unmarkDemo } from '../../storage/demoMark';
import { type Edition, places } from '../../storage/edition';
import { openStore } from '../../storage/openStore';
import { makeId } from '../makeId';
import { makeStation } from '../makeStation';
import { playDay } from './playDay';

/** The invented salon on this tablet: is it what is shown, how it comes, and how it goes. */
export interface DemoInUse {
  readonly isHere: boolean;
  /** Loads it and starts the station anew; false when that failed, and nothing is left of it. */
  readonly load: () => Promise<boolean>;
  /** Removes it and starts the station anew, as empty as it was before; false when that failed, and it is still there. */
  readonly remove: () => Promise<boolean>;
}

const ignore = (): void => undefined;

/** One window at a time: whoever loads, clears or shows the demo holds the place of its writer. */
const alone = async <T>(work: () => Promise<T>): Promise<T> =>
  navigator.locks.request(places.demo.lock, work) as Promise<T>;

/** A browser without these files has no demo either; what could not be cleared now is cleared at the next start. */
const clear = (): Promise<void> => alone(() => clearUnmarkedDemo(navigator.storage, indexedDB)).catch(ignore);

async function writeDemo(): Promise<boolean> {
  if (await isDemoHere(navigator.storage)) return true;
  await beginDemo(navigator.storage);
  const { tellInventedDay } = await import('../../demo/inventedDay');
  let atMs = Date.now();
  const station = makeStation({
    store: openStore('demo'),
    now: () => atMs,
    makeId,
    publish: ignore,
    onAcknowledged: ignore,
    onDropped: ignore,
  });
  const play = () =>
    playDay(station, tellInventedDay(Date.now()), (next) => {
      atMs = next;
    });
  // Also where it throws: what is held open can be neither cleared nor shown.
  const played = await play().finally(() => station.stopWriting());
  if (!played.ok) return false;
  await markDemo(navigator.storage);
  return true;
}

/**
 * The demo of this tablet. It lies in a store of its own, which is there from the moment its mark is set and gone from
 * the moment the mark is taken away; whatever a power cut leaves without a mark is cleared at the next start.
 * Checked in tests/browser/demo.test.ts.
 */
export function createDemo(edition: Edition, startAnew: () => void): DemoInUse {
  if (edition === 'salon') void clear();
  return {
    isHere: edition === 'demo',
    async load() {
      const isThere = await alone(writeDemo).catch(() => false);
      if (isThere) startAnew();
      else await clear();
      return isThere;
    },
    async remove() {
      const isGone = await unmarkDemo(navigator.storage).then(
        () => true,
        () => false,
      );
      if (isGone) startAnew();
      return isGone;
    },
  };
}

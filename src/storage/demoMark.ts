import { places } from './edition';
import { isMarked, isNamed, isThere, setMark, type Top, takeMark } from './topFiles';

/** A file at the top of the origin private file system: there is a whole demo, and this tablet shows it. */
const MARK = 'demo-is-here';
const FOLDER = places.demo.folder;

/** So often a folder that is still held is tried again. Assumed because a page that was left lets go a moment later. */
const ASSUMED_CLEAR_TRIES = 60;
/** The pause between two tries, ms. Assumed because with the tries it makes six seconds in the background. */
const ASSUMED_CLEAR_PAUSE_MS = 100;

/** Is a whole demo on this tablet? */
export const isDemoHere = (storage: Top): Promise<boolean> => isMarked(storage, MARK);

/** Before anything of a demo is written: its folder is there from the first to the last moment of it. */
export async function beginDemo(storage: Top): Promise<void> {
  await (await storage.getDirectory()).getDirectoryHandle(FOLDER, { create: true });
}

/** The last step of loading: with this one file the demo is there, without it there is none. */
export const markDemo = (storage: Top): Promise<void> => setMark(storage, MARK);

/** The first step of removing: from now on there is no demo, whatever is left of it. */
export const unmarkDemo = (storage: Top): Promise<void> => takeMark(storage, MARK);

const dropDatabase = (factory: IDBFactory): Promise<void> =>
  new Promise((resolve, reject) => {
    const dropping = factory.deleteDatabase(places.demo.database);
    dropping.onsuccess = () => resolve();
    dropping.onerror = () => reject(dropping.error);
  });

/**
 * Clears what a demo without its mark has left, half loaded or half removed: the database first, the folder last, so
 * that the next start finds what is still to be cleared. A demo with its mark is left alone.
 */
export async function clearUnmarkedDemo(storage: Top, factory: IDBFactory): Promise<void> {
  const top = await storage.getDirectory();
  const isWhole = await isMarked(storage, MARK);
  if (isWhole || !(await isThere(top.getDirectoryHandle(FOLDER)))) return;
  await dropDatabase(factory);
  for (let tries = 0; ; tries += 1) {
    try {
      return await top.removeEntry(FOLDER, { recursive: true });
    } catch (error) {
      if (isNamed(error, 'NotFoundError')) return;
      if (!isNamed(error, 'NoModificationAllowedError') || tries === ASSUMED_CLEAR_TRIES) throw error;
      await new Promise((resolve) => setTimeout(resolve, ASSUMED_CLEAR_PAUSE_MS));
    }
  }
}

import type { Folder, JournalFiles } from '../journalFiles';

/** So often a file held elsewhere is tried again. Assumed because a worker that was ended lets go a moment later. */
const ASSUMED_TRIES = 20;
/** The pause between two tries, ms. Assumed because with the tries it makes a second, which a person waits for. */
const ASSUMED_PAUSE_MS = 50;

/**
 * The journal's files in the origin private file system, through sync access handles.
 * A journal that was written stays open: its handle keeps every other window from writing it.
 * `top` names the folder they lie in; null for the top itself.
 */
export const makeOpfsFiles = (storage: StorageManager, top: string | null): JournalFiles => {
  const open = new Map<string, FileSystemSyncAccessHandle>();
  let triesLeft = ASSUMED_TRIES;

  const openFolder = async (folder: Folder): Promise<FileSystemDirectoryHandle> => {
    const root = await storage.getDirectory();
    const within = top === null ? root : await root.getDirectoryHandle(top, { create: true });
    return within.getDirectoryHandle(folder, { create: true });
  };

  const openHandle = async (file: FileSystemFileHandle): Promise<FileSystemSyncAccessHandle> => {
    for (;;) {
      try {
        const handle = await file.createSyncAccessHandle();
        triesLeft = ASSUMED_TRIES;
        return handle;
      } catch (error) {
        if (!isNamed(error, 'NoModificationAllowedError') || triesLeft === 0) throw error;
        triesLeft -= 1;
        await new Promise((resolve) => setTimeout(resolve, ASSUMED_PAUSE_MS));
      }
    }
  };

  const closeHandle = (folder: Folder, file: string): void => {
    open.get(`${folder}/${file}`)?.close();
    open.delete(`${folder}/${file}`);
  };

  /** Does the work on an open handle; null when there is no such file and none is to be made. */
  const withHandle = async <T>(
    folder: Folder,
    file: string,
    { create, keepOpen }: { readonly create: boolean; readonly keepOpen: boolean },
    work: (handle: FileSystemSyncAccessHandle) => T,
  ): Promise<T | null> => {
    const kept = open.get(`${folder}/${file}`);
    if (kept !== undefined) return work(kept);
    const found = await findFile(await openFolder(folder), file, create);
    if (found === null) return null;
    const handle = await openHandle(found);
    if (keepOpen) open.set(`${folder}/${file}`, handle);
    try {
      return work(handle);
    } finally {
      if (!keepOpen) handle.close();
    }
  };

  return {
    list: async (folder) => {
      const names: string[] = [];
      for await (const name of (await openFolder(folder)).keys()) names.push(name);
      return names.sort();
    },

    read: (folder, file) => withHandle(folder, file, { create: false, keepOpen: false }, readWhole),

    append: async (folder, file, bytes) => {
      await withHandle(folder, file, { create: true, keepOpen: folder === 'journals' }, (handle) => {
        writeAtEnd(handle, bytes);
      });
    },

    truncate: async (folder, file, size) => {
      await withHandle(folder, file, { create: false, keepOpen: false }, (handle) => {
        handle.truncate(size);
        handle.flush();
      });
    },

    remove: async (folder, file) => {
      closeHandle(folder, file);
      try {
        await (await openFolder(folder)).removeEntry(file);
      } catch (error) {
        if (!isNamed(error, 'NotFoundError')) throw error;
      }
    },

    close: async () => {
      for (const handle of open.values()) handle.close();
      open.clear();
    },
  };
};

const findFile = async (
  folder: FileSystemDirectoryHandle,
  file: string,
  create: boolean,
): Promise<FileSystemFileHandle | null> => {
  try {
    return await folder.getFileHandle(file, { create });
  } catch (error) {
    if (isNamed(error, 'NotFoundError')) return null;
    throw error;
  }
};

const readWhole = (handle: FileSystemSyncAccessHandle): Uint8Array => {
  const bytes = new Uint8Array(handle.getSize());
  const count = handle.read(bytes, { at: 0 });
  if (count !== bytes.length) throw new Error(`read ${count} of ${bytes.length} bytes`);
  return bytes;
};

const writeAtEnd = (handle: FileSystemSyncAccessHandle, bytes: Uint8Array): void => {
  const count = handle.write(bytes as Uint8Array<ArrayBuffer>, { at: handle.getSize() });
  if (count !== bytes.length) throw new Error(`wrote ${count} of ${bytes.length} bytes`);
  handle.flush();
};

const isNamed = (error: unknown, name: string): boolean => error instanceof Error && error.name === name;

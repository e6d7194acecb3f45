import { accept, type Result, refuse } from '../../shared/result';

/** One file to be handed out: its text comes in pieces, made only once somebody takes it. */
export interface HandedFile {
  readonly name: string;
  readonly type: string;
  readonly text: () => string | Iterable<string>;
}

/** Why a file did not get there. Nothing half-written is left behind. */
export type HandOverFailure = 'notShared' | 'folderGone' | 'folderForbidden' | 'notWritten';

/** The names that got there, and into which folder; null where the person left it, which says nothing. */
export type HandedOver = { readonly names: readonly string[]; readonly folder: string | null } | null;

/** Ways out of this tablet beside a download, where its browser has them. */
export interface HandOver {
  /** Which of these would it share? None: sharing is not offered. */
  listShared(files: readonly HandedFile[]): readonly HandedFile[];
  share(files: readonly HandedFile[]): Promise<Result<HandedOver, HandOverFailure>>;
  readonly hasFolders: boolean;
  /** Into the folder that was chosen, which is asked for once while the page is open, or `anew`. */
  intoFolder(files: readonly HandedFile[], anew?: boolean): Promise<Result<HandedOver, HandOverFailure>>;
}

/** A file of a chosen folder, written whole or not at all: what is written shows when it is closed. */
interface FolderFile {
  createWritable(): Promise<{
    write(piece: string): Promise<void>;
    close(): Promise<void>;
    abort(): Promise<void>;
  }>;
}

/** A folder as the browser gives it (published: WICG File System Access). */
export interface Folder {
  readonly name: string;
  requestPermission?(how: { readonly mode: 'readwrite' }): Promise<string>;
  getFileHandle(name: string, how?: { readonly create: boolean }): Promise<FolderFile>;
  removeEntry(name: string): Promise<void>;
}

/** What a browser has of them; missing where it has none. */
export interface HandOverParts {
  readonly sharing?: {
    canShare(what: { readonly files: File[] }): boolean;
    share(what: { readonly files: File[] }): Promise<void>;
  };
  readonly pickFolder?: (how: { readonly id: string; readonly mode: 'readwrite' }) => Promise<Folder>;
}

const nameOf = (fault: unknown): string =>
  fault instanceof Error || fault instanceof DOMException ? fault.name : '';
/** The person closed the window of the browser: that is an answer. */
const isLeft = (fault: unknown): boolean => nameOf(fault) === 'AbortError';

const joinPieces = ({ text }: HandedFile): string[] => {
  const whole = text();
  return typeof whole === 'string' ? [whole] : [...whole];
};

function sayFolderFailure(fault: unknown): HandOverFailure {
  switch (nameOf(fault)) {
    case 'NotFoundError':
      return 'folderGone';
    case 'NotAllowedError':
    case 'SecurityError':
      return 'folderForbidden';
    default:
      return 'notWritten';
  }
}

/** One file, whole or not at all; where none of its name was there, none is there after a failure. */
async function writeFile(folder: Folder, file: HandedFile): Promise<void> {
  const wasThere = await folder.getFileHandle(file.name).then(
    () => true,
    (fault) => {
      if (nameOf(fault) !== 'NotFoundError') throw fault;
      return false;
    },
  );
  const target = await folder.getFileHandle(file.name, { create: true });
  try {
    const stream = await target.createWritable();
    try {
      for (const piece of joinPieces(file)) await stream.write(piece);
      await stream.close();
    } catch (fault) {
      await stream.abort().catch(() => undefined);
      throw fault;
    }
  } catch (fault) {
    if (!wasThere) await folder.removeEntry(file.name).catch(() => undefined);
    throw fault;
  }
}

/** The ways out that this browser has. Checked in tests/src/tablet/handOver.test.ts. */
export function makeHandOver({ sharing, pickFolder }: HandOverParts): HandOver {
  let folder: Folder | null = null;
  const toFile = (file: HandedFile, pieces: string[]) => new File(pieces, file.name, { type: file.type });
  const isShared = (files: readonly HandedFile[]): boolean =>
    files.length > 0 && sharing?.canShare({ files: files.map((file) => toFile(file, [])) }) === true;

  const listShared: HandOver['listShared'] = (files) =>
    isShared(files) ? files : files.filter((file) => isShared([file])).slice(0, 1);

  return {
    listShared,
    hasFolders: pickFolder !== undefined,

    async share(files) {
      const shared = listShared(files);
      if (sharing === undefined || shared.length === 0) return refuse('notShared');
      try {
        await sharing.share({ files: shared.map((file) => toFile(file, joinPieces(file))) });
        return accept({ names: shared.map(({ name }) => name), folder: null });
      } catch (fault) {
        return isLeft(fault) ? accept(null) : refuse('notShared');
      }
    },

    async intoFolder(files, anew = false) {
      if (pickFolder === undefined) return refuse('notWritten');
      if (folder === null || anew) {
        try {
          folder = await pickFolder({ id: 'strandproof', mode: 'readwrite' });
        } catch (fault) {
          return isLeft(fault) ? accept(null) : refuse(sayFolderFailure(fault));
        }
      }
      try {
        if ((await folder.requestPermission?.({ mode: 'readwrite' })) === 'denied') {
          folder = null;
          return refuse('folderForbidden');
        }
        for (const file of files) await writeFile(folder, file);
        return accept({ names: files.map(({ name }) => name), folder: folder.name });
      } catch (fault) {
        const failure = sayFolderFailure(fault);
        // The next tap asks which folder it is to be.
        if (failure !== 'notWritten') folder = null;
        return refuse(failure);
      }
    },
  };
}

/** What this browser has of them. */
export const findHandOverParts = (): HandOverParts => ({
  ...('canShare' in navigator && 'share' in navigator ? { sharing: navigator } : {}),
  ...('showDirectoryPicker' in window
    ? {
        pickFolder: (how) =>
          (
            window as unknown as { showDirectoryPicker: NonNullable<HandOverParts['pickFolder']> }
          ).showDirectoryPicker(how),
      }
    : {}),
});

/**
 * `journals`: one file a log. `aside`: what could not be read. `marks`: logs on their way out. `rewrites`: what a log
 * is about to be.
 */
export type Folder = 'journals' | 'aside' | 'marks' | 'rewrites';

/** The few things a journal needs of a file system. They throw what the file system throws. */
export interface JournalFiles {
  list(folder: Folder): Promise<readonly string[]>;
  /** null: there is no such file. */
  read(folder: Folder, file: string): Promise<Uint8Array | null>;
  /** Makes the file when it is not there, writes at its end, flushes; resolves when the bytes are on the disk. */
  append(folder: Folder, file: string, bytes: Uint8Array): Promise<void>;
  /** Shortens to `size` bytes and flushes. */
  truncate(folder: Folder, file: string, size: number): Promise<void>;
  /** No error when there is no such file. */
  remove(folder: Folder, file: string): Promise<void>;
  /** Lets go of every handle. */
  close(): Promise<void>;
}

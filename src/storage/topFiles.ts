/** Where the marks of this tablet lie: the top of its own file store. */
export type Top = Pick<StorageManager, 'getDirectory'>;

/** Is it this error of the browser? */
export const isNamed = (error: unknown, name: string): boolean =>
  error instanceof Error && error.name === name;

/** Is what is looked for there? Any other answer than yes or no is thrown on. */
export const isThere = async (finding: Promise<unknown>): Promise<boolean> => {
  try {
    await finding;
    return true;
  } catch (error) {
    if (isNamed(error, 'NotFoundError')) return false;
    throw error;
  }
};

/** Is there a file of this name at the top? */
export const isMarked = async (storage: Top, mark: string): Promise<boolean> =>
  isThere((await storage.getDirectory()).getFileHandle(mark));

/** From now on there is. */
export async function setMark(storage: Top, mark: string): Promise<void> {
  await (await storage.getDirectory()).getFileHandle(mark, { create: true });
}

/** From now on there is none; may be done twice. */
export async function takeMark(storage: Top, mark: string): Promise<void> {
  if (await isMarked(storage, mark)) await (await storage.getDirectory()).removeEntry(mark);
}

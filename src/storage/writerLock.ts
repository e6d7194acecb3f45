/** Why the writer's place is not, or no longer, this window's. */
export type LostWhy =
  /** This browser knows no locks, or not on this page. */
  | 'unavailable'
  /** Another script of this origin broke the lock. */
  | 'brokenOff';

/** What the one who asked gets to hear. */
export interface WriterListener {
  /** This window, and no other, may restore and write now. */
  onGranted(): void;
  /** Another window writes; this one stands in line behind it. */
  onWaiting(): void;
  onLost(why: LostWhy): void;
}

export interface WriterClaim {
  /** Gives the place up, or leaves the line; silent afterwards. Release the store before. */
  giveUp(): void;
}

/**
 * May this window write?
 * One window at a time holds the lock; who comes later waits in line, and nobody takes it by force. A window that
 * is closed or killed gives it up by itself. Checked in tests/src/storage/writerLock.test.ts.
 */
export const requestWriter = (
  locks: LockManager | undefined,
  lock: string,
  listener: WriterListener,
): WriterClaim => {
  const leaving = new AbortController();
  let letGo: (() => void) | null = null;

  const hold = (): Promise<void> => {
    if (leaving.signal.aborted) return Promise.resolve();
    const held = new Promise<void>((resolve) => {
      letGo = resolve;
    });
    listener.onGranted();
    return held;
  };

  const ask = async (known: LockManager): Promise<void> => {
    const wasFree = await known.request(lock, { ifAvailable: true }, async (got) => {
      if (got !== null) await hold();
      return got !== null;
    });
    if (wasFree || leaving.signal.aborted) return;
    listener.onWaiting();
    await known.request(lock, { signal: leaving.signal }, hold);
  };

  if (locks === undefined) listener.onLost('unavailable');
  else {
    ask(locks).catch(() => {
      if (!leaving.signal.aborted) listener.onLost(letGo === null ? 'unavailable' : 'brokenOff');
    });
  }

  return {
    giveUp: () => {
      leaving.abort();
      letGo?.();
    },
  };
};

/** Work in line: one line a name, each piece begun when the one before it is over. */
export interface Queues {
  run<T>(name: string, work: () => Promise<T>): Promise<T>;
  /** Resolves when everything that stood in line is over. */
  drain(): Promise<void>;
}

/** One line a log, so that two writes to one log never mix. Checked in tests/src/storage/queue.test.ts. */
export const makeQueues = (): Queues => {
  const lasts = new Map<string, Promise<unknown>>();

  return {
    run: (name, work) => {
      const before = lasts.get(name) ?? Promise.resolve();
      const done = before.then(work, work);
      const settled = done
        .catch(() => undefined)
        .then(() => {
          if (lasts.get(name) === settled) lasts.delete(name);
        });
      lasts.set(name, settled);
      return done;
    },
    drain: async () => {
      while (lasts.size > 0) await Promise.all(lasts.values());
    },
  };
};

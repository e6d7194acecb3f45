import { refuse } from '../../shared/result';
import type { JournalCopy } from './copies';
import { nameFailure } from './copyFailure';
import type { JournalReply, JournalRequest } from './journalMessages';

/** The worker's side of the line: hears requests, answers them one after the other, in the order they came. */
export const serveJournal = (
  journal: JournalCopy,
  send: (reply: JournalReply) => void,
): ((request: JournalRequest) => Promise<void>) => {
  let last: Promise<void> = Promise.resolve();

  const answer = async ({ id, method, args }: JournalRequest): Promise<void> => {
    try {
      const work = journal[method] as (
        ...given: readonly unknown[]
      ) => ReturnType<JournalCopy[typeof method]>;
      send({ id, answer: await work(...args) });
    } catch (error) {
      send({ id, answer: refuse(nameFailure('journal', error)) });
    }
  };

  return (request) => {
    last = last.then(() => answer(request));
    return last;
  };
};

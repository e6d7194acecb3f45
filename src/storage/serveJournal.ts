import { refuse } from '../../shared/result';
import { nameFailure } from './copyFailure';
import type { JournalReply, JournalRequest, Served } from './journalMessages';

/** The worker's side of the line: hears requests, answers them one after the other, in the order they came. */
export const serveJournal = (
  journal: Served,
  send: (reply: JournalReply) => void,
): ((request: JournalRequest) => Promise<void>) => {
  let last: Promise<void> = Promise.resolve();

  const answer = async ({ id, method, args }: JournalRequest): Promise<void> => {
    try {
      const work = journal[method] as (...given: readonly unknown[]) => Promise<JournalReply['answer']>;
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

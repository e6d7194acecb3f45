import { places, readEdition } from '../edition';
import { makeIndexCopy } from '../indexCopy';
import { makeJournalCopy } from '../journalCopy';
import type { JournalReply, JournalRequest } from '../journalMessages';
import { ASSUMED_PAST_PATIENCE_MS } from '../pastClient';
import { isPast, type ReadPast, readPastFrom } from '../readPast';
import { serveJournal } from '../serveJournal';
import { makeStrictStore } from '../strictStore';
import { makeOpfsFiles } from './opfsFiles';

const edition = readEdition(name);
const files = makeOpfsFiles(navigator.storage, places[edition].folder);
const journal = makeJournalCopy(files);
/** Opened only in the worker that reads what was let wait. */
const index = makeIndexCopy(
  makeStrictStore(indexedDB, places[edition].database, 'lines'),
  ASSUMED_PAST_PATIENCE_MS,
);
const readLater = readPastFrom({ journal, index });

/** Lets go of the file afterwards, whatever was mended in it: another worker writes it. */
const readPast: ReadPast = async (log) => {
  const read = await readLater(log);
  await files.close();
  return read;
};

/** What is packed is handed over, not copied. */
const send = (reply: JournalReply): void => {
  const { answer } = reply;
  const transfer = answer.ok && isPast(answer.value) ? [answer.value.packed.bytes.buffer] : [];
  postMessage(reply, { transfer });
};
const serve = serveJournal({ ...journal, readPast }, send);

addEventListener('message', (event: MessageEvent<JournalRequest>) => {
  void serve(event.data);
});

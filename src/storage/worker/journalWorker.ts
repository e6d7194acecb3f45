import { makeJournalCopy } from '../journalCopy';
import type { JournalRequest } from '../journalMessages';
import { serveJournal } from '../serveJournal';
import { makeOpfsFiles } from './opfsFiles';

const serve = serveJournal(makeJournalCopy(makeOpfsFiles(navigator.storage)), (reply) => postMessage(reply));

addEventListener('message', (event: MessageEvent<JournalRequest>) => {
  void serve(event.data);
});

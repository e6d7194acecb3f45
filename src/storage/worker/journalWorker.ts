import { type Edition, places } from '../edition';
import { makeJournalCopy } from '../journalCopy';
import type { JournalRequest } from '../journalMessages';
import { serveJournal } from '../serveJournal';
import { makeOpfsFiles } from './opfsFiles';

const edition: Edition = name === 'demo' ? 'demo' : 'salon';
const files = makeOpfsFiles(navigator.storage, places[edition].folder);
const serve = serveJournal(makeJournalCopy(files), (reply) => postMessage(reply));

addEventListener('message', (event: MessageEvent<JournalRequest>) => {
  void serve(event.data);
});

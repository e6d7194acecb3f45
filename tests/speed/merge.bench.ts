import { bench, describe } from 'vitest';
import {
  documentConsultation,
  documentErased,
  type RecordDocument,
} from '../../shared/records/documents/document';
import {
  type Documents,
  gatherDocuments,
  mergeDocuments,
} from '../../shared/records/documents/mergeDocuments';
import { closedLogs } from '../shared/records/documents/world';

const SETS = 10;
const EACH = 10_000;
/** Each set shares half of its records with the next one, as stations do that bring in each other's files. */
const STEP = EACH / 2;
const [story] = closedLogs;
if (story === undefined) throw new Error('no log was shipped');
const { closed, settings } = story;

const nameRecord = (index: number): string => `record${String(index).padStart(8, '0')}`;
const tell = (index: number): RecordDocument =>
  documentConsultation({ id: nameRecord(index), settings, log: closed.log });
const records = Array.from({ length: STEP * (SETS + 1) }, (_, index) => tell(index));
/** Of every hundredth record the next station tells otherwise; one of a thousand is erased at some station. */
const tellOtherwise = (index: number): RecordDocument =>
  documentConsultation({ id: nameRecord(index), settings, log: closed.log.slice(1) });
const sets: readonly Documents[] = Array.from({ length: SETS }, (_, at) => {
  const first = at * STEP;
  const own = records.slice(first, first + EACH);
  const told = Array.from({ length: STEP / 100 }, (_, index) => tellOtherwise(first + index * 100));
  const erased = Array.from({ length: STEP / 1000 }, (_, index) =>
    documentErased({
      v: 1,
      ids: [nameRecord(first + index * 1000 + 7)],
      atMs: 1,
      by: 'Opal',
      code: 'sheAsked',
    }),
  );
  return gatherDocuments([...own, ...told, ...erased]);
});
const bytes = JSON.stringify(tell(0)).length;
const merged = sets.reduce(mergeDocuments);
console.info(`${SETS} sets of ${EACH} records, ${bytes} bytes each; together ${merged.size} documents`);

const union = (all: readonly Documents[]): Documents => {
  const together = new Map<string, RecordDocument>();
  for (const set of all) for (const [id, document] of set) together.set(id, document);
  return together;
};

/** Ten stations' records merged, beside nothing but the union of ten maps. */
describe('merge', () => {
  bench('a bare union of the maps', () => void union(sets), { iterations: 9, time: 0 });
  bench('the station’s, all at once', () => void gatherDocuments(union(sets).values()), {
    iterations: 9,
    time: 0,
  });
  bench(
    'a bare union, set by set, a new map each',
    () => void sets.reduce((one, other) => union([one, other])),
    {
      iterations: 9,
      time: 0,
    },
  );
  bench('the station’s, set by set', () => void sets.reduce(mergeDocuments), { iterations: 9, time: 0 });
});

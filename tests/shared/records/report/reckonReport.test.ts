import { expect, it } from 'vitest';
import { closeRecord } from '../../../../shared/records/closedRecord';
import { gatherFindings } from '../../../../shared/records/day/dayFindings';
import { gatherDay } from '../../../../shared/records/day/dayRecords';
import {
  gatherVisits,
  type JudgedVisit,
  reckonPeople,
  reckonReport,
} from '../../../../shared/records/report/reckonReport';
import { msPerDay, msPerHour } from '../../../../shared/units/time';
import { countBack } from '../../../../src/screens/day/dayNames';
import { playUntil } from '../../../src/screens/playStory';
import { shipped } from '../json/leaving';
import { whole } from './files';

const nowMs = whole.atMs + 10 * msPerDay;
const month = countBack(nowMs, { days: 30 });
const judged = ({ record, log }: (typeof shipped)[number]): JudgedVisit => ({
  record,
  log: log as JudgedVisit['log'],
  toldAtMs: nowMs,
});
const visits = shipped.map(judged);
/** Visits of one moment come in another order. */
const inOrder = (found: readonly object[]) => found.map((each) => JSON.stringify(each)).sort();

it('comes to the same as the page of these days', () => {
  const closed = visits.flatMap(({ record, log }) => closeRecord(record, log) ?? []);
  const page = gatherDay({ open: new Map(), closed, skinTests: [] }, nowMs, month);
  const { rules, ...found } = gatherFindings(page, nowMs);
  const figures = reckonReport(gatherVisits(visits, nowMs, month), nowMs);
  expect(found.lifted.length).toBeGreaterThan(0);
  expect(JSON.stringify(figures)).not.toMatch(/"(by|words)":/);
  expect(figures.clients).toBe(shipped.length);
  for (const name of ['outcomes', 'late', 'missed'] as const)
    expect(inOrder(figures[name]), name).toEqual(inOrder(found[name]));
  expect(figures.rules.map(({ rule, stopped, lifted }) => ({ rule, stopped, lifted }))).toEqual(rules);
});

it('tells what ran when its file was saved as it stood then, whatever came in other files since', () => {
  const { consultation, atMs } = playUntil('BOWL_APPLIED');
  const { record, log } = consultation;
  const tell = (toldAtMs: number) => {
    const days = countBack(atMs, { days: 7 });
    return reckonReport(gatherVisits([{ record, log, toldAtMs }], atMs, days), atMs + 2 * msPerDay).late;
  };
  expect(tell(atMs)).toEqual([]);
  expect(tell(atMs + 3 * msPerHour)).toMatchObject([{ kind: 'head', zone: 'lengths' }]);
});

it('counts for a chance only strands that teach, each with what was said before it', () => {
  const { chance } = reckonReport(gatherVisits(visits, nowMs, month), nowMs);
  expect(chance.strands).toBeGreaterThan(0);
  expect(chance.bands.reduce((sum, { seen }) => sum + seen.of, 0)).toBe(chance.strands);
  expect(chance.score?.ours).toBeLessThanOrEqual(1);
  const none = reckonReport(gatherVisits([], nowMs, month), nowMs);
  expect(none).toMatchObject({ clients: 0, chance: { strands: 0, bands: [], score: null } });
});

it('tells a lifted stop of whoever lifted it, and the rest of whose client she is', () => {
  const [lifted] = visits.filter(({ record }) => record.judged.length > 0);
  if (lifted === undefined) throw new Error('no story lifts a stop');
  const judgedByJuno = lifted.record.judged.map((each) => ({ ...each, by: 'Juno' }));
  const log = lifted.log.map((entry) => (entry.type === 'OVERRIDDEN' ? { ...entry, by: 'Juno' } : entry));
  const visit = { ...lifted, record: { ...lifted.record, judged: judgedByJuno, stylist: 'Opal' }, log };
  const people = reckonPeople(gatherVisits([visit], nowMs, month), nowMs);
  expect(people.map(({ name, clients, lifted: count }) => [name, clients, count])).toEqual([
    ['Juno', 0, judgedByJuno.length],
    [expect.any(String), 1, 0],
  ]);
});

import { expect, test } from 'vitest';
import { firstVisit, secondVisit, strandsMeanwhile } from '../../seeds/fullHeadLightening';
import { tellAnotherDay } from '../../shared/records/anotherDay';
import { nameWay } from '../machines/consultation/chartUnderTest';
import { listOpenQuestions } from '../shared/records/openQuestions';
import { play, startStation } from '../src/station/stationUnderTest';
import { makeTablet } from '../src/storage/tablet';

/** The salon on the day of the first visit. */
async function startAt() {
  const under = await startStation(makeTablet());
  under.clock.atMs = firstVisit.startAtMs;
  await under.station.saveSettings('Wren', firstVisit.settings);
  return under;
}

test('new full-head lightening goes from the first question to being parked, and to the rinse two days later', async () => {
  const under = await startAt();
  const id = await play(under, firstVisit.steps);
  const find = () => under.station.readState().open.get(id);
  expect(listOpenQuestions(find()?.record.answers ?? {}, firstVisit.settings)).toEqual([]);
  expect(find()?.record).toMatchObject({ skinTest: { seen: 'notReadYet' }, strands: [] });
  expect(find()?.record.parked).not.toBeNull();

  await play(under, strandsMeanwhile, id);
  expect(find()?.record.strands).toMatchObject([
    { zone: 'ends', outcome: { grade: 'sound' } },
    { zone: 'lengths', outcome: { grade: 'sound' } },
  ]);
  expect(find()?.record.parked).not.toBeNull();

  await play(under, secondVisit, id);
  expect(find()?.record.bowls).toMatchObject([
    { zone: 'lengths', state: 'rinsed' },
    { zone: 'ends', state: 'rinsed' },
  ]);
  expect(
    find()?.log.find(({ type, atMs }) => type === 'RESUMED' && atMs > firstVisit.startAtMs + 86_400_000)
      ?.tokens,
  ).toMatchObject({ asksAnew: true });
});

test('on the second visit what is asked anew, and all else as before, is one go', async () => {
  const under = await startAt();
  const id = await play(under, [...firstVisit.steps, ...strandsMeanwhile]);
  await play(under, secondVisit.slice(0, 2), id);
  const before = under.station.readState().open.get(id);
  if (before === undefined) throw new Error('she is not there');
  expect(listOpenQuestions(before.record.answers, firstVisit.settings)).toEqual([
    'client.reactions',
    'client.scalp',
    'client.ageBand',
  ]);
  const today = { reactions: ['none'], scalp: 'sound', ageBand: 'over' };
  const raws = tellAnotherDay(before.record, today, firstVisit.settings.units, 'decision');
  expect(await under.station.submitAll(id, 'Wren', raws)).toEqual({ ok: true, value: undefined });
  const after = under.station.readState().open.get(id);
  expect(after && nameWay(after.state)).toBe('decision');
  expect(listOpenQuestions(after?.record.answers ?? {}, firstVisit.settings)).toEqual([]);
});

import { expect, test } from 'vitest';
import { firstGloss, returningGloss } from '../../seeds/returningGloss';
import { findLastTime } from '../../shared/records/findLastTime';
import { listOpenQuestions } from '../shared/records/openQuestions';
import { play, startStation } from '../src/station/stationUnderTest';
import { makeTablet } from '../src/storage/tablet';

test('the same gloss again comes from the bar to the rinse on last time’s strand, and to its end', async () => {
  const tablet = makeTablet();
  const under = await startStation(tablet);
  under.clock.atMs = firstGloss.startAtMs;
  await under.station.saveSettings('Juno', firstGloss.settings);
  await play(under, firstGloss.steps);
  under.clock.atMs = returningGloss.startAtMs;
  const last = findLastTime(under.station.readState().closed, 'L.M.');
  if (last === null) throw new Error('nothing is known of last time');
  const steps = returningGloss.steps.map((step) =>
    step.raw.type === 'OPENED'
      ? { ...step, raw: { ...step.raw, answers: { ...step.raw.answers, lastTimeId: last.id } } }
      : step,
  );
  const rinse = steps.findIndex(({ raw }) => raw.type === 'BOWL_RINSED');
  const id = await play(under, steps.slice(0, rinse + 1));
  const { record } = under.station.readState().open.get(id) ?? {};
  expect(listOpenQuestions(record?.answers ?? {}, returningGloss.settings)).toEqual([]);
  expect(record?.strands).toMatchObject([{ zone: 'lengths', carried: { fromId: last.id } }]);
  expect(record?.bowls).toMatchObject([{ zone: 'lengths', state: 'rinsed', developerPercent: 1.5 }]);
  const again = await startStation(tablet);
  expect(again.station.readState().notices).toEqual([]);
  await play(under, steps.slice(rinse + 1), id);
  expect(under.station.readState().closed.at(-1)).toMatchObject({ id, how: 'done' });
  // A third visit is told of the strand itself, which grew no younger by being carried.
  const next = findLastTime(under.station.readState().closed, 'L.M.');
  expect(next?.id).toBe(id);
  expect(next?.zones[0]?.strandAtMs).toBe(last.zones[0]?.strandAtMs);
});

test('the first visit answers every question of every step', async () => {
  const under = await startStation(makeTablet());
  under.clock.atMs = firstGloss.startAtMs;
  await under.station.saveSettings('Juno', firstGloss.settings);
  const strand = firstGloss.steps.findIndex(({ raw }) => raw.type === 'STRAND_STARTED');
  const id = await play(under, firstGloss.steps.slice(0, strand));
  const { record } = under.station.readState().open.get(id) ?? {};
  expect(listOpenQuestions(record?.answers ?? {}, firstGloss.settings)).toEqual([]);
});

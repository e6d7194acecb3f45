import { cleanup } from '@solidjs/testing-library';
import { createEffect, createSignal } from 'solid-js';
import { afterEach, expect, it } from 'vitest';
import { endsIronedWet } from '../../../seeds/endsIronedWet';
import { salon } from '../../../seeds/salon';
import { isQuiet } from '../../../src/screens/update/isQuiet';
import type { UpdatesInUse } from '../../../src/tablet/createUpdates';
import { showStation } from './stationOnTablet';

afterEach(cleanup);

/** A tablet on which a newer build waits, and what it was told of being in use. */
function makeWaiting(taken: 'taken' | 'inUse' | 'notTaken' = 'inUse') {
  const [isPutOff, setPutOff] = createSignal(false);
  const inUse: boolean[] = [];
  const updates: UpdatesInUse = {
    build: '0.1.0 aaaaaaaa',
    waiting: () => '0.2.0 bbbbbbbb',
    isPutOff,
    putOff: () => setPutOff(true),
    take: async () => taken,
    look: async () => true,
    useWhile: (isInUse) => createEffect(() => inUse.push(isInUse())),
  };
  return { updates, inUse };
}

const indexOf = (type: string) => endsIronedWet.steps.findIndex(({ raw }) => raw.type === type);

it('is offered at an empty bar, not while a strand runs or anybody sits there, and again when she is done', async () => {
  const { updates, inUse } = makeWaiting();
  const shown = await showStation({ settings: salon, updates });
  expect(shown.find('.update-line p').textContent).toBe(
    'A newer version is here: 0.2.0 (bbbbbbbb). This tablet runs 0.1.0 (aaaaaaaa).',
  );
  const started = indexOf('STRAND_STARTED') + 1;
  const id = await shown.play(endsIronedWet.steps.slice(0, 1));
  expect([shown.look('.update-line'), inUse.at(-1)]).toEqual([null, true]);
  await shown.play(endsIronedWet.steps.slice(1, started), id);
  expect([shown.look('.update-line'), inUse.at(-1)]).toEqual([null, true]);
  await shown.play(endsIronedWet.steps.slice(started), id);
  expect([shown.look('.update-line') !== null, inUse.at(-1)]).toEqual([true, false]);
});

it('says that another window is in use, and stays', async () => {
  const { updates } = makeWaiting('inUse');
  const shown = await showStation({ settings: salon, updates });
  await shown.tap('[data-act=take-update]');
  expect(shown.find('.update-line').dataset.update).toBe('inUse');
  expect(shown.find('.update-line p').textContent).toContain('Another window');
});

it('is put off with one tap, and no page but the bar offers it', async () => {
  const { updates, inUse } = makeWaiting();
  const shown = await showStation({ settings: salon, updates });
  await shown.tap('[data-act=day]');
  expect([shown.look('.update-line'), inUse.at(-1)]).toEqual([null, true]);
  await shown.tap('[data-act=bar]');
  await shown.tap('[data-act=put-off-update]');
  expect(shown.look('.update-line')).toBeNull();
});

it('who is parked with nothing on is away', async () => {
  const shown = await showStation({ settings: salon });
  const { station } = shown;
  const id = await shown.play(endsIronedWet.steps.slice(0, indexOf('STRAND_STARTED')));
  const nowMs = station.readState().open.get(id)?.record.newestAtMs ?? 0;
  expect(isQuiet(station.readState(), nowMs)).toBe(false);
  const untilAtMs = nowMs + 86_400_000;
  expect((await station.submit(id, 'Opal', { type: 'PARKED', answers: { untilAtMs } })).ok).toBe(true);
  expect(isQuiet(station.readState(), nowMs)).toBe(true);
});

it('before the records are read nothing is said to be quiet', () => {
  const nothing = { open: new Map(), bench: [] };
  expect(isQuiet({ ...nothing, mode: 'starting' }, 0)).toBe(false);
  expect(isQuiet({ ...nothing, mode: 'noStore' }, 0)).toBe(false);
  expect(isQuiet({ ...nothing, mode: 'watching' }, 0)).toBe(true);
});

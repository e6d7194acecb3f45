import { expect, it } from 'vitest';
import { makeHeldDocuments } from '../../../src/station/heldDocuments';
import { leavePlace } from '../../../src/station/leavePlace';
import { makeCouch } from '../../../src/storage/replica/couch';
import { startRounds } from '../../../src/storage/replica/rounds';
import { makeTablet } from '../storage/tablet';
import { startSalon } from './stationUnderTest';

it('writes nothing more from the moment it leaves, however long a round takes to end', async () => {
  const { station, clock } = await startSalon(makeTablet());
  let end = (): void => undefined;
  const ended = new Promise<void>((resolve) => {
    end = resolve;
  });
  const left = leavePlace(station, { stop: () => ended }, 'noStore');
  expect(station.readState().mode).toBe('noStore');
  const put = await station.putOnSkinTest('Opal', {
    ...{ ticket: 'Q.F.', method: 'makersMethod', site: 'behindEar', line: '', seen: 'notReadYet' },
    putOnAtMs: clock.atMs,
  });
  expect(put).toMatchObject({ ok: false, error: { kind: 'notWriting' } });
  end();
  await left;
});

it('names no further record for a round that is told to stop', async () => {
  let named = 0;
  let stopped: Promise<void> | null = null;
  const held = makeHeldDocuments(() => ({
    held: { closed: [], skinTests: [], erased: Array.from({ length: 40 }, (_none, index) => ({ index })) },
    find: () => {
      throw new Error('asked for settings');
    },
  }));
  const answers = [
    { db_name: 'salon', doc_count: 0 },
    { results: [], last_seq: '0' },
  ];
  const rounds = startRounds({
    exchange: (signal) =>
      makeCouch({
        base: 'http://here.invalid/replica/',
        fetch: async () => Response.json(answers.shift()),
      }).exchange(
        {
          ...held,
          readIds: async (stop) => {
            stopped = rounds.stop();
            const ids = await held.readIds(stop);
            named = ids.size;
            return ids;
          },
          isErased: () => false,
          isHeldBack: () => false,
          take: async () => ({ ok: false, error: 'notTaken' }),
        },
        signal,
      ),
    chance: () => 1,
    onEnded: () => undefined,
    later: () => () => undefined,
  });
  await new Promise((resolve) => setTimeout(resolve, 50));
  await stopped;
  expect(named).toBe(0);
});

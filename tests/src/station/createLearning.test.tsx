import { createRoot, createSignal } from 'solid-js';
import { describe, expect, it } from 'vitest';
import { endsIronedWet } from '../../../seeds/endsIronedWet';
import { salon } from '../../../seeds/salon';
import { teach } from '../../../shared/learning/teach';
import { closeRecord } from '../../../shared/records/closedRecord';
import { msPerDay } from '../../../shared/units/time';
import { makeBoard } from '../../../src/station/board';
import type { LearnWorker } from '../../../src/station/learning/askWorker';
import { createLearning } from '../../../src/station/learning/createLearning';
import type { Notice } from '../../../src/station/notice';
import type { StationState } from '../../../src/station/stationState';
import { playAlone } from '../../browser/makeLog';

const { steps, startAtMs } = endsIronedWet;
const { record, log } = playAlone(steps, startAtMs, salon, 'onee');
const closed = closeRecord(record, log);

/** A station of one client of yesterday, and a worker that counts how often it is asked. */
function makeRig({ isDemo = false, breaks = false } = {}) {
  const first = makeBoard(() => undefined).read();
  const [state, setState] = createSignal<StationState>({ ...first, closed: closed === null ? [] : [closed] });
  const [nowMs, setNowMs] = createSignal(startAtMs + msPerDay);
  const notices: Notice[] = [];
  const rig = { asked: 0, strands: 0 };
  const start = (): LearnWorker => {
    const worker: LearnWorker = {
      onmessage: null,
      onmessageerror: null,
      onerror: null,
      terminate: () => undefined,
      postMessage: (lessons) => {
        rig.asked += 1;
        rig.strands = lessons.length;
        if (breaks) worker.onerror?.({} as ErrorEvent);
        else worker.onmessage?.({ data: teach(lessons) } as MessageEvent);
      },
    };
    return worker;
  };
  return createRoot((dispose) => {
    const learning = createLearning({ state, nowMs, note: (notice) => notices.push(notice) }, isDemo, start);
    const change = (by: Partial<StationState>) => setState({ ...state(), ...by });
    return { rig, learning, change, setNowMs, notices, dispose };
  });
}
const settle = () => new Promise((resolve) => setTimeout(resolve, 30));

describe('what this station learned', () => {
  it('is reckoned once the logs are read, and again with each new day, not with each entry or second', async () => {
    const { rig, learning, change, setNowMs, dispose } = makeRig();
    await settle();
    expect([rig.asked, learning.taught().kind]).toEqual([0, 'reckoning']);
    change({ mode: 'writing' });
    await settle();
    expect([rig.asked, learning.taught().kind]).toEqual([1, 'taught']);
    expect(rig.strands).toBeGreaterThan(0);
    setNowMs((now) => now + 1000);
    change({ notices: [] });
    await settle();
    expect(rig.asked).toBe(1);
    setNowMs((now) => now + msPerDay);
    await settle();
    expect(rig.asked).toBe(2);
    learning.learnAgain();
    await settle();
    expect(rig.asked).toBe(3);
    dispose();
  });

  it('forgets what was erased', async () => {
    const { rig, learning, change, dispose } = makeRig();
    change({ mode: 'writing' });
    await settle();
    const tombstone = { ids: ['onee'], atMs: startAtMs, by: 'Juno', code: 'sheAsked' as const };
    change({ closed: [], erasings: { tombstones: [tombstone], unfinished: 0 } });
    await settle();
    const taught = learning.taught();
    expect(rig.asked).toBe(2);
    expect(taught.kind === 'taught' && taught.what.learnt.strands).toBe(0);
    dispose();
  });

  it('is nothing where the worker breaks, which a notice says', async () => {
    const { learning, change, notices, dispose } = makeRig({ breaks: true });
    change({ mode: 'watching' });
    await settle();
    expect(learning.taught().kind).toBe('failed');
    expect(notices).toEqual([{ kind: 'notLearnt' }]);
    dispose();
  });

  it('is nothing in the demo: no worker is asked', async () => {
    const { rig, learning, change, dispose } = makeRig({ isDemo: true });
    change({ mode: 'writing' });
    await settle();
    expect([rig.asked, learning.taught().kind]).toEqual([0, 'demo']);
    dispose();
  });
});

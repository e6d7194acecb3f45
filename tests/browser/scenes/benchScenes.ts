import { benchStartedForm } from '../../../shared/records/forms/bench';
import { nameBenchLog } from '../../../src/station/logNames';
import type { Logs } from '../memory';
import { dayMs, hourMs, minuteMs, nowMs } from './clients';
import { refuseWrites } from './harms';
import { emptyHouse } from './houses';
import type { Scene, ScenesOf } from './scene';
import type { SceneHand } from './sceneHand';

const entry = (type: string, agoMs: number, payload: object = {}) => ({
  v: 1,
  type,
  payload,
  atMs: nowMs - agoMs,
  by: 'Opal',
});
const started = (kind: string, agoMs: number, hair = 'bleached') =>
  entry('BENCH_STARTED', agoMs, { kind, hair });
const out = (agoMs: number) => entry('BENCH_TAKEN_OUT', agoMs);
const readBoil = (agoMs: number, curl: string) => [
  started('boilSet', agoMs + 30 * hourMs),
  out(agoMs + 29 * hourMs),
  entry('BENCH_CURL_READ', agoMs, { curl }),
];
const readPieces = (agoMs: number) => [
  started('dryWet', agoMs + hourMs, 'coloured'),
  entry('BENCH_PIECES_READ', agoMs, { dryPiece: 'springsBack', wetPiece: 'slow' }),
];
const boiling = [started('boilSet', 12 * minuteMs)];
const boiled = [started('boilSet', 31 * minuteMs)];
const drying = [started('boilSet', 6 * hourMs, 'untouched'), out(5 * hourMs)];
const readable = [started('boilSet', 26 * hourMs), out(25 * hourMs)];
const late = [started('boilSet', 3 * dayMs), out(70 * hourMs)];
const cooling = [started('dryWet', 4 * minuteMs)];
const cooled = [started('dryWet', 20 * minuteMs, 'coloured')];

const house =
  (...trials: readonly (readonly object[])[]) =>
  (): Logs => ({
    ...emptyHouse(),
    ...Object.fromEntries(trials.map((log, at) => [nameBenchLog(`trial${at}`), log])),
  });
const several = house(
  readable,
  boiling,
  drying,
  cooled,
  readBoil(3 * dayMs, 'partly'),
  readPieces(9 * dayMs),
);
const many = house(
  ...Array.from({ length: 21 }, (_, at) =>
    at % 3 === 0 ? readPieces(at * dayMs) : at % 3 === 1 ? late : readBoil(at * dayMs, 'fellOut'),
  ),
);

const toBench = async ({ act }: SceneHand): Promise<void> => {
  await act('day');
  await act('bench');
};
const scene = (logs: () => Logs, shows: string, go: Scene['go'] = toBench): Scene => ({ logs, shows, go });
const one = (log: readonly object[], stage: string): Scene =>
  scene(house(log), `.bench-clock[data-stage="${stage}"]`, async (hand) => {
    await toBench(hand);
    await hand.press('[data-trial]');
  });
const starting = async (hand: SceneHand, kind: string): Promise<void> => {
  await toBench(hand);
  await hand.act('start-trial');
  await hand.press(`[data-option="${kind}"]`);
  await hand.press(`[data-option="${benchStartedForm.hair.options[2]}"]`);
};

/** The trials on cut hair: the list, starting one, each stage of each kind, a store that refuses, and taking one back. */
export const scenesOfBench: ScenesOf = {
  empty: scene(emptyHouse, '[data-act="start-trial"]'),
  usual: scene(several, '[data-stage="readable"]'),
  full: scene(many, '[data-act="more-trials"]'),
  error: scene(house(boiled), '.refusal:not(:empty)', async (hand) => {
    await toBench(hand);
    await hand.press('[data-trial]');
    await refuseWrites(hand.page);
    await hand.act('taken-out');
    await hand.answerWho();
  }),
  also: {
    which: scene(emptyHouse, '[data-act="begin-trial"]', async (hand) => {
      await toBench(hand);
      await hand.act('start-trial');
    }),
    startBoil: scene(emptyHouse, '.bench-rules li', (hand) => starting(hand, 'boilSet')),
    startDryWet: scene(emptyHouse, '.bench-rules li', (hand) => starting(hand, 'dryWet')),
    boiling: one(boiling, 'boiling'),
    boiled: one(boiled, 'boiled'),
    drying: one(drying, 'drying'),
    readBoil: one(readable, 'readable'),
    late: one(late, 'late'),
    cooling: one(cooling, 'cooling'),
    readPieces: one(cooled, 'readable'),
    done: one(readBoil(hourMs, 'stays'), 'read'),
    takeBack: scene(house(readBoil(hourMs, 'stays')), '.sheet', async (hand) => {
      await toBench(hand);
      await hand.press('[data-trial]');
      await hand.act('take-back');
    }),
  },
};

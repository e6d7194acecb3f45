import fc from 'fast-check';
import { beforeAll, expect, test } from 'vitest';
import { replay } from '../../../machines/consultation/replay';
import { MODEL_VERSION } from '../../../shared/records/event';
import { chooseSize, tellShare } from '../../long';
import { findGate, type Log } from './walks/countWalk';
import { forgeries, forgeTokens } from './walks/forge';
import { findSettings } from './walks/rawTaps';
import { drawnWalks, live } from './walks/walk';

const seed = Number(process.env.WALK_SEED ?? 20_260_303);
const LONG_RUNS = 200;
const numRuns = chooseSize(60, LONG_RUNS);
const logs: Log[] = [];
/** Every log is read by the model that wrote it and by one that came later. */
const laterModel = MODEL_VERSION + 1;
const models = [MODEL_VERSION, laterModel];

/** Why this log is not taken up, as the station would have to say it; null when it is. */
const refusalOf = (log: Log, modelVersion?: number): string | null => {
  const again = replay('walk', JSON.parse(JSON.stringify(log)), findSettings, modelVersion);
  return again.ok ? null : again.error.code;
};

beforeAll(() => {
  for (const drawn of fc.sample(drawnWalks, { seed, numRuns })) {
    const { log, record } = live(drawn).consultation;
    if (record.bowls.length > 0) logs.push(log);
  }
  console.log(
    tellShare('walks', `seed ${seed}: ${logs.length} logs with a bowl forged`, `those of ${LONG_RUNS} walks`),
  );
});

test('the logs are taken up as they are', () => {
  expect(logs.length).toBeGreaterThan(chooseSize(40, 150));
  for (const modelVersion of models) {
    const refusals = logs.map((log) => refusalOf(log, modelVersion));
    expect(refusals.filter((refusal) => refusal !== null)).toEqual([]);
  }
});

for (const [what, forge] of Object.entries(forgeries)) {
  test(`a log is refused when ${what}`, () => {
    const reasons = new Map<string, number>();
    for (const log of logs) {
      const forged = forge(log, findGate(log));
      if (forged === null) continue;
      for (const modelVersion of models) {
        const reason = refusalOf(forged, modelVersion) ?? 'TAKEN UP';
        reasons.set(reason, (reasons.get(reason) ?? 0) + 1);
      }
    }
    console.log(`${what}: ${JSON.stringify(Object.fromEntries(reasons))}`);
    expect(reasons.size).toBeGreaterThan(0);
    expect([...reasons.keys()]).not.toContain('TAKEN UP');
  });
}

test('a log is refused when any one word for the guards was changed by hand', () => {
  const taken: string[] = [];
  let forged = 0;
  for (const log of logs.slice(0, chooseSize(4, 12))) {
    for (const each of forgeTokens(log)) {
      forged += 1;
      if (refusalOf(each.forged) === null) taken.push(each.what);
      const isItsOwn = /(DECIDED\.(suggested|isFreer)|BOWL_WEIGHED\.maxMinutes)$/u.test(each.what);
      if (!isItsOwn && refusalOf(each.forged, laterModel) === null) taken.push(`${each.what}, later`);
    }
  }
  console.log(`${forged} tokens changed, one at a time`);
  expect(forged).toBeGreaterThan(chooseSize(300, 1000));
  expect(taken).toEqual([]);
});

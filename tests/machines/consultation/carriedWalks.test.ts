import fc from 'fast-check';
import { expect, test } from 'vitest';
import { replay } from '../../../machines/consultation/replay';
import { chooseSize, tellShare } from '../../long';
import { forgeTokens } from './walks/forge';
import { makeBowlOracle } from './walks/oracle/bowlOracle';
import { findSettings, settingsById } from './walks/rawTaps';
import { drawnWalks, type LivedWalk, live, tellWalk } from './walks/walk';

const seed = Number(process.env.WALK_SEED ?? 20_260_303);
const LONG_RUNS = 400;
const numRuns = Number(process.env.WALK_RUNS ?? chooseSize(130, LONG_RUNS));

const lived: LivedWalk[] = [];
const listFaults = (log: LivedWalk['consultation']['log'], inheritsStop: boolean): readonly string[] => {
  const oracle = makeBowlOracle(inheritsStop, settingsById);
  return log.flatMap((event) => oracle.hear(event).map((fault) => `${event.type} although ${fault}`));
};
const isCarriedBowl = ({ consultation: { record } }: LivedWalk): boolean =>
  record.bowls.some(({ proof }) => proof?.carried != null);

test('no walk of a client who is back carries an outcome, or weighs a bowl, that the accepted events do not allow', () => {
  fc.assert(
    fc.property(drawnWalks, (drawn) => {
      const walk = live({ ...drawn, isBack: true });
      const { log, record, state } = walk.consultation;
      const faults = listFaults(log, walk.inheritsStop);
      if (faults.length > 0) throw new Error(`${faults.join('; ')}\n${tellWalk(walk)}`);
      lived.push(walk);
      if (log.length === 0) return;
      const again = replay('walk', JSON.parse(JSON.stringify(log)), findSettings);
      if (!again.ok) throw new Error(`not taken up: ${JSON.stringify(again.error)}\n${tellWalk(walk)}`);
      expect(again.value.record).toEqual(record);
      expect(again.value.state.context).toEqual(state.context);
    }),
    { seed, numRuns },
  );
}, 300_000);

test('many of them carry, some weigh a bowl on it, some are refused or test a strand instead', () => {
  const carried = lived.filter(({ consultation }) =>
    consultation.log.some(({ type }) => type === 'OUTCOME_CARRIED'),
  );
  const refused = lived.filter(({ steps }) =>
    steps.some(({ raw, isAccepted }) => raw.type === 'OUTCOME_CARRIED' && !isAccepted),
  );
  const bowls = lived.filter(isCarriedBowl);
  const tested = lived.filter((walk) => walk.consultation.record.bowls.length > 0 && !isCarriedBowl(walk));
  const did = `seed ${seed}: ${lived.length} walks back, ${carried.length} carried, ${refused.length} refused to, ${bowls.length} with a carried bowl, ${tested.length} with bowls on strands of today alone`;
  console.log(tellShare('walks', did, `${LONG_RUNS} walks back`));
  for (const some of [carried, refused, bowls]) expect(some.length).toBeGreaterThan(chooseSize(20, 60));
  expect(tested.length).toBeGreaterThan(chooseSize(3, 10));
});

test('the oracle hears when the carrying, or who she is, is cut out before such a bowl', () => {
  for (const { consultation, inheritsStop } of lived.filter(isCarriedBowl)) {
    const without = consultation.log.filter(({ type }) => type !== 'OUTCOME_CARRIED');
    expect(listFaults(without, inheritsStop)).not.toEqual([]);
    const stranger = consultation.log.map((event) => {
      if (event.type !== 'OPENED') return event;
      const { lastTime: _lastTime, ...payload } = event.payload;
      return { ...event, payload };
    });
    expect(listFaults(stranger, inheritsStop)).not.toEqual([]);
  }
});

test('a log that carried is refused when any one word for the guards, or what was mixed last time, was changed by hand', () => {
  const refusalOf = (log: LivedWalk['consultation']['log']) => {
    const again = replay('walk', JSON.parse(JSON.stringify(log)), findSettings);
    return again.ok ? 'TAKEN UP' : again.error.code;
  };
  const logs = lived.filter(isCarriedBowl).map(({ consultation }) => consultation.log);
  let forged = 0;
  for (const log of logs.slice(0, chooseSize(2, 6))) {
    for (const each of forgeTokens(log)) {
      forged += 1;
      expect(refusalOf(each.forged), each.what).not.toBe('TAKEN UP');
    }
  }
  console.log(`${forged} tokens changed, one at a time`);
  expect(forged).toBeGreaterThan(chooseSize(100, 300));
  for (const log of logs) {
    const weaker = log.map((event) => {
      if (event.type !== 'OPENED' || event.payload.lastTime === undefined) return event;
      const { lastTime } = event.payload;
      const zones = lastTime.zones.map((zone) => ({
        ...zone,
        bowl: { ...zone.bowl, developerPercent: 1 },
      }));
      return { ...event, payload: { ...event.payload, lastTime: { ...lastTime, zones } } };
    });
    expect(refusalOf(weaker)).not.toBe('TAKEN UP');
  }
});

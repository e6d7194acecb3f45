import fc from 'fast-check';
import { expect, test } from 'vitest';
import { replay } from '../../../machines/consultation/replay';
import { chooseSize, tellShare } from '../../long';
import { addCounts, countAround, cutOut, findGate, noCounts, sign } from './walks/countWalk';
import { findDeadEnd } from './walks/goToBowl';
import { makeBowlOracle } from './walks/oracle/bowlOracle';
import { findSettings, settingsById } from './walks/rawTaps';
import { drawnWalks, type LivedWalk, live, tellWalk } from './walks/walk';

/** `WALK_SEED=7 WALK_RUNS=6000 npm run prove -- walks` walks otherwise, and longer. */
const seed = Number(process.env.WALK_SEED ?? 20_260_303);
const LONG_RUNS = 1400;
const numRuns = Number(process.env.WALK_RUNS ?? chooseSize(350, LONG_RUNS));
/** So many different walks have to weigh a bowl, and in so many of them has to happen what may happen around it. */
const [leastThrough, leastAround] = [chooseSize(250, 1000), chooseSize(8, 30)];

/** How often walks did what few do, by name: an oracle proves nothing about what never happens. */
const rareThings = [
  'STRAND_DISCARDED',
  'CLOCK_EXTENDED',
  'BOWL_APPLIED',
  'stinging',
  'asked anew',
  'skin test noted wrongly',
  'answer put back',
  'more time on the head',
];
const rare = new Map<string, number>();

function countRare(log: LivedWalk['consultation']['log']): void {
  for (const { type, tokens } of log) {
    const names = [
      ...(type === 'STRAND_DISCARDED' || type === 'CLOCK_EXTENDED' || type === 'BOWL_APPLIED' ? [type] : []),
      ...('stings' in tokens && tokens.stings ? ['stinging'] : []),
      ...('asksAnew' in tokens && tokens.asksAnew ? ['asked anew'] : []),
      ...('voids' in tokens && !tokens.voids ? ['skin test noted wrongly'] : []),
      ...('restores' in tokens && tokens.bearsOnPlan && tokens.restores.length > 0
        ? ['answer put back']
        : []),
      ...('isOnHead' in tokens && tokens.isOnHead ? ['more time on the head'] : []),
    ];
    for (const name of names) rare.set(name, (rare.get(name) ?? 0) + 1);
  }
}

/** Different walks that weighed a bowl, by their events. */
const through = new Map<string, LivedWalk>();

function listFaults(log: LivedWalk['consultation']['log'], inheritsStop: boolean): readonly string[] {
  const oracle = makeBowlOracle(inheritsStop, settingsById);
  return log.flatMap((event) => oracle.hear(event).map((fault) => `${event.type} although ${fault}`));
}

const takeUp = (log: LivedWalk['consultation']['log']) =>
  replay('walk', JSON.parse(JSON.stringify(log)), findSettings);

test('no walk weighs a bowl that the accepted events do not allow, and every log is taken up again', () => {
  const tally = { walks: 0, events: 0, refused: 0, bowls: 0, ended: 0 };
  fc.assert(
    fc.property(drawnWalks, (drawn) => {
      const walk = live(drawn);
      const { log, record, state } = walk.consultation;
      const faults = listFaults(log, walk.inheritsStop);
      if (faults.length > 0) throw new Error(`${faults.join('; ')}\n${tellWalk(walk)}`);
      if (log.length > 0) {
        const again = takeUp(log);
        if (!again.ok)
          throw new Error(`not taken up again: ${JSON.stringify(again.error)}\n${tellWalk(walk)}`);
        expect(again.value.record).toEqual(record);
        expect([again.value.state.value, again.value.state.context]).toEqual([state.value, state.context]);
      }
      countRare(log);
      tally.walks += 1;
      tally.events += log.length;
      tally.refused += walk.steps.length - log.length;
      tally.bowls += record.bowls.length;
      tally.ended += record.ended === null ? 0 : 1;
      if (record.bowls.length > 0) through.set(sign(walk), walk);
    }),
    { seed, numRuns },
  );
  const did = `seed ${seed}: ${tally.walks} walks, ${tally.events} events accepted, ${tally.refused} refused, ${tally.bowls} bowls weighed, ${tally.ended} ended`;
  console.log(tellShare('walks', did, `${LONG_RUNS} walks`));
}, 300_000);

test(`at least ${leastThrough} different walks weigh a bowl, with refusals, corrections and returns before and after`, () => {
  const counts = [...through.values()].map(countAround).reduce(addCounts, noCounts);
  console.log(`${through.size} different walks weighed a bowl; of those had ${JSON.stringify(counts)}`);
  expect(through.size).toBeGreaterThanOrEqual(leastThrough);
  for (const count of Object.values(counts)) expect(count).toBeGreaterThanOrEqual(leastAround);
  console.log(JSON.stringify(Object.fromEntries(rare)));
  expect(rareThings.filter((thing) => !rare.has(thing))).toEqual([]);
});

test('every beginning of a log is taken up again, and ends where the walk was', () => {
  let beginnings = 0;
  for (const { consultation, stages } of [...through.values()].slice(0, chooseSize(10, 25))) {
    for (const [index, stage] of stages.entries()) {
      const again = takeUp(consultation.log.slice(0, index + 1));
      if (!again.ok) throw new Error(JSON.stringify(again.error));
      expect(again.value.record).toEqual(stage.record);
      expect(again.value.state.context).toEqual(stage.state.context);
      beginnings += 1;
    }
  }
  console.log(`${beginnings} beginnings taken up again`);
  expect(beginnings).toBeGreaterThan(chooseSize(200, 500));
});

test('whoever goes on carefully comes to a bowl or an ending, from wherever a walk was left', () => {
  const left = fc.sample(drawnWalks, { seed, numRuns: chooseSize(75, 300) }).map(live);
  const stuck = left.flatMap((walk) => {
    const deadEnd = findDeadEnd(walk.consultation, walk.inheritsStop);
    return deadEnd === null ? [] : [`${deadEnd}\n${tellWalk(walk)}`];
  });
  expect(stuck).toEqual([]);
});

test('the oracle hears when the outcome or the decision before a bowl is missing', () => {
  for (const { consultation, inheritsStop } of through.values()) {
    const gate = findGate(consultation.log);
    for (const seq of [gate.outcomeSeq, gate.decisionSeq]) {
      expect(listFaults(cutOut(consultation.log, seq), inheritsStop)).not.toEqual([]);
    }
  }
});

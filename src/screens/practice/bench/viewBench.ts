import { type BenchStage, findBenchStage, isBenchDue } from '../../../../shared/hair/benchTrial';
import type { BenchTrial } from '../../../../shared/records/bench/benchTrial';
import type { BenchHair } from '../../../../shared/records/forms/bench';
import type { Words } from '../../../words/words';

/** One trial as it is listed: how far it is, and when the next thing is due. */
export interface BenchRow {
  readonly trial: BenchTrial;
  readonly stage: BenchStage;
  readonly dueAtMs: number | null;
}

const viewTrial = (trial: BenchTrial, nowMs: number): BenchRow => ({
  trial,
  ...findBenchStage(trial, nowMs),
});

const order = ({ stage }: BenchRow): number => (isBenchDue(stage) ? 0 : stage === 'read' ? 2 : 1);

/** How a stage is drawn, as the other tests of the salon are: by the shape and colour of what is due, waits or is done. */
export const drawStage = (stage: BenchStage): 'due' | 'waiting' | 'clear' => {
  if (isBenchDue(stage)) return 'due';
  return stage === 'read' ? 'clear' : 'waiting';
};

/** Those to be done first, then those that wait, then those that were read, the newest first; none that was taken back. */
export const listBench = (trials: readonly BenchTrial[], nowMs: number): readonly BenchRow[] =>
  trials
    .filter(({ takenBack }) => takenBack === null)
    .map((trial) => viewTrial(trial, nowMs))
    .sort((one, other) => order(one) - order(other) || other.trial.startedAtMs - one.trial.startedAtMs);

/** How many are to be taken out or read now? */
export const countBenchDue = (trials: readonly BenchTrial[], nowMs: number): number =>
  listBench(trials, nowMs).filter(({ stage }) => isBenchDue(stage)).length;

/** Which lie in boiling water past their time? By id. */
export const listBoiled = (trials: readonly BenchTrial[], nowMs: number): readonly string[] =>
  listBench(trials, nowMs)
    .filter(({ stage }) => stage === 'boiled')
    .map(({ trial }) => trial.id);

/** What was seen, in the answers of the trade; empty while it was not read. */
export function saySeen({ reading }: Pick<BenchTrial, 'reading'>, { bench }: Words): string {
  if (reading === null) return '';
  if ('curl' in reading) return bench.curl[reading.curl];
  return bench.both(bench.pulled[reading.pieces.dryPiece], bench.pulled[reading.pieces.wetPiece]);
}

export const sayHairOf = (hair: BenchHair, { bench }: Words): string => bench.hair[hair];

/** When the next thing is due; of one that was read, what was seen. */
export function sayWhen({ trial, stage, dueAtMs }: BenchRow, words: Words): string {
  const { bench, moments } = words;
  if (stage === 'read') return saySeen(trial, words);
  const when = moments.shortDayAndTime(dueAtMs ?? 0);
  if (stage === 'drying') return bench.from(when);
  const isSince = stage === 'late' || stage === 'boiled' || (stage === 'readable' && trial.kind === 'dryWet');
  return isSince ? bench.since(when) : bench.until(when);
}

import {
  advanceBench,
  type BenchFault,
  type BenchTrial,
  replayBench,
} from '../../shared/records/bench/benchTrial';
import { classifyBench, type RawBenchEvent } from '../../shared/records/bench/classify';
import type { RawForm } from '../../shared/records/readForm';
import { accept, type Result, refuse } from '../../shared/result';
import type { Json } from '../storage/json';
import type { Board } from './board';
import { BENCH, nameBenchLog, readLogId } from './logNames';
import { stampTime } from './stampTime';
import type { SubmitRefusal } from './submitRefusal';
import type { Taking } from './taking';

/** The line in which bench trials are written: no log has this name. */
export const BENCH_TRIALS = 'benchtrials';

/** Every bench trial of these logs, oldest first; what could not be taken up is named. */
export function readBenchTrials(logs: ReadonlyMap<string, readonly Json[]>): {
  readonly trials: readonly BenchTrial[];
  readonly refused: readonly { readonly name: string; readonly fault: BenchFault }[];
} {
  const trials: BenchTrial[] = [];
  const refused: { name: string; fault: BenchFault }[] = [];
  for (const [name, entries] of logs) {
    if (!name.startsWith(BENCH)) continue;
    const read = replayBench(readLogId(name), entries);
    if (read.ok) trials.push(read.value);
    else refused.push({ name, fault: read.error });
  }
  return { trials: trials.sort((one, other) => one.startedAtMs - other.startedAtMs), refused };
}

/** What is done about bench trials, each within the line `BENCH_TRIALS`. */
export interface BenchKeeping {
  /** Answers the new trial's id. */
  start(by: string, answers: RawForm): Promise<Result<string, SubmitRefusal>>;
  change(id: string, by: string, raw: RawBenchEvent): Promise<Result<void, SubmitRefusal>>;
}

/**
 * Bench trials are written in a log each; nothing of a client hangs on them.
 * Checked in tests/src/station/benchTrials.test.ts.
 */
export function makeBenchTrials(
  board: Board,
  { append }: Pick<Taking, 'append'>,
  { now, makeId }: { readonly now: () => number; readonly makeId: () => string },
): BenchKeeping {
  const write = async (
    id: string,
    before: BenchTrial | null,
    by: string,
    raw: RawBenchEvent,
  ): Promise<Result<void, SubmitRefusal>> => {
    const { units } = board.read().settings.settings;
    const atMs = stampTime(now(), before?.newestAtMs ?? 0);
    const event = classifyBench(before, raw, { units, atMs, by });
    if (!event.ok) return event;
    const after = advanceBench(id, before, event.value);
    if (after === null) return refuse({ kind: 'notNow' });
    const written = await append(nameBenchLog(id), event.value as unknown as Json);
    if (!written.ok) return written;
    board.show({ bench: [...board.read().bench.filter((each) => each.id !== id), after] });
    return accept(undefined);
  };
  return {
    async start(by, answers) {
      const id = makeId();
      const written = await write(id, null, by, { type: 'BENCH_STARTED', answers });
      return written.ok ? accept(id) : written;
    },
    async change(id, by, raw) {
      const trial = board.read().bench.find((each) => each.id === id);
      return trial === undefined ? refuse({ kind: 'notNow' }) : write(id, trial, by, raw);
    },
  };
}

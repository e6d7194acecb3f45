import { type BenchCourse, findBenchStage } from '../../hair/benchTrial';
import { accept, type Result, refuse } from '../../result';
import type { BenchHair, CurlAnswer, PiecesAnswer } from '../forms/bench';
import type { EntryFault } from '../parseEvent';
import type { Stamp } from '../record';
import { type BenchEvent, parseBenchEvent } from './event';

type Named = Omit<Stamp, 'seq'> & { readonly code: string; readonly words: string };

/** What was seen in the end, by whom and when. */
export type BenchReading = Omit<Stamp, 'seq'> &
  ({ readonly curl: CurlAnswer } | { readonly pieces: PiecesAnswer });

/** One trial at the bench as the fold of its own log. */
export interface BenchTrial extends BenchCourse {
  readonly id: string;
  readonly hair: BenchHair;
  readonly startedBy: string;
  readonly outBy: string | null;
  readonly reading: BenchReading | null;
  /** Readings that were taken back by name. */
  readonly readingsTakenBack: readonly Named[];
  /** The whole trial was noted wrongly: it stands for nothing. */
  readonly takenBack: Named | null;
  readonly newestAtMs: number;
}

/**
 * May this be noted of this trial now? Out of the water, and read, only after its time; each kind by what is looked at;
 * taken back only what is there. Checked in tests/shared/records/bench/benchTrial.test.ts.
 */
export function mayNote(trial: BenchTrial | null, { type, payload, atMs }: BenchEvent): boolean {
  if (trial === null) return type === 'BENCH_STARTED';
  if (trial.takenBack !== null) return false;
  const { stage } = findBenchStage(trial, atMs);
  const isReadable = stage === 'readable' || stage === 'late';
  switch (type) {
    case 'BENCH_STARTED':
      return false;
    case 'BENCH_TAKEN_OUT':
      return stage === 'boiled';
    case 'BENCH_CURL_READ':
      return isReadable && trial.kind === 'boilSet';
    case 'BENCH_PIECES_READ':
      return isReadable && trial.kind === 'dryWet';
    case 'BENCH_TAKEN_BACK':
      return payload.what === 'trial' || trial.isRead;
  }
}

function change(trial: BenchTrial, event: BenchEvent): Partial<BenchTrial> {
  const { atMs, by } = event;
  switch (event.type) {
    case 'BENCH_STARTED':
      return {};
    case 'BENCH_TAKEN_OUT':
      return { outAtMs: atMs, outBy: by };
    case 'BENCH_CURL_READ':
      return { isRead: true, reading: { atMs, by, curl: event.payload.curl } };
    case 'BENCH_PIECES_READ':
      return { isRead: true, reading: { atMs, by, pieces: event.payload } };
    case 'BENCH_TAKEN_BACK': {
      const { what, code, words } = event.payload;
      const named = { atMs, by, code, words };
      return what === 'trial'
        ? { takenBack: named }
        : { isRead: false, reading: null, readingsTakenBack: [...trial.readingsTakenBack, named] };
    }
  }
}

/** The trial after this event; null where it may not be noted now, so that no log says what could not be. */
export function advanceBench(id: string, trial: BenchTrial | null, event: BenchEvent): BenchTrial | null {
  if (!mayNote(trial, event)) return null;
  const { atMs, by } = event;
  if (trial !== null) return { ...trial, ...change(trial, event), newestAtMs: atMs };
  if (event.type !== 'BENCH_STARTED') return null;
  return {
    id,
    ...event.payload,
    startedAtMs: atMs,
    startedBy: by,
    outAtMs: null,
    outBy: null,
    isRead: false,
    reading: null,
    readingsTakenBack: [],
    takenBack: null,
    newestAtMs: atMs,
  };
}

/** Why the stored log of a bench trial is not taken up, and at which entry. */
export interface BenchFault {
  readonly seq: number;
  readonly code: EntryFault | 'wentBackInTime' | 'saysOtherwise' | 'empty';
}

/** What trial does this stored log make, or what is wrong with it? Every entry passes the schema and the judge again. */
export function replayBench(id: string, entries: readonly unknown[]): Result<BenchTrial, BenchFault> {
  let trial: BenchTrial | null = null;
  for (const [seq, entry] of entries.entries()) {
    const event = parseBenchEvent(entry);
    if (!event.ok) return refuse({ seq, code: event.error });
    if (event.value.atMs < (trial?.newestAtMs ?? 0)) return refuse({ seq, code: 'wentBackInTime' });
    const next = advanceBench(id, trial, event.value);
    if (next === null) return refuse({ seq, code: 'saysOtherwise' });
    trial = next;
  }
  return trial === null ? refuse({ seq: 0, code: 'empty' }) : accept(trial);
}

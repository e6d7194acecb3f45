import type { FindSettings } from '../../machines/consultation/replay';
import type { RawBenchEvent } from '../../shared/records/bench/classify';
import type { RawEvent } from '../../shared/records/classify';
import type { ClockJump } from '../../shared/records/clockJump';
import type { RawForm } from '../../shared/records/readForm';
import type { RawSkinTestEvent } from '../../shared/records/skinTest/classify';
import type { Result } from '../../shared/result';
import type { Json } from '../storage/json';
import type { Store } from '../storage/store';
import type { Logs } from '../storage/watcherChannel';
import type { BroughtIn } from './bringIn';
import type { RecordsBrought } from './bringInRecords';
import type { ToErase } from './erasing';
import type { Examined } from './examining';
import type { Notice } from './notice';
import type { Practising } from './practice/practising';
import type { Sharing } from './sharing';
import type { StationState } from './stationState';
import type { SubmitRefusal } from './submitRefusal';

export interface StationParts {
  readonly store: Store;
  readonly now: () => number;
  readonly makeId: () => string;
  /** Of the invented salon: nothing of it comes into another, nor the other way round. */
  readonly isDemo?: boolean;
  /** Of practice: the tablet's own clock, beside which `now` is that of practice. Nothing of it leaves it or comes in. */
  readonly practice?: { readonly readWallMs: () => number } | undefined;
  readonly publish: (state: StationState) => void;
  /** What other windows are to hear; the store's own acknowledgements, in their order. */
  readonly onAcknowledged: (name: string, seq: number, entry: Json) => void;
  readonly onDropped: (name: string) => void;
  /** A log is other than it was, and shorter: other windows are to be told all anew. */
  readonly onRewritten?: () => void;
  /** Jumps of the tablet's clock that nobody has explained. */
  readonly readJumps?: () => readonly ClockJump[];
}

/** What a person does about a skin test that is on. */
export type ChangeOfSkinTest = RawSkinTestEvent & {
  readonly type: 'SKIN_TEST_READ' | 'SKIN_TEST_TAKEN_BACK';
};

export interface Station extends Sharing, Practising {
  /**
   * Takes the writer's part: restores both copies, folds every log, sets aside what is not what it claims to be. `onUsable`
   * is called as soon as the bar may be used; it answers when all that closed earlier was looked through.
   */
  startWriting(onUsable?: () => void): Promise<void>;
  /** Shows what another window writes; `later`: months it has not told yet. */
  watch(logs: Logs, later?: readonly string[]): void;
  /** Gives the writer's part up, after all that is queued is written. */
  stopWriting(then?: 'watching' | 'noStore'): Promise<void>;
  /** Tries once more to write the record of a consultation that has ended, where the store refused it before. */
  finishClosing(id: string): Promise<Result<void, SubmitRefusal>>;
  /** Opens a consultation: its first event. Answers its id. */
  open(by: string, answers: RawForm): Promise<Result<string, SubmitRefusal>>;
  /** One tap: judged, let through by the chart, written to both copies, and only then shown. */
  submit(id: string, by: string, raw: RawEvent): Promise<Result<void, SubmitRefusal>>;
  /** Several taps that belong together, one after the other with nothing in between; stops at the first refusal. */
  submitAll(id: string, by: string, raws: readonly RawEvent[]): Promise<Result<void, SubmitRefusal>>;
  /** Puts a skin test on, in a record of its own by ticket, which every open consultation of it cites. Answers its id. */
  putOnSkinTest(by: string, answers: RawForm): Promise<Result<string, SubmitRefusal>>;
  /** Says what is seen of a skin test, or takes it back by name: in its own record, then wherever it is cited. */
  changeSkinTest(id: string, by: string, raw: ChangeOfSkinTest): Promise<Result<void, SubmitRefusal>>;
  /** Starts a trial at the bench, in a log of its own. Answers its id. */
  startBenchTrial(by: string, answers: RawForm): Promise<Result<string, SubmitRefusal>>;
  /** Out of the water, read, or taken back by name. */
  changeBenchTrial(id: string, by: string, raw: RawBenchEvent): Promise<Result<void, SubmitRefusal>>;
  /** Keeps a new edition of the settings; those that events were judged under stay kept for ever. */
  saveSettings(by: string, settings: unknown): Promise<Result<void, SubmitRefusal>>;
  /** Puts the edition before the one in force back, as a new edition; undone again, it brings back what was undone. */
  undoSettings(by: string): Promise<Result<void, SubmitRefusal>>;
  /** The tablet's clock was set back from `seenMs`, the last time it was seen to show: says so in every consultation. */
  correctClocks(by: string, seenMs: number): Promise<Result<void, SubmitRefusal>>;
  /** A person says that this jump was no sleep: skin tests that were on have waited for so much less. */
  sayPutAhead(by: string, jump: ClockJump): Promise<Result<void, SubmitRefusal>>;
  /** Takes closed records and skin tests away for good: in both copies, and for every backup that comes in later. */
  erase(by: string, what: ToErase): Promise<Result<void, SubmitRefusal>>;
  /** Goes on with an erasing that a copy refused half way. */
  finishErasing(): Promise<Result<void, SubmitRefusal>>;
  /** Erases what is past the time it is kept for, where the owner chose that it goes by itself. */
  eraseOverdue(): Promise<Result<void, SubmitRefusal>>;
  /** The whole station as one file, in pieces; nothing that was erased is in it. */
  backUp(): Generator<string, void>;
  /** Brings a backup in: all of it or, where the store refuses, as far as it came; the same file again goes on from there. */
  bringIn(file: string): Promise<Result<BroughtIn, SubmitRefusal>>;
  /** Brings closed consultations of a file in, each judged anew: all of them or, where the store refuses, as far as it came. */
  bringInRecords(file: string): Promise<Result<RecordsBrought, SubmitRefusal>>;
  /** How both copies stand now; null where this window does not write, and so cannot ask them. */
  examine(): Promise<Examined | null>;
  /** Which edition of the settings does an event of this station name? */
  readSettings(): FindSettings;
  /** All that is held and was read so far, by log: what a newly opened window asks for. */
  readLogs(): Logs;
  /** The closed months, read or not, the newest first. */
  listMonths(): readonly string[];
  /** What is held of one of them, which is read first. */
  readMonth(name: string): Promise<readonly Json[]>;
  /** The newest published state. */
  readState(): StationState;
  note(notice: Notice): void;
  dismiss(notice: Notice): void;
}

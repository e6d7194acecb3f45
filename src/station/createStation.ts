import { type Accessor, createEffect, createMemo, createSignal, on, onCleanup } from 'solid-js';
import { readPracticeNow } from '../../machines/practice/practiceClock';
import type { ClockJump } from '../../shared/records/clockJump';
import { msPerDay } from '../../shared/units/time';
import { type Edition, places } from '../storage/edition';
import { openStore } from '../storage/openStore';
import { speakAsWriter, type Watcher, type WriterVoice, watchWriter } from '../storage/watcherChannel';
import { type LostWhy, requestWriter, type WriterClaim } from '../storage/writerLock';
import { ofTablet } from '../tablet/keep';
import { createOthers } from './createOthers';
import { leavePlace } from './leavePlace';
import { CLOSED } from './logNames';
import { makeId } from './makeId';
import { makeStation } from './makeStation';
import type { Others } from './replicating';
import type { Station } from './station';
import { findNewestAtMs, type StationState } from './stationState';
import { createTicker } from './ticker';

/** What the screens have to do with: the published state, the time, and the ways to change something. */
export interface StationInUse
  extends Pick<
    Station,
    | 'open'
    | 'submit'
    | 'submitAll'
    | 'putOnSkinTest'
    | 'changeSkinTest'
    | 'startBenchTrial'
    | 'changeBenchTrial'
    | 'finishClosing'
    | 'saveSettings'
    | 'undoSettings'
    | 'erase'
    | 'finishErasing'
    | 'backUp'
    | 'bringIn'
    | 'bringInRecords'
    | 'readSettings'
    | 'examine'
    | 'note'
    | 'dismiss'
    | 'beginLesson'
    | 'tellOfSitting'
    | 'setSpeed'
    | 'keepLesson'
    | 'removeLesson'
  > {
  readonly state: Accessor<StationState>;
  readonly nowMs: Accessor<number>;
  /** The latest time this tablet is known to have shown: ahead of now when its clock was set back. */
  readonly seenMs: Accessor<number>;
  /** A person says the clock is right now: every consultation is told, and what ran stays as long as it was. */
  readonly correctClocks: (by: string) => ReturnType<Station['correctClocks']>;
  /** Jumps of the clock that nobody has explained yet; a person says that it slept, or that it was put ahead. */
  readonly jumps: Accessor<readonly ClockJump[]>;
  readonly saySlept: (jump: ClockJump) => void;
  readonly sayPutAhead: Station['sayPutAhead'];
  /** A window that watches asks the one that writes to hand over. */
  readonly askTakeOver: () => void;
  /** How this station stands with others; null where this window does not write, or the salon is invented. */
  readonly others: Accessor<Others | null>;
  /** Shares what is to be shared now, and not with the next round. */
  readonly shareNow: () => void;
}

/** The jumps of this tablet's clock that nobody has explained, kept by the tablet. */
interface KnownJumps {
  readonly jumps: Accessor<readonly ClockJump[]>;
  readonly note: (jump: ClockJump) => void;
  readonly forget: (jump: ClockJump) => void;
}

/**
 * The station of this window. It writes if no other window does, else it watches until that one is gone or yields.
 * Lives as long as the reactive root that made it.
 */
export function createStation(edition: Edition, clockJumps: KnownJumps): StationInUse {
  const { lock, channel: channelName } = places[edition];
  const [state, setState] = createSignal<StationState | undefined>();
  const { jumps, note: noteJump, forget } = clockJumps;
  const isPractice = edition === 'practice';
  const readChanges = () => station.readState().practice?.changes ?? [];
  const readNow = isPractice ? () => readPracticeNow(readChanges(), Date.now()) : Date.now;
  const station = makeStation({
    store: openStore(edition),
    now: readNow,
    makeId,
    isDemo: edition === 'demo',
    practice: isPractice ? { readWallMs: Date.now } : undefined,
    readJumps: jumps,
    publish: (next) => {
      refresh();
      setState(next);
    },
    onAcknowledged: (name, seq, entry) => {
      voice?.sayAcknowledged(name, seq, entry);
      sharing.noteWritten(name);
    },
    onDropped: (name) => voice?.sayDropped(name),
    onRewritten: () => voice?.sayAll(),
  });

  const { nowMs, refresh, seenMs, trustNow } = createTicker({
    readNow,
    // A faster clock jumps against the steady one all the time: in practice nobody is asked for it.
    ...(isPractice ? { readSteady: readNow, readTimes: () => readChanges().at(-1)?.times ?? 1 } : {}),
    // One window tells of it: the one that writes.
    onJump: (jump) => readState().mode === 'writing' && noteJump(jump),
  });
  const channel = new BroadcastChannel(channelName);
  let voice: WriterVoice | null = null;
  let watcher: Watcher | null = null;
  let claim: WriterClaim | null = null;

  const sharing = createOthers(station, ofTablet);

  const stopWatching = (): void => {
    watcher?.stop();
    watcher = null;
  };

  const write = async (): Promise<void> => {
    stopWatching();
    await station.startWriting(() => {
      voice = speakAsWriter(channel, {
        readLogs: () => new Map([...station.readLogs()].filter(([name]) => !name.startsWith(CLOSED))),
        listLater: station.listMonths,
        readLater: station.readMonth,
        onTakeOverAsked: () => void yieldPlace(),
      });
    });
    // An invented salon shares nothing with a real one.
    if (edition === 'salon' && station.readState().mode === 'writing') sharing.start();
  };

  const watch = (): void => {
    watcher ??= watchWriter(channel, station.watch);
  };

  const claimPlace = (): void => {
    claim = requestWriter(navigator.locks, lock, {
      onGranted: () => void write().catch(() => station.stopWriting('noStore')),
      onWaiting: watch,
      onLost: (why) => void losePlace(why),
    });
  };

  /** Without the lock nobody may write: what stands in line is written, then this window says so. */
  async function losePlace(why: LostWhy): Promise<void> {
    voice?.stop();
    voice = null;
    await leavePlace(station, sharing, 'noStore');
    station.note({ kind: 'lostPlace', why });
  }

  /** Another window asks for the place: everything queued is written, the handles are closed, then it is free. */
  async function yieldPlace(): Promise<void> {
    await leavePlace(station, sharing);
    voice?.stop();
    voice = null;
    claim?.giveUp();
    claimPlace();
  }

  /** With each day that begins, by the tablet's clock in UTC: a station may stand open for years. */
  const day = createMemo(() => Math.floor(nowMs() / msPerDay));
  createEffect(on(day, () => void station.eraseOverdue(), { defer: true }));

  claimPlace();
  onCleanup(() => {
    void sharing.stop();
    stopWatching();
    claim?.giveUp();
    channel.close();
  });

  const readState = (): StationState => state() ?? station.readState();

  return {
    state: readState,
    nowMs,
    open: station.open,
    submit: station.submit,
    submitAll: station.submitAll,
    putOnSkinTest: station.putOnSkinTest,
    changeSkinTest: station.changeSkinTest,
    startBenchTrial: station.startBenchTrial,
    changeBenchTrial: station.changeBenchTrial,
    finishClosing: station.finishClosing,
    saveSettings: station.saveSettings,
    undoSettings: station.undoSettings,
    erase: station.erase,
    finishErasing: station.finishErasing,
    backUp: station.backUp,
    bringIn: station.bringIn,
    bringInRecords: station.bringInRecords,
    readSettings: station.readSettings,
    examine: station.examine,
    seenMs: () => Math.max(seenMs(), findNewestAtMs(readState())),
    correctClocks: async (by) => {
      const corrected = await station.correctClocks(by, seenMs());
      if (corrected.ok) trustNow();
      return corrected;
    },
    note: station.note,
    dismiss: station.dismiss,
    beginLesson: station.beginLesson,
    tellOfSitting: station.tellOfSitting,
    setSpeed: station.setSpeed,
    keepLesson: station.keepLesson,
    removeLesson: station.removeLesson,
    jumps,
    saySlept: forget,
    sayPutAhead: async (by, jump) => {
      const said = await station.sayPutAhead(by, jump);
      if (said.ok) forget(jump);
      return said;
    },
    askTakeOver: () => watcher?.askTakeOver(),
    others: sharing.others,
    shareNow: sharing.goNow,
  };
}

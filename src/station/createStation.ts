import { type Accessor, createEffect, createMemo, createSignal, on, onCleanup } from 'solid-js';
import type { ClockJump } from '../../shared/records/clockJump';
import { msPerDay } from '../../shared/units/time';
import { type Edition, places } from '../storage/edition';
import { openStore } from '../storage/openStore';
import { speakAsWriter, type Watcher, type WriterVoice, watchWriter } from '../storage/watcherChannel';
import { type LostWhy, requestWriter, type WriterClaim } from '../storage/writerLock';
import { makeId } from './makeId';
import { makeStation } from './makeStation';
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
    | 'finishClosing'
    | 'saveSettings'
    | 'erase'
    | 'finishErasing'
    | 'backUp'
    | 'bringIn'
    | 'bringInRecords'
    | 'readSettings'
    | 'dismiss'
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
  const { nowMs, refresh, seenMs, trustNow } = createTicker({
    // One window tells of it: the one that writes.
    onJump: (jump) => readState().mode === 'writing' && noteJump(jump),
  });
  const channel = new BroadcastChannel(channelName);
  let voice: WriterVoice | null = null;
  let watcher: Watcher | null = null;
  let claim: WriterClaim | null = null;

  const station = makeStation({
    store: openStore(edition),
    now: Date.now,
    makeId,
    isDemo: edition === 'demo',
    readJumps: jumps,
    publish: (next) => {
      refresh();
      setState(next);
    },
    onAcknowledged: (name, seq, entry) => voice?.sayAcknowledged(name, seq, entry),
    onDropped: (name) => voice?.sayDropped(name),
    onRewritten: () => voice?.sayAll(),
  });

  const stopWatching = (): void => {
    watcher?.stop();
    watcher = null;
  };

  const write = async (): Promise<void> => {
    stopWatching();
    await station.startWriting();
    voice = speakAsWriter(channel, { readLogs: station.readLogs, onTakeOverAsked: () => void yieldPlace() });
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
    await station.stopWriting('noStore');
    station.note({ kind: 'lostPlace', why });
  }

  /** Another window asks for the place: everything queued is written, the handles are closed, then it is free. */
  async function yieldPlace(): Promise<void> {
    await station.stopWriting();
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
    finishClosing: station.finishClosing,
    saveSettings: station.saveSettings,
    erase: station.erase,
    finishErasing: station.finishErasing,
    backUp: station.backUp,
    bringIn: station.bringIn,
    bringInRecords: station.bringInRecords,
    readSettings: station.readSettings,
    seenMs: () => Math.max(seenMs(), findNewestAtMs(readState())),
    correctClocks: async (by) => {
      const corrected = await station.correctClocks(by, seenMs());
      if (corrected.ok) trustNow();
      return corrected;
    },
    dismiss: station.dismiss,
    jumps,
    saySlept: forget,
    sayPutAhead: async (by, jump) => {
      const said = await station.sayPutAhead(by, jump);
      if (said.ok) forget(jump);
      return said;
    },
    askTakeOver: () => watcher?.askTakeOver(),
  };
}

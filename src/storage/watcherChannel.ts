import type { Json } from './json';
import { pack, unpack } from './packed';
import { readMessage, type WindowMessage } from './windowMessage';

export type Logs = ReadonlyMap<string, readonly Json[]>;

/** The writer's voice: what it has acknowledged, said to every window that watches. */
export interface WriterVoice {
  sayAcknowledged(name: string, seq: number, entry: Json): void;
  sayDropped(name: string): void;
  /** Says anew what is there, as after a reload. */
  sayAll(): void;
  stop(): void;
}

/**
 * Lets other windows see what this one writes, and ask for its place.
 * `readLogs` answers what has been published so far. Whether to yield is the owner's to decide: it drains and
 * releases the store, then stops, then gives up the lock. Checked in tests/src/storage/watcherChannel.test.ts.
 */
export const speakAsWriter = (
  channel: BroadcastChannel,
  owner: {
    readonly readLogs: () => Logs;
    /** Large logs, which `readLogs` leaves out, and what is in one of them. */
    readonly listLater?: () => readonly string[];
    readonly readLater?: (name: string) => Promise<readonly Json[]>;
    readonly onTakeOverAsked: () => void;
  },
): WriterVoice => {
  let isStopped = false;
  const say = (message: WindowMessage): void => channel.postMessage(message);
  const sayAll = (): void =>
    say({ kind: 'all', logs: copyLogs(owner.readLogs()), later: [...(owner.listLater?.() ?? [])] });
  const sayLater = async (name: string): Promise<void> => {
    const entries = (await owner.readLater?.(name)) ?? [];
    if (!isStopped) say({ kind: 'later', name, texts: entries.map((each) => JSON.stringify(each)) });
  };
  const stopHearing = hear(channel, (message) => {
    if (message.kind === 'hello') sayAll();
    if (message.kind === 'askLater') void sayLater(message.name);
    if (message.kind === 'askTakeOver') owner.onTakeOverAsked();
  });
  sayAll();
  return {
    sayAcknowledged: (name, seq, entry) => say({ kind: 'acknowledged', name, seq, entry }),
    sayDropped: (name) => say({ kind: 'dropped', name }),
    sayAll,
    stop: () => {
      isStopped = true;
      stopHearing();
    },
  };
};

export interface Watcher {
  askTakeOver(): void;
  stop(): void;
}

/**
 * What does the window that writes show?
 * Asks for all once, then for the large logs one by one, then follows; `later`: those it has not heard yet. What does not join on (a message lost while this window was frozen) makes it
 * ask for all again; what it knows already is passed over. Checked in tests/src/storage/watcherChannel.test.ts.
 */
export const watchWriter = (
  channel: BroadcastChannel,
  onLogs: (logs: Logs, later: readonly string[]) => void,
): Watcher => {
  const say = (message: WindowMessage): void => channel.postMessage(message);
  let logs: Map<string, readonly Json[]> | null = null;
  let later: readonly string[] = [];

  const tell = (): void => {
    if (logs !== null) onLogs(logs, later);
  };
  const askNext = (): void => {
    const [name] = later;
    if (name !== undefined) say({ kind: 'askLater', name });
  };
  const takeLater = (name: string, texts: readonly string[]): void => {
    if (logs === null || !later.includes(name)) return;
    if (texts.length > 0) logs = new Map(logs).set(name, unpack(pack(texts)));
    later = later.filter((each) => each !== name);
    tell();
    askNext();
  };

  const follow = (name: string, seq: number, entry: Json): void => {
    // What is told by itself has it in it by then.
    if (logs === null || later.includes(name)) return;
    const known = logs.get(name) ?? [];
    if (seq > known.length) say({ kind: 'hello' });
    if (seq !== known.length) return;
    logs = new Map(logs).set(name, [...known, entry]);
    tell();
  };

  const drop = (name: string): void => {
    if (logs === null) return;
    logs = new Map(logs);
    logs.delete(name);
    tell();
  };

  const stopHearing = hear(channel, (message) => {
    if (message.kind === 'all') {
      logs = new Map(message.logs);
      later = message.later;
      tell();
      askNext();
    }
    if (message.kind === 'later') takeLater(message.name, message.texts);
    if (message.kind === 'acknowledged') follow(message.name, message.seq, message.entry);
    if (message.kind === 'dropped') drop(message.name);
  });
  say({ kind: 'hello' });
  return { askTakeOver: () => say({ kind: 'askTakeOver' }), stop: stopHearing };
};

const hear = (channel: BroadcastChannel, take: (message: WindowMessage) => void): (() => void) => {
  const listen = ({ data }: MessageEvent<unknown>): void => {
    const message = readMessage(data);
    if (message !== null) take(message);
  };
  channel.addEventListener('message', listen);
  return () => channel.removeEventListener('message', listen);
};

const copyLogs = (logs: Logs): Map<string, Json[]> =>
  new Map([...logs].map(([name, held]) => [name, [...held]]));

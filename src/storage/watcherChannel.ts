import type { Json } from './json';
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
  owner: { readonly readLogs: () => Logs; readonly onTakeOverAsked: () => void },
): WriterVoice => {
  const say = (message: WindowMessage): void => channel.postMessage(message);
  const sayAll = (): void => say({ kind: 'all', logs: copyLogs(owner.readLogs()) });
  const stopHearing = hear(channel, (message) => {
    if (message.kind === 'hello') sayAll();
    if (message.kind === 'askTakeOver') owner.onTakeOverAsked();
  });
  sayAll();
  return {
    sayAcknowledged: (name, seq, entry) => say({ kind: 'acknowledged', name, seq, entry }),
    sayDropped: (name) => say({ kind: 'dropped', name }),
    sayAll,
    stop: stopHearing,
  };
};

export interface Watcher {
  askTakeOver(): void;
  stop(): void;
}

/**
 * What does the window that writes show?
 * Asks for all once, then follows. What does not join on (a message lost while this window was frozen) makes it
 * ask for all again; what it knows already is passed over. Checked in tests/src/storage/watcherChannel.test.ts.
 */
export const watchWriter = (channel: BroadcastChannel, onLogs: (logs: Logs) => void): Watcher => {
  const say = (message: WindowMessage): void => channel.postMessage(message);
  let logs: Map<string, readonly Json[]> | null = null;

  const follow = (name: string, seq: number, entry: Json): void => {
    if (logs === null) return;
    const known = logs.get(name) ?? [];
    if (seq > known.length) say({ kind: 'hello' });
    if (seq !== known.length) return;
    logs = new Map(logs).set(name, [...known, entry]);
    onLogs(logs);
  };

  const drop = (name: string): void => {
    if (logs === null) return;
    logs = new Map(logs);
    logs.delete(name);
    onLogs(logs);
  };

  const stopHearing = hear(channel, (message) => {
    if (message.kind === 'all') {
      logs = new Map(message.logs);
      onLogs(logs);
    }
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

import { afterEach, describe, expect, it } from 'vitest';
import type { Json } from '../../../src/storage/json';
import { type Logs, speakAsWriter, watchWriter } from '../../../src/storage/watcherChannel';
import { readMessage } from '../../../src/storage/windowMessage';
import { entriesUpTo, entryAt } from './tablet';

const channels: BroadcastChannel[] = [];
let turn = 0;

/** Windows of one test hear each other and nobody else. */
const openWindow = (): BroadcastChannel => {
  const channel = new BroadcastChannel(`watch ${turn}`);
  channels.push(channel);
  return channel;
};
afterEach(() => {
  for (const channel of channels.splice(0)) channel.close();
  turn += 1;
});

const settle = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 25));

const startWriter = (logs: Map<string, Json[]>) => {
  const told: string[] = [];
  const voice = speakAsWriter(openWindow(), {
    readLogs: () => logs,
    onTakeOverAsked: () => told.push('asked'),
  });
  return { voice, told };
};

const startWatcher = () => {
  const seen: Logs[] = [];
  const watcher = watchWriter(openWindow(), (logs) => seen.push(logs));
  return { watcher, seen };
};

describe('a window that watches', () => {
  it('opened later is told all there is, and follows', async () => {
    const logs = new Map([['open-a', [...entriesUpTo(2)]]]);
    const { voice } = startWriter(logs);
    const { seen } = startWatcher();
    await settle();
    expect(seen.at(-1)).toStrictEqual(new Map([['open-a', entriesUpTo(2)]]));
    voice.sayAcknowledged('open-a', 2, entryAt(2));
    voice.sayAcknowledged('settings', 0, entryAt(0));
    await settle();
    expect(seen.at(-1)).toStrictEqual(
      new Map([
        ['open-a', entriesUpTo(3)],
        ['settings', entriesUpTo(1)],
      ]),
    );
    voice.sayDropped('settings');
    await settle();
    expect(seen.at(-1)).toStrictEqual(new Map([['open-a', entriesUpTo(3)]]));
  });

  it('opened first is told when a writer comes', async () => {
    const { seen } = startWatcher();
    await settle();
    expect(seen).toStrictEqual([]);
    startWriter(new Map([['settings', [1]]]));
    await settle();
    expect(seen.at(-1)).toStrictEqual(new Map([['settings', [1]]]));
  });

  it('asks again when an entry does not join on, and passes over what it knows', async () => {
    const logs = new Map([['open-a', [...entriesUpTo(2)]]]);
    const { voice } = startWriter(logs);
    const { seen } = startWatcher();
    await settle();
    const before = seen.length;
    voice.sayAcknowledged('open-a', 0, 'known already');
    await settle();
    expect(seen).toHaveLength(before);
    logs.set('open-a', [...entriesUpTo(4)]);
    voice.sayAcknowledged('open-a', 3, entryAt(3));
    await settle();
    expect(seen.slice(before)).toStrictEqual([new Map([['open-a', entriesUpTo(4)]])]);
  });

  it('shows nothing of a writer before it has heard all', async () => {
    const { seen } = startWatcher();
    const stray = openWindow();
    stray.postMessage({ kind: 'acknowledged', name: 'open-a', seq: 0, entry: 1 });
    stray.postMessage({ kind: 'dropped', name: 'open-a' });
    await settle();
    expect(seen).toStrictEqual([]);
  });

  it('may ask for the place, as long as the writer listens', async () => {
    const { voice, told } = startWriter(new Map());
    const asking = startWatcher();
    asking.watcher.askTakeOver();
    await settle();
    expect(told).toStrictEqual(['asked']);
    voice.stop();
    asking.watcher.askTakeOver();
    await settle();
    expect(told, 'a stopped writer hears nothing').toStrictEqual(['asked']);
  });

  it('that was stopped hears nothing', async () => {
    const { watcher, seen } = startWatcher();
    watcher.stop();
    startWriter(new Map([['settings', [1]]])).voice.stop();
    await settle();
    expect(seen).toStrictEqual([]);
  });
});

describe('what windows say', () => {
  it.each([
    null,
    'hello',
    {},
    { kind: 'else' },
    { kind: 'acknowledged', name: 'a', seq: -1, entry: 1 },
    { kind: 'acknowledged', name: 'a', seq: 0.5, entry: 1 },
    { kind: 'acknowledged', name: 'a', seq: 0 },
    { kind: 'all', logs: { a: [1] } },
    { kind: 'all', logs: new Map([['a', 1]]) },
    { kind: 'dropped' },
  ])('is passed over when it is none of the known things: %j', (data) => {
    expect(readMessage(data)).toBeNull();
  });
});

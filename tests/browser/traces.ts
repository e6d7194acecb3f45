import type { Page } from 'playwright-core';

/** Where a page leaves traces that others read: its addresses, titles, console, notifications, sockets, names of files. */
export interface Traces {
  /** Everything that was left so far, each with where it was left. */
  readonly list: () => Promise<readonly string[]>;
}

/** Begins to watch, before the page is opened. */
export async function watchTraces(page: Page): Promise<Traces> {
  const seen: string[] = [];
  const note = (where: string, what: string) => void seen.push(`${where}: ${what}`);
  page.context().on('request', (request) => note('asked', `${request.method()} ${request.url()}`));
  page.on('framenavigated', (frame) => note('address', frame.url()));
  page.on('console', (message) => note('console', message.text()));
  page.on('websocket', (socket) => note('socket', socket.url()));
  page.on('download', (download) => note('file', download.suggestedFilename()));
  page.on('popup', (popup) => note('window', popup.url()));
  await page.addInitScript(watch);
  return {
    list: async () => {
      const inPage = await page.evaluate(readTraces);
      return [...seen, ...inPage];
    },
  };
}

/** Runs in the page: what it sets and nobody outside hears of. */
function watch(): void {
  const left: string[] = [];
  Object.assign(globalThis, { left });
  for (const name of ['pushState', 'replaceState'] as const) {
    const real = history[name].bind(history);
    history[name] = (state, unused, url) => {
      left.push(`history: ${JSON.stringify(state)} ${String(url ?? '')}`);
      real(state, unused, url);
    };
  }
  const title = Object.getOwnPropertyDescriptor(Document.prototype, 'title');
  Object.defineProperty(document, 'title', {
    get: () => title?.get?.call(document) as string,
    set: (value: string) => {
      left.push(`title: ${value}`);
      title?.set?.call(document, value);
    },
  });
  if ('Notification' in globalThis) {
    Object.assign(globalThis, {
      Notification: class {
        static readonly permission = 'granted';
        constructor(...told: readonly unknown[]) {
          left.push(`notification: ${JSON.stringify(told)}`);
        }
      },
    });
  }
}

/** Runs in the page: the names under which it keeps things, and what lies in its two small stores. */
async function readTraces(): Promise<readonly string[]> {
  const left = [...((globalThis as { left?: string[] }).left ?? [])];
  left.push(`title: ${document.title}`, `address: ${location.href}`);
  for (const store of [localStorage, sessionStorage])
    for (const [key, value] of Object.entries(store)) left.push(`store: ${key} ${String(value)}`);
  const walk = async (folder: FileSystemDirectoryHandle): Promise<void> => {
    for await (const [name, entry] of folder.entries()) {
      left.push(`kept as: ${name}`);
      if (entry.kind === 'directory') await walk(entry as FileSystemDirectoryHandle);
    }
  };
  await walk(await navigator.storage.getDirectory());
  for (const { name = '' } of await indexedDB.databases()) {
    const database = await new Promise<IDBDatabase>((resolve, reject) => {
      const opening = indexedDB.open(name);
      opening.onsuccess = () => resolve(opening.result);
      opening.onerror = () => reject(opening.error);
    });
    for (const store of database.objectStoreNames) {
      const keys = await new Promise<readonly IDBValidKey[]>((resolve, reject) => {
        const asking = database.transaction(store).objectStore(store).getAllKeys();
        asking.onsuccess = () => resolve(asking.result);
        asking.onerror = () => reject(asking.error);
      });
      left.push(`database: ${name} ${store}`, ...keys.map((key) => `key: ${String(key)}`));
    }
    database.close();
  }
  for (const name of await caches.keys()) {
    const kept = await (await caches.open(name)).keys();
    left.push(`cache: ${name}`, ...kept.map(({ url }) => `cached: ${url}`));
  }
  return left;
}

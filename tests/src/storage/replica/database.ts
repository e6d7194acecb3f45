import { createServer, type RequestListener, type Server } from 'node:http';
import express from 'express';
import expressPouch from 'express-pouchdb';
import memory from 'pouchdb-adapter-memory';
import PouchDB from 'pouchdb-core';
import { makeForward } from '../../../../scripts/forward.mjs';
import { readReplicaAddress } from '../../../../scripts/replicaAddress.mjs';
import { listen, makeServer } from '../../../../scripts/server.mjs';

/** A database on loopback that speaks CouchDB's HTTP, and a station's own server that hands /replica/ on to it. */
export interface Database {
  /** Of the station's server, as the page asks it: ends with /replica/. */
  readonly base: string;
  /** For another station's server. */
  readonly forward: ReturnType<typeof makeForward>;
  /** Asks the database itself, past the station. */
  ask(path: string, options?: RequestInit): Promise<Response>;
  /** Writes rows there as they are, as somebody else would. */
  write(...docs: readonly unknown[]): Promise<void>;
  /** Ends its connections in the midst of whatever they are at; what it holds stays. */
  kill(): Promise<void>;
  /** Brought up again at the same place, with what it held or empty. */
  rise(how?: 'whole' | 'empty'): Promise<void>;
  /** Called with each question before the database sees it. */
  onAsked: ((method: string, path: string) => Promise<void> | void) | null;
  close(): Promise<void>;
}

const end = (server: Server): Promise<void> =>
  new Promise((resolve) => {
    server.close(() => resolve());
    server.closeAllConnections();
  });

let made = 0;
const json = { 'Content-Type': 'application/json' };

/** A new store in memory, which outlives the server in front of it. */
function makeStore(): RequestListener {
  made += 1;
  const ofMemory = PouchDB.plugin(memory).defaults({ adapter: 'memory', prefix: `of${made}-` });
  const app = express();
  app.use('/', expressPouch(ofMemory, { mode: 'minimumForPouchDB', inMemoryConfig: true }));
  return app;
}

export async function openDatabase(): Promise<Database> {
  let store = makeStore();
  let hook: Database['onAsked'] = null;
  const start = async (port: number) => {
    const server = createServer((request, response) => {
      const asked = hook?.(request.method ?? '', request.url ?? '');
      void Promise.resolve(asked).then(() => store(request, response));
    });
    return { server, port: await listen(server, { host: '127.0.0.1', port }) };
  };
  let running = await start(0);
  const root = `http://127.0.0.1:${running.port}`;
  const place = readReplicaAddress(`${root}/strandproof`);
  if (typeof place === 'string') throw new Error(place);
  const forward = makeForward(place);
  const station = makeServer('nowhere', forward);
  const stationPort = await listen(station, { host: '127.0.0.1', port: 0 });
  const ask: Database['ask'] = (path, options = {}) => fetch(`${root}/strandproof${path}`, options);
  await ask('', { method: 'PUT' });

  return {
    forward,
    base: `http://127.0.0.1:${stationPort}/replica/`,
    ask,
    async write(...docs) {
      const body = JSON.stringify({ docs });
      await ask('/_bulk_docs', { method: 'POST', headers: json, body });
    },
    kill: () => end(running.server),
    async rise(how = 'whole') {
      if (how === 'empty') store = makeStore();
      running = await start(running.port);
      if (how === 'empty') await ask('', { method: 'PUT' });
    },
    get onAsked() {
      return hook;
    },
    set onAsked(next) {
      hook = next;
    },
    async close() {
      await end(station);
      await end(running.server);
    },
  };
}

/** The few functions that are used of packages that ship no types; they stand in for a database in tests. */
declare module 'express' {
  import type { RequestListener } from 'node:http';
  export default function express(): RequestListener & { use(path: string, handler: RequestListener): void };
}
declare module 'pouchdb-core' {
  const PouchDB: {
    plugin(adapter: unknown): typeof PouchDB;
    defaults(options: { readonly adapter: string; readonly prefix?: string }): typeof PouchDB;
  };
  export default PouchDB;
}
declare module 'pouchdb-adapter-memory' {
  const adapter: unknown;
  export default adapter;
}
declare module 'express-pouchdb' {
  import type { RequestListener } from 'node:http';
  import type PouchDB from 'pouchdb-core';
  export default function expressPouch(
    database: typeof PouchDB,
    options: { readonly mode: 'minimumForPouchDB'; readonly inMemoryConfig: true },
  ): RequestListener;
}

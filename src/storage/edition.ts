/**
 * Which store is this? That of the salon, or that of an invented one. They share nothing: neither folder nor database,
 * neither the writer's lock nor the channel between windows.
 */
export type Edition = 'salon' | 'demo';

interface Place {
  /** Folder of the origin private file system; null for its top. */
  readonly folder: string | null;
  readonly database: string;
  readonly lock: string;
  readonly channel: string;
}

/** Names are for ever: they are where what is stored lies. */
export const places = {
  salon: {
    folder: null,
    database: 'strandproof',
    lock: 'strandproof-writer',
    channel: 'strandproof-windows',
  },
  demo: {
    folder: 'demo',
    database: 'strandproof-demo',
    lock: 'strandproof-demo-writer',
    channel: 'strandproof-demo-windows',
  },
} as const satisfies Readonly<Record<Edition, Place>>;

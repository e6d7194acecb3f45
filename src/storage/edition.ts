/**
 * Which store is this? That of the salon, that of an invented one, or that of practice. They share nothing: neither
 * folder nor database, neither the writer's lock nor the channel between windows.
 */
export type Edition = 'salon' | 'demo' | 'practice';

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
  practice: {
    folder: 'practice',
    database: 'strandproof-practice',
    lock: 'strandproof-practice-writer',
    channel: 'strandproof-practice-windows',
  },
} as const satisfies Readonly<Record<Edition, Place>>;

/** Of which edition is the worker of this name? A name no edition has is the salon's own. */
export const readEdition = (name: string): Edition =>
  name === 'demo' || name === 'practice' ? name : 'salon';

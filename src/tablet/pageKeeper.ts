/** `asking`: not known yet, or a page that is not to be kept. */
export type PageState = 'asking' | 'kept' | 'refused';

/** As much of a service worker as is needed. */
interface PageWorker {
  readonly state: string;
  addEventListener(type: 'statechange', listener: () => void): void;
}

/** As much of `navigator.serviceWorker` as is needed. */
export interface PageWorkers {
  register(
    address: string,
    options: { readonly updateViaCache: 'none' },
  ): Promise<{
    readonly active: PageWorker | null;
    readonly waiting: PageWorker | null;
    readonly installing: PageWorker | null;
  }>;
}

/**
 * Would this page open again without the network? Asks the browser to keep it, and tells `kept` once every file of
 * the build is there, `refused` where the browser has no such thing (`null`), forbids it, or could not get them all.
 * Checked in tests/src/tablet/pageKeeper.test.ts.
 */
export async function keepPage(
  workers: PageWorkers | null,
  onChange: (state: PageState) => void,
): Promise<void> {
  const registered = await workers
    ?.register('/serviceWorker.js', { updateViaCache: 'none' })
    .catch(() => undefined);
  if (registered?.active) return onChange('kept');
  const first = registered?.waiting ?? registered?.installing;
  if (!first) return onChange('refused');
  const look = (): void => {
    if (first.state === 'activated') onChange('kept');
    if (first.state === 'redundant') onChange('refused');
  };
  first.addEventListener('statechange', look);
  look();
}

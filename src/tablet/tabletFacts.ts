/** As much of `navigator.storage` as is needed. */
export interface Room {
  persisted(): Promise<boolean>;
  persist(): Promise<boolean>;
  estimate(): Promise<{ readonly usage?: number; readonly quota?: number }>;
}

/** What the browser says of this tablet; null where it says nothing. */
export interface TabletFacts {
  /** Does the browser keep what is stored, also when the tablet runs full? */
  readonly isPersisted: boolean | null;
  /** Bytes that this station takes and may take. The browser rounds both, and promises neither. */
  readonly usedBytes: number | null;
  readonly roomBytes: number | null;
  /** IANA name of the time zone, as "America/St_Johns". */
  readonly zone: string;
  /** CSS pixels of the window, and device pixels in each. */
  readonly widthPx: number;
  readonly heightPx: number;
  readonly pixelRatio: number;
  /** Opened from its own icon, without the browser around it? */
  readonly isOwnApp: boolean;
  readonly browser: string;
}

const orNull = <T>(asked: Promise<T> | undefined): Promise<T | null> =>
  (asked ?? Promise.resolve(null)).catch(() => null);

/** What the browser says of what is stored; whatever it does not answer is null. Checked in tests/src/tablet/tabletFacts.test.ts. */
export async function readRoom(
  room: Room | undefined,
): Promise<Pick<TabletFacts, 'isPersisted' | 'usedBytes' | 'roomBytes'>> {
  const [isPersisted, estimate] = await Promise.all([orNull(room?.persisted()), orNull(room?.estimate())]);
  return {
    isPersisted,
    usedBytes: estimate?.usage ?? null,
    roomBytes: estimate?.quota ?? null,
  };
}

/** Asks the browser to keep what is stored, where it does not yet. Answers whether it does now. */
export async function askToKeep(room: Room | undefined): Promise<boolean | null> {
  const isKept = await orNull(room?.persisted());
  return isKept === false ? orNull(room?.persist()) : isKept;
}

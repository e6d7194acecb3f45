/** `resting`: nobody has touched the tablet yet, or its screen is not in sight. */
export type WakeState = 'resting' | 'awake' | 'refused' | 'unavailable';

/** One lock that was granted; `release` fires when it is gone. */
interface Sentinel {
  readonly released: boolean;
  release(): Promise<void>;
  addEventListener(type: 'release', listener: () => void): void;
}

/** As much of `navigator.wakeLock` as is needed. */
export interface WakeLocks {
  request(type: 'screen'): Promise<Sentinel>;
}

export interface WakeKeeper {
  readonly state: () => WakeState;
  /** From the first touch on the screen is kept awake. */
  arm(): void;
  /** The page came into sight or went out of it. */
  look(): void;
  stop(): void;
}

/** After a refusal or a loss it is asked for again in so many ms. Assumed because a tablet put on its charger grants it. */
export const ASSUMED_ASK_AGAIN_MS = 30_000;

/**
 * Keeps the screen awake while it is in sight. The browser takes the lock away whenever the page is hidden, and may
 * refuse it (battery, policy, permission): then it is asked for again in sight, after a while and at each touch.
 * Checked in tests/src/tablet/wakeLock.test.ts.
 */
export function makeWakeKeeper(
  locks: WakeLocks | undefined,
  isInSight: () => boolean,
  onChange: (state: WakeState) => void,
): WakeKeeper {
  let sentinel: Sentinel | null = null;
  let isArmed = false;
  let isAsking = false;
  let isStopped = false;
  let state: WakeState = 'resting';
  let timer: ReturnType<typeof setTimeout> | undefined;
  let grantedAtMs = 0;

  const tell = (next: WakeState): void => {
    if (state === next || isStopped) return;
    state = next;
    onChange(next);
  };

  const askAgain = (): void => {
    clearTimeout(timer);
    if (!isStopped) timer = setTimeout(ask, ASSUMED_ASK_AGAIN_MS);
  };

  /** Taken away in sight, it is asked for at once; taken away again straight after that, not before a while. */
  function lose(): void {
    sentinel = null;
    if (!isInSight()) {
      tell('resting');
      return;
    }
    tell('refused');
    if (Date.now() - grantedAtMs < ASSUMED_ASK_AGAIN_MS) askAgain();
    else ask();
  }

  function ask(): void {
    if (!isArmed || isAsking || isStopped || sentinel !== null || !isInSight()) return;
    if (locks === undefined) {
      tell('unavailable');
      return;
    }
    isAsking = true;
    clearTimeout(timer);
    locks.request('screen').then(
      (granted) => {
        isAsking = false;
        if (isStopped) return void granted.release();
        if (granted.released) return askAgain();
        sentinel = granted;
        grantedAtMs = Date.now();
        granted.addEventListener('release', lose);
        tell('awake');
      },
      () => {
        isAsking = false;
        if (isInSight()) tell('refused');
        askAgain();
      },
    );
  }

  return {
    state: () => state,
    arm() {
      isArmed = true;
      ask();
    },
    look: ask,
    stop() {
      isStopped = true;
      clearTimeout(timer);
      void sentinel?.release().catch(() => undefined);
      sentinel = null;
    },
  };
}

import { type Accessor, createSignal, onCleanup } from 'solid-js';
import { type Kept, ofTablet } from './keep';
import { keepLastBackupAtMs, readLastBackupAtMs } from './lastBackup';
import { askToKeep, type Room, readRoom, type TabletFacts } from './tabletFacts';

/** What can be read of this tablet, and when it last handed the whole station out. */
export interface TabletFactsInUse {
  readonly read: () => Promise<TabletFacts>;
  readonly lastBackupAtMs: Accessor<number | null>;
  readonly noteBackup: (atMs: number) => void;
}

const findRoom = (): Room | undefined => ('storage' in navigator ? navigator.storage : undefined);

/**
 * Reads this tablet, and asks its browser once, at the first touch, to keep what is stored: browsers grant it to what is
 * used or installed, and some ask the person. Lives as long as the reactive root that made it.
 */
export function createTabletFacts(
  kept: Kept = ofTablet,
  room: Room | undefined = findRoom(),
): TabletFactsInUse {
  const [lastBackupAtMs, setLastBackupAtMs] = createSignal(readLastBackupAtMs(kept));
  const ask = (): void => {
    window.removeEventListener('pointerup', ask);
    void askToKeep(room);
  };
  window.addEventListener('pointerup', ask);
  onCleanup(() => window.removeEventListener('pointerup', ask));
  return {
    lastBackupAtMs,
    noteBackup: (atMs) => {
      keepLastBackupAtMs(kept, atMs);
      setLastBackupAtMs(atMs);
    },
    read: async () => ({
      ...(await readRoom(room)),
      zone: Intl.DateTimeFormat().resolvedOptions().timeZone,
      widthPx: window.innerWidth,
      heightPx: window.innerHeight,
      pixelRatio: window.devicePixelRatio,
      isOwnApp: ['fullscreen', 'standalone', 'minimal-ui'].some(
        (mode) => window.matchMedia(`(display-mode: ${mode})`).matches,
      ),
      browser: navigator.userAgent,
    }),
  };
}

import { createSignal, onCleanup } from 'solid-js';

/** So long a hold is, ms. Assumed because a wet glove that brushes past lets go sooner. */
export const ASSUMED_HOLD_MS = 800;
/** So long the other way stays open, ms. Assumed because a second press that comes later was not meant as one. */
export const ASSUMED_ARMED_MS = 5_000;

/**
 * The finger that held is still down, and what was done may have brought something else under it: its letting go is no
 * tap on that. A click of a key, a switch or a reader comes from no finger and counts. Checked in
 * tests/src/parts/holdButton.test.tsx.
 */
function passOverRelease(onPassed: () => void): void {
  const end = (): void => {
    document.removeEventListener('click', pass, true);
    document.removeEventListener('pointerdown', end, true);
  };
  const pass = (event: MouseEvent): void => {
    if (event.detail === 0) return;
    end();
    onPassed();
    event.preventDefault();
    event.stopImmediatePropagation();
  };
  document.addEventListener('click', pass, true);
  document.addEventListener('pointerdown', end, true);
}

/**
 * Is it being held, or armed for a second press?
 * A finger or a key held down for `ASSUMED_HOLD_MS` does it. Anything shorter, a switch or a reader's click arms it:
 * then a second press on the button that appears does it too. Checked in tests/src/parts/holdButton.test.tsx.
 */
export function createHold(onHeld: () => void) {
  const [phase, setPhase] = createSignal<'idle' | 'holding' | 'armed'>('idle');
  let timer: ReturnType<typeof setTimeout> | undefined;
  let isJustDone = false;

  const wait = (ms: number, then: () => void): void => {
    clearTimeout(timer);
    timer = setTimeout(then, ms);
  };
  const rest = (): void => {
    clearTimeout(timer);
    setPhase('idle');
  };
  const arm = (): void => {
    setPhase('armed');
    wait(ASSUMED_ARMED_MS, rest);
  };
  onCleanup(() => clearTimeout(timer));

  return {
    phase,
    begin: (): void => {
      isJustDone = false;
      setPhase('holding');
      wait(ASSUMED_HOLD_MS, () => {
        isJustDone = true;
        rest();
        passOverRelease(() => {
          isJustDone = false;
        });
        onHeld();
      });
    },
    /** The finger slid off, or the screen took the touch away. */
    breakOff: (): void => {
      if (phase() === 'holding') rest();
    },
    /** Let go in time arms it; the click that follows a full hold is none. */
    press: (): void => {
      if (isJustDone) isJustDone = false;
      else arm();
    },
    confirm: (): void => {
      rest();
      onHeld();
    },
  };
}

/**
 * So soon comes the second tap, ms. Assumed because the two taps of a double tap lie closer together, and nobody reads a
 * question in less. The root of the page may say otherwise: `data-double-tap-ms`.
 */
const ASSUMED_DOUBLE_TAP_MS = 350;

/**
 * So many times as long a tap is passed over that would say how skin, hair or scale are, and was meant for what stood there
 * before. Assumed because whoever looks at a scalp or a scale and then at the screen takes longer than 1.4 s.
 */
const ASSUMED_LOOKED_TIMES = 4;

/** So near lies the second tap, px. Assumed because 8 mm (149 dots an inch) is about half the tip of a gloved finger. */
const ASSUMED_ONE_PLACE_PX = 48;

interface Tap {
  readonly atMs: number;
  readonly x: number;
  readonly y: number;
  readonly control: Element | null;
  readonly says: string;
}

/**
 * The second tap of a double tap does nothing where the first one changed what lies under the finger: the next question,
 * what slid there, what a closed dialog laid bare, or a button that now says something else. What is quick but honest
 * counts: somewhere else, the same button again, or another one while the first still stands there. What says how skin,
 * hair or scale are (`data-looked`) waits longer: nobody has looked so soon. Danger and the sound's silence wait for
 * nothing, nor do keys. Returns what takes it away. Checked in tests/browser/doubleTaps.test.ts.
 */
export function passOverDoubleTaps(): () => void {
  let before: Tap | null = null;
  const look = (event: MouseEvent): void => {
    if (event.detail === 0) return;
    const now = readTap(event);
    const waitsForNothing = now.control?.matches('[data-kind="danger"], .silence') === true;
    if (before === null || waitsForNothing || !isOneDoubleTap(before, now) || isStillThere(before)) {
      before = now;
      return;
    }
    event.preventDefault();
    event.stopImmediatePropagation();
    // A third and a fourth tap of the same hurry are no better than the second.
    before = { ...before, atMs: now.atMs };
  };
  window.addEventListener('click', look, { capture: true });
  return () => window.removeEventListener('click', look, { capture: true });
}

const findControl = (target: EventTarget | null): Element | null =>
  target instanceof Element ? target.closest('button,input,select,textarea,a,label') : null;

const sayControl = (control: Element | null): string => control?.textContent ?? '';

function readTap({ target, timeStamp, clientX, clientY }: MouseEvent): Tap {
  const control = findControl(target);
  return { atMs: timeStamp, x: clientX, y: clientY, control, says: sayControl(control) };
}

const isOneDoubleTap = (one: Tap, other: Tap): boolean =>
  other.atMs - one.atMs < readDoubleTapMs(other.control) &&
  Math.hypot(other.x - one.x, other.y - one.y) < ASSUMED_ONE_PLACE_PX;

/** Does the first tap's button lie where it was tapped, and say what it said then? */
function isStillThere({ x, y, control, says }: Tap): boolean {
  const there = findControl(document.elementFromPoint(x, y));
  return there === control && sayControl(there) === says;
}

const readDoubleTapMs = (control: Element | null): number =>
  Number(document.documentElement.dataset.doubleTapMs ?? ASSUMED_DOUBLE_TAP_MS) *
  (control === null || control.closest('[data-looked]') === null ? 1 : ASSUMED_LOOKED_TIMES);

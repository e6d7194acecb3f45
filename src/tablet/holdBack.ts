/** What the station's own entry in the history of the browser is known by. For ever: a reload finds it there. */
const HELD = 'station';

/**
 * The tablet's Back, a button or a swipe from its edge, must not leave while colour is on somebody: does `onBack`
 * instead, which is the way to where she was. An entry of the station's own lies over that by which the page came. It is
 * laid with a touch or a key, since browsers pass over an entry nobody touched for, and again after each Back. Returns
 * what takes it away. Checked in tests/browser/back.test.ts.
 */
export function holdBack(onBack: () => void): () => void {
  const lay = (): void => {
    if (history.state !== HELD) history.pushState(HELD, '');
  };
  const goBack = (): void => {
    lay();
    onBack();
  };
  const touches = ['pointerup', 'keydown'] as const;
  for (const touch of touches) window.addEventListener(touch, lay, { capture: true });
  window.addEventListener('popstate', goBack);
  return () => {
    for (const touch of touches) window.removeEventListener(touch, lay, { capture: true });
    window.removeEventListener('popstate', goBack);
  };
}

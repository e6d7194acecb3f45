import type { Page } from 'playwright-core';
import type { Finding } from './finding';

/** Somewhere a Tab came to rest, as the page tells it. */
interface Stop {
  readonly id: number;
  readonly name: string;
  readonly box: {
    readonly left: number;
    readonly top: number;
    readonly right: number;
    readonly bottom: number;
  };
  /** How far everything around it was scrolled then: boxes are compared only where this is the same. */
  readonly scrolled: number;
  readonly isSeen: boolean;
  readonly isReached: boolean;
}

/** More stops than any screen has. */
const MOST_STOPS = 150;

/**
 * Does every control of this screen come by Tab, in the order in which it is read, with the focus in sight?
 * Goes once around; once more where something came up on the way, such as what the station tells of itself. Of a group
 * with one way in (tabindex −1 on the others) that one way is enough.
 */
export async function walkKeys(page: Page, isAgain = false): Promise<readonly Finding[]> {
  const wanted = await page.evaluate(listControls);
  await page.evaluate(watchFocus);
  const most = Math.min(MOST_STOPS, wanted.length + 12);
  for (let presses = 0; presses < most; presses += 1) {
    await page.keyboard.press('Tab');
    if (await page.evaluate(isRoundDone)) break;
  }
  const stops = await page.evaluate(readStops);
  if (!isAgain && stops.some(({ id }) => id === -1)) return walkKeys(page, true);
  const findings: Finding[] = [];
  const met = new Set(stops.map(({ id }) => id));
  for (const { id, name } of wanted) {
    if (!met.has(id)) findings.push({ rule: 'keyboard', element: name, measured: 'no Tab leads there' });
  }
  stops.forEach((stop, index) => {
    const say = (measured: string) => findings.push({ rule: 'keyboard', element: stop.name, measured });
    if (!stop.isSeen) say('no mark of the focus is drawn');
    if (!stop.isReached) say('the focus lies under something or outside the window');
    const before = stops[index - 1];
    // Going round, once, from the last of the page to its first.
    if (before === undefined || before.scrolled !== stop.scrolled || stop.id < before.id) return;
    if (isBackwards(before.box, stop.box)) say(`comes after ${before.name}`);
  });
  return findings;
}

/** Down, to the right, or up to the head of a column further right: anything else is backwards. */
function isBackwards(before: Stop['box'], after: Stop['box']): boolean {
  const isAbove = after.bottom <= before.top + 1;
  const isLeft = after.right <= before.left + 1;
  const isRight = after.left >= before.right - 1;
  const common = Math.min(before.bottom, after.bottom) - Math.max(before.top, after.top);
  const least = Math.min(before.bottom - before.top, after.bottom - after.top);
  if (isAbove) return !isRight;
  return isLeft && common > least / 2;
}

interface Watched {
  looksStops?: Stop[];
  looksControls?: Element[];
}

function listControls(): { id: number; name: string }[] {
  const root = [...document.querySelectorAll('dialog:modal, [role="dialog"][aria-modal="true"]')].at(-1);
  const all = (root ?? document.body).querySelectorAll<HTMLElement>(
    'button, a[href], input, select, textarea, summary, [tabindex]',
  );
  const shown = [...all].filter((element) => {
    if (element.matches(':disabled') || element.closest('[inert]') !== null) return false;
    if (element.tabIndex < 0) return false;
    if (element instanceof HTMLInputElement && element.type === 'radio' && !element.checked) return false;
    return element.checkVisibility({ visibilityProperty: true });
  });
  (window as Watched).looksControls = shown;
  return shown.map((element, id) => ({
    id,
    name: `${element.tagName.toLowerCase()}${[...element.classList].map((each) => `.${each}`).join('')} “${(
      element.getAttribute('aria-label') ??
      element.textContent ??
      ''
    )
      .replace(/\s+/g, ' ')
      .trim()
      .slice(0, 40)}”`,
  }));
}

function watchFocus(): void {
  const watched = window as Watched;
  const stops: Stop[] = [];
  watched.looksStops = stops;
  (document.activeElement as HTMLElement | null)?.blur();
  const look = () => {
    const element = document.activeElement;
    if (!(element instanceof HTMLElement) || element === document.body) return;
    const id = watched.looksControls?.indexOf(element) ?? -1;
    const { left, top, right, bottom } = element.getBoundingClientRect();
    const style = getComputedStyle(element);
    const isOutlined = style.outlineStyle !== 'none' && Number.parseFloat(style.outlineWidth) >= 3;
    const hit = document.elementFromPoint((left + right) / 2, (top + bottom) / 2);
    let scrolled = 0;
    for (let at: Element | null = element; at !== null; at = at.parentElement) scrolled += at.scrollTop;
    stops.push({
      id,
      scrolled,
      name: `${element.tagName.toLowerCase()}${[...element.classList].map((each) => `.${each}`).join('')} “${(
        element.getAttribute('aria-label') ??
        element.textContent ??
        ''
      )
        .replace(/\s+/g, ' ')
        .trim()
        .slice(0, 40)}”`,
      box: { left, top, right, bottom },
      isSeen: element.matches(':focus-visible') && isOutlined,
      isReached: hit !== null && (element.contains(hit) || hit.contains(element)),
    });
  };
  document.addEventListener('focusin', look);
}

/** Everything was met, or the first stop came a second time, which is taken back. */
function isRoundDone(): boolean {
  const { looksStops: stops = [], looksControls: controls = [] } = window as Watched;
  const last = stops.at(-1);
  if (
    stops.length > 1 &&
    last !== undefined &&
    stops.slice(0, -1).some(({ id }) => id === last.id && id !== -1)
  ) {
    stops.pop();
    return true;
  }
  return new Set(stops.map(({ id }) => id)).size >= controls.length && stops.length > controls.length;
}

function readStops(): Stop[] {
  return (window as Watched).looksStops ?? [];
}

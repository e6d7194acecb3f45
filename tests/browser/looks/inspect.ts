import type { Page } from 'playwright-core';
import type { Finding } from './finding';

/** Which rules does a look at the page as it stands try? */
export type Thoroughness = 'whole' | 'fit';

/** Actions of a screen, in px: 20 mm on a tablet of ten inches that is 1280 px wide. */
export const ACTION_PX = 118;
/** Whatever else may be tapped: published, WCAG 2.2, success criterion 2.5.5 (44 CSS px). */
export const TAP_PX = 44;
/** Published: WCAG 2.2, success criterion 1.4.6. */
export const CONTRAST = 7;

/**
 * What is wrong with this page as it is drawn now? `fit` looks for what scrolls, is cut or overlaps only.
 * Measured in the page itself; nothing is pressed. Each rule is tried by tests/browser/looks.breaches.test.ts.
 */
export const inspect = (
  page: Page,
  thoroughness: Thoroughness = 'whole',
  /** Where nobody stands with wet gloves, an option may be as small as whatever else may be tapped. */
  isMainWay = true,
): Promise<readonly Finding[]> =>
  page.evaluate(inspectPage, {
    isMainWay,
    actionPx: ACTION_PX,
    tapPx: TAP_PX,
    contrast: CONTRAST,
    isWhole: thoroughness === 'whole',
  });

interface Limits {
  readonly actionPx: number;
  readonly tapPx: number;
  readonly contrast: number;
  readonly isWhole: boolean;
  readonly isMainWay: boolean;
}

/** Runs in the page: it may use nothing from outside itself. */
function inspectPage({ actionPx, tapPx, contrast, isWhole, isMainWay }: Limits): Finding[] {
  type Box = { left: number; top: number; right: number; bottom: number };
  type Colour = { r: number; g: number; b: number; a: number };
  const said: Finding[] = [];
  const wide = window.innerWidth;
  const high = window.innerHeight;
  /** What an element says of itself is in its own px, its place in the window in those of the window. */
  const zoom = document.documentElement.currentCSSZoom;
  const dialogs = [...document.querySelectorAll('dialog:modal, [role="dialog"][aria-modal="true"]')];
  const root: Element = dialogs.at(-1) ?? document.body;
  /** What may lie over the rest on purpose. */
  const floating = '.hold-second, [data-floating], [data-popper-positioner]';
  const controlsAre =
    'button, a[href], input, select, textarea, summary, [role="button"], [role="slider"], [role="radio"], [role="switch"], [role="tab"]';
  const alwaysActions =
    '.step-actions button:not(.above-actions, .above-actions *), .hold-button, .hold-confirm, .place, dialog [data-kind="primary"]';
  const choices = 'button.option[data-option], .tile, .answer-tile, .sheet-tile';
  const actionsAre = isMainWay ? `${alwaysActions}, ${choices}` : alwaysActions;

  const styles = new Map<Element, CSSStyleDeclaration>();
  const styleOf = (element: Element): CSSStyleDeclaration => {
    const known = styles.get(element) ?? getComputedStyle(element);
    styles.set(element, known);
    return known;
  };
  const name = (element: Element): string => {
    const { act, question, option, chair } = (element as HTMLElement).dataset ?? {};
    const marks = Object.entries({ act, question, option, chair })
      .filter(([, value]) => value !== undefined)
      .map(([key, value]) => `[${key}=${value}]`);
    const classes = [...element.classList].map((each) => `.${each}`);
    const words = (element.textContent ?? '').replace(/\s+/g, ' ').trim().slice(0, 40);
    const within = element.closest('[data-question], [data-panel]');
    const { question: asked = '', panel = '' } = (within as HTMLElement | null)?.dataset ?? {};
    const place = within === null || within === element ? '' : `${asked}${panel} › `;
    return `${place}${element.tagName.toLowerCase()}${classes.join('')}${marks.join('')} “${words}”`;
  };
  const say = (rule: Finding['rule'], element: Element, measured: string) => {
    said.push({ rule, element: name(element), measured });
  };
  const px = (value: number): string => `${Math.round(value * 10) / 10} px`;
  const boxOf = (element: Element): Box => {
    const { left, top, right, bottom } = element.getBoundingClientRect();
    return { left, top, right, bottom };
  };
  const cross = (one: Box, other: Box): Box => ({
    left: Math.max(one.left, other.left),
    top: Math.max(one.top, other.top),
    right: Math.min(one.right, other.right),
    bottom: Math.min(one.bottom, other.bottom),
  });
  const isEmpty = ({ left, top, right, bottom }: Box): boolean => right - left < 1 || bottom - top < 1;
  const isShown = (element: Element): boolean => {
    if (element.closest('.only-heard, [inert]') !== null) return false;
    const { width, height } = element.getBoundingClientRect();
    if (width <= 1 || height <= 1) return false;
    return element.checkVisibility({ opacityProperty: true, visibilityProperty: true });
  };

  /** The boxes that cut this element: each with whether what lies outside can be scrolled to. */
  const listCutters = (element: Element): { element: Element; box: Box; x: string; y: string }[] => {
    const found: { element: Element; box: Box; x: string; y: string }[] = [];
    let isOut = false;
    for (
      let at: Element | null = element;
      at !== null && at !== document.documentElement;
      at = at.parentElement
    ) {
      const style = styleOf(at);
      const isCutting = style.overflowX !== 'visible' || style.overflowY !== 'visible';
      if (isCutting && !(isOut && style.position === 'static') && at !== document.body) {
        const { left, top } = at.getBoundingClientRect();
        const box = {
          left: left + at.clientLeft * zoom,
          top: top + at.clientTop * zoom,
          right: left + (at.clientLeft + at.clientWidth) * zoom,
          bottom: top + (at.clientTop + at.clientHeight) * zoom,
        };
        if (at.clientWidth > 0) found.push({ element: at, box, x: style.overflowX, y: style.overflowY });
      }
      if (style.position === 'fixed') break;
      if (style.position === 'absolute') isOut = true;
      else if (style.position !== 'static') isOut = false;
    }
    return found;
  };
  const scrolls = (way: string): boolean => way === 'auto' || way === 'scroll';

  /** What of this box can be seen, and how much of it is cut for good. */
  const cut = (box: Box, element: Element): { seen: Box; lost: number; by: string } => {
    let seen = box;
    let lost = 0;
    let by = '';
    const lose = (much: number, what: string) => {
      if (much > lost) [lost, by] = [much, what];
    };
    for (const cutter of listCutters(element)) {
      // A control is as large as its own border.
      if (cutter.element === element && element.matches(controlsAre)) continue;
      const inside = cross(seen, cutter.box);
      const x = Math.max(inside.left - seen.left, seen.right - inside.right);
      const y = Math.max(inside.top - seen.top, seen.bottom - inside.bottom);
      if (!scrolls(cutter.x)) lose(x, name(cutter.element));
      if (!scrolls(cutter.y)) lose(y, name(cutter.element));
      seen = inside;
      if (isEmpty(seen)) return { seen, lost, by };
    }
    const inWindow = cross(seen, { left: 0, top: 0, right: wide, bottom: high });
    lose(Math.max(inWindow.left - seen.left, seen.right - inWindow.right), 'the window');
    lose(Math.max(inWindow.top - seen.top, seen.bottom - inWindow.bottom), 'the window');
    return { seen: inWindow, lost, by };
  };

  // What has to be scrolled to.
  for (const element of [document.documentElement, ...root.querySelectorAll('*')]) {
    const style = styleOf(element);
    const isPage = element === document.documentElement;
    const x = element.scrollWidth - element.clientWidth;
    const y = element.scrollHeight - element.clientHeight;
    if ((isPage || scrolls(style.overflowX)) && x > 1) say('scrollsSideways', element, px(x));
    if ((isPage || scrolls(style.overflowY)) && y > 1 && element.clientHeight > 0)
      say('scrolls', element, px(y));
  }

  // Every run of letters that is seen.
  type Letters = { element: Element; box: Box };
  const letters: Letters[] = [];
  const ruler = document.createElement('canvas').getContext('2d');
  /** The box of a line is taller than its letters: the shares of it above and below what is drawn. */
  const measureLetters = (element: Element, text: string): { above: number; below: number } => {
    if (ruler === null) return { above: 0, below: 0 };
    const { fontStyle, fontWeight, fontSize, fontFamily } = styleOf(element);
    ruler.font = `${fontStyle} ${fontWeight} ${fontSize} ${fontFamily}`;
    const measured = ruler.measureText(text.trim());
    const up = measured.fontBoundingBoxAscent;
    const down = measured.fontBoundingBoxDescent;
    return {
      above: (up - measured.actualBoundingBoxAscent) / (up + down),
      below: (down - measured.actualBoundingBoxDescent) / (up + down),
    };
  };
  const walker = document.createTreeWalker(root, NodeFilter.SHOW_TEXT);
  const range = document.createRange();
  for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
    const element = node.parentElement;
    const text = node.textContent ?? '';
    if (element === null || text.trim() === '' || ['SCRIPT', 'STYLE', 'OPTION'].includes(element.tagName))
      continue;
    if (!element.checkVisibility({ opacityProperty: true, visibilityProperty: true })) continue;
    if (element.closest('.only-heard, [inert]') !== null) continue;
    range.selectNodeContents(node);
    const lines = [...range.getClientRects()].filter(({ width }) => width > 0.5);
    const drawn = measureLetters(element, text);
    const owner = element.closest(controlsAre);
    for (const line of lines) {
      const box = {
        left: line.left,
        top: line.top + drawn.above * line.height,
        right: line.right,
        bottom: line.bottom - drawn.below * line.height,
      };
      const { seen, lost, by } = cut(box, element);
      if (lost > 1.5) say('clipped', element, `${px(lost)} cut by ${by}`);
      if (owner !== null && root.contains(owner)) {
        const its = boxOf(owner);
        const out = Math.max(
          its.left - box.left,
          box.right - its.right,
          its.top - box.top,
          box.bottom - its.bottom,
        );
        if (out > 1.5) say('clipped', element, `${px(out)} outside of its ${owner.tagName.toLowerCase()}`);
      }
      if (!isEmpty(seen)) letters.push({ element, box: seen });
    }
    if (isWhole && lines.length > 1) {
      for (const { 0: word, index } of text.matchAll(/[\p{L}\p{N}]{3,}/gu)) {
        range.setStart(node, index);
        range.setEnd(node, index + word.length);
        const tops = new Set([...range.getClientRects()].map(({ top }) => Math.round(top)));
        if (tops.size > 1) say('torn', element, `“${word}”`);
      }
    }
  }

  const controls = [...root.querySelectorAll(controlsAre)].filter(isShown);
  for (const control of controls) {
    const { lost, by } = cut(boxOf(control), control);
    if (lost > 1.5) say('clipped', control, `${px(lost)} of it cut by ${by}`);
  }
  for (const field of controls) {
    if (!(field instanceof HTMLInputElement) && !(field instanceof HTMLTextAreaElement)) continue;
    const more = field.scrollWidth - field.clientWidth;
    if (more > 1) say('clipped', field, `${px(more)} of “${field.value}” not seen`);
  }

  // What lies over something else.
  const seenBoxes = [
    ...letters.map(({ element, box }) => ({ element, box, isText: true })),
    ...controls.map((element) => ({ element, box: cut(boxOf(element), element).seen, isText: false })),
  ].filter(({ box }) => !isEmpty(box));
  const isFloating = seenBoxes.map(({ element }) => element.closest(floating));
  const overlaps = new Set<string>();
  seenBoxes.forEach((one, index) => {
    for (let next = index + 1; next < seenBoxes.length; next += 1) {
      const other = seenBoxes[next];
      if (other === undefined || isFloating[index] !== isFloating[next]) continue;
      if (one.element === other.element) continue;
      if (!other.isText && other.element.contains(one.element)) continue;
      if (!one.isText && one.element.contains(other.element)) continue;
      const common = cross(one.box, other.box);
      const [x, y] = [common.right - common.left, common.bottom - common.top];
      if (x <= 1.5 || y <= 1.5) continue;
      const key = `${name(one.element)} over ${name(other.element)}`;
      if (overlaps.has(key)) continue;
      overlaps.add(key);
      say('overlap', one.element, `${px(x)} × ${px(y)} over ${name(other.element)}`);
    }
  });
  // What is tapped has to be what is seen there: in the middle, and just inside of each edge.
  const hitsOf = ({ left, top, right, bottom }: Box): readonly (readonly [number, number, string])[] => {
    const [x, y] = [(left + right) / 2, (top + bottom) / 2];
    // Of what is scrolled to its last line, no more than that is there to be tapped.
    const [inX, inY] = [Math.min(6, x - left), Math.min(6, y - top)];
    return [
      [x, y, 'in its middle'],
      [x, top + inY, 'at its upper edge'],
      [x, bottom - inY, 'at its lower edge'],
      [left + inX, y, 'at its left edge'],
      [right - inX, y, 'at its right edge'],
    ];
  };
  seenBoxes.forEach(({ element, box, isText }, index) => {
    if (isText || styleOf(element).pointerEvents === 'none') return;
    for (const [x, y, where] of hitsOf(box)) {
      const hit = document.elementFromPoint(x, y);
      if (hit === null || element.contains(hit) || hit.contains(element)) continue;
      if (hit.closest(floating) !== (isFloating[index] ?? null)) continue;
      say('overlap', element, `a tap ${where} goes to ${name(hit)}`);
      break;
    }
  });
  if (!isWhole) return said;

  // What a finger has to hit.
  for (const control of controls) {
    const { width, height } = control.getBoundingClientRect();
    const least = control.matches(actionsAre) ? actionPx : tapPx;
    if (width < least - 0.5 || height < least - 0.5) {
      say('target', control, `${px(width)} × ${px(height)}, at least ${least}`);
    }
  }

  // Letters against what is behind them.
  const read = (text: string): Colour | null => {
    const parts = /^rgba?\(([^)]+)\)$/
      .exec(text)?.[1]
      ?.split(/[\s,/]+/)
      .map(Number);
    if (parts === undefined) return null;
    const [r = 0, g = 0, b = 0, a = 1] = parts;
    return { r, g, b, a };
  };
  const over = (top: Colour, below: Colour): Colour => ({
    r: top.r * top.a + below.r * (1 - top.a),
    g: top.g * top.a + below.g * (1 - top.a),
    b: top.b * top.a + below.b * (1 - top.a),
    a: 1,
  });
  const isPainted = (element: Element): boolean => element instanceof SVGGeometryElement;
  const paintOf = (element: Element): Colour | null => {
    const style = styleOf(element);
    const colour = read(isPainted(element) ? style.fill : style.backgroundColor);
    if (colour === null) return null;
    return isPainted(element) ? { ...colour, a: colour.a * Number(style.fillOpacity) } : colour;
  };
  const fadeOf = (element: Element): number => {
    let fade = 1;
    for (let at: Element | null = element; at !== null; at = at.parentElement)
      fade *= Number(styleOf(at).opacity);
    return fade;
  };
  const groundOf = (element: Element, { left, right, top, bottom }: Box): Colour => {
    const under = document.elementsFromPoint((left + right) / 2, (top + bottom) / 2);
    const from = under.indexOf(element);
    const ancestors: Element[] = [];
    for (let at: Element | null = element; at !== null; at = at.parentElement) ancestors.push(at);
    const stack = from === -1 ? ancestors : under.slice(from);
    const isSvgText = element instanceof SVGTextContentElement;
    const paints = (isSvgText ? stack.filter((each) => each !== element) : stack)
      .map(paintOf)
      .filter((paint): paint is Colour => paint !== null && paint.a > 0);
    const solid = paints.findIndex(({ a }) => a === 1);
    const seen = solid === -1 ? paints : paints.slice(0, solid + 1);
    return seen.reduceRight((below, paint) => over(paint, below), { r: 255, g: 255, b: 255, a: 1 });
  };
  const light = ({ r, g, b }: Colour): number => {
    const [x = 0, y = 0, z = 0] = [r, g, b].map((each) => {
      const part = each / 255;
      return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * x + 0.7152 * y + 0.0722 * z;
  };
  const judgeContrast = (element: Element, box: Box, written: string) => {
    const ink = read(written);
    if (ink === null) return say('contrast', element, `its colour ${written} cannot be read`);
    const ground = groundOf(element, box);
    const drawn = over({ ...ink, a: ink.a * fadeOf(element) }, ground);
    const [one, other] = [light(drawn), light(ground)];
    const ratio = (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
    if (ratio < contrast - 0.005) say('contrast', element, `${ratio.toFixed(2)} : 1, at least ${contrast}`);
  };
  const judged = new Set<Element>();
  for (const { element, box } of letters) {
    if (judged.has(element)) continue;
    judged.add(element);
    const style = styleOf(element);
    judgeContrast(element, box, element instanceof SVGElement ? style.fill : style.color);
  }
  for (const field of controls) {
    if (!(field instanceof HTMLInputElement)) continue;
    const isHint = field.value === '' && field.placeholder !== '';
    if (field.value === '' && !isHint) continue;
    judgeContrast(
      field,
      boxOf(field),
      (isHint ? getComputedStyle(field, '::placeholder') : styleOf(field)).color,
    );
  }

  // The thing to do is the one at the bottom right.
  for (const action of controls.filter((each) => each.matches('.step-actions [data-kind="primary"]'))) {
    const { right, bottom } = boxOf(action);
    const row = action.closest('.step-actions');
    const beside = controls.find(
      (each) =>
        each !== action &&
        row?.contains(each) &&
        boxOf(each).left >= right - 1 &&
        boxOf(each).bottom > bottom - 60,
    );
    if (beside !== undefined) say('primary', action, `${name(beside)} is to its right`);
    // What the station tells of itself may stand below the screen.
    const edge = boxOf(action.closest('.station-screen') ?? document.documentElement);
    const isAtEdge = Math.abs(edge.right - 40 - right) <= 40 && Math.abs(edge.bottom - 40 - bottom) <= 40;
    if (!isAtEdge) {
      say('primary', action, `ends at ${px(right)}, ${px(bottom)} of ${px(edge.right)} × ${px(edge.bottom)}`);
    }
  }
  return said;
}

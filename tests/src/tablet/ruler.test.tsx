import { createRoot, createSignal } from 'solid-js';
import { describe, expect, it, onTestFinished } from 'vitest';
import type { GlassSides } from '../../../shared/units/card';
import type { Glass } from '../../../src/tablet/glass';
import { createRuler, type RulerParts } from '../../../src/tablet/ruler';

const glassOf = (screenPx: GlassSides, dotsPerPx = 1, zoom = 1): Glass => ({ screenPx, dotsPerPx, zoom });

/** A tablet that keeps what it is told, on a glass whose scale the test moves, and which it swaps for another. */
function makeGlass(sides: GlassSides = [800, 1280], kept = new Map<string, string>()) {
  const [scale, setScale] = createSignal(1);
  let glass = glassOf(sides);
  const parts: RulerParts = {
    kept: { getItem: (key) => kept.get(key) ?? null, setItem: (key, line) => void kept.set(key, line) },
    readScale: scale,
    readGlass: () => glass,
  };
  const switchOn = () =>
    createRoot((dispose) => {
      onTestFinished(dispose);
      return createRuler(parts);
    });
  const zoom = (to: number) => {
    setScale(to);
    window.dispatchEvent(new Event('resize'));
  };
  /** Nothing tells of it: the next touch does. */
  const lieOn = (next: Glass) => {
    glass = next;
    window.dispatchEvent(new Event('pointerdown'));
  };
  return { switchOn, zoom, lieOn, kept, parts };
}

describe('the ruler of this glass', () => {
  it('is not known before a card was laid on it, and kept from then on', () => {
    const glass = makeGlass();
    const ruler = glass.switchOn();
    expect(ruler.pxPerMm()).toBeNull();
    ruler.keep(5.88);
    expect(ruler.pxPerMm()).toBe(5.88);
    expect(glass.switchOn().pxPerMm()).toBe(5.88);
  });

  it('draws more px to a millimetre where the page is drawn smaller, so that it stays the same on the glass', () => {
    const glass = makeGlass();
    const ruler = glass.switchOn();
    ruler.keep(6);
    for (const scale of [0.88, 2, 1.76, 1.25]) {
      glass.zoom(scale);
      expect((ruler.pxPerMm() ?? 0) * scale).toBeCloseTo(6, 12);
    }
  });

  it('is of this glass only', () => {
    const { kept, switchOn } = makeGlass();
    switchOn().keep(6);
    expect(makeGlass([1080, 1920], kept).switchOn().pxPerMm()).toBeNull();
    expect(makeGlass([1280, 800], kept).switchOn().pxPerMm()).toBe(6);
  });

  it.each([
    ['moves the dots of a px and not the screen', [800, 1280], 1, 1, [800, 1280], 1.25, 1.25],
    ['does so at half the size', [800, 1280], 1, 1, [800, 1280], 0.5, 0.5],
    ['does so four times, in a window with a frame', [800, 1280], 1, 1.012, [800, 1280], 4, 4.1],
    ['moves the screen with it', [800, 1280], 1, 1, [667, 1067], 1.2, 1],
    ['moves neither', [800, 1280], 2, 1, [800, 1280], 2, 1.5],
    ['was moved back', [800, 1280], 1.5, 1.5, [1280, 800], 1, 1],
  ] as const)(
    'is known again after a reload where the zoom of the browser %s',
    (_name, sides, dots, zoom, sidesThen, dotsThen, zoomThen) => {
      const glass = makeGlass();
      glass.lieOn(glassOf(sides, dots, zoom));
      glass.switchOn().keep(6);
      glass.lieOn(glassOf(sidesThen, dotsThen, zoomThen));
      expect(glass.switchOn().pxPerMm()).toBe(6);
    },
  );

  it.each([
    ['with more px', [1080, 1920], 1],
    ['of as many px, twice as fine', [800, 1280], 2],
    ['of as many px, a tenth finer', [800, 1280], 1.1],
  ] as const)(
    'is none once the window lies on another glass %s, and there again on the first',
    (_n, sides, dots) => {
      const glass = makeGlass();
      const ruler = glass.switchOn();
      ruler.keep(6);
      glass.lieOn(glassOf(sides, dots));
      expect(ruler.pxPerMm()).toBeNull();
      expect(ruler.sides()).toEqual(sides.map((px) => Math.round(px * dots)));
      glass.lieOn(glassOf([800, 1280]));
      expect(ruler.pxPerMm()).toBe(6);
    },
  );

  it('kept before glasses were told apart by their scale is known by its dots', () => {
    const kept = new Map([['strandproof.ruler', '{"dotsPerMm":6,"of":"800x1280"}']]);
    const glass = makeGlass([1280, 800], kept);
    const ruler = glass.switchOn();
    expect(ruler.pxPerMm()).toBe(6);
    glass.lieOn(glassOf([800, 1280], 1.25, 1.25));
    expect(ruler.pxPerMm()).toBeNull();
  });

  it.each([
    '',
    '{',
    'null',
    '7',
    '{"dotsPerMm":"6","of":"800x1280"}',
    '{"dotsPerMm":400,"of":"800x1280"}',
    '{"dotsPerMm":9.5,"of":"800x1280"}',
  ])('is not known where “%s” was kept', (line) => {
    expect(
      makeGlass([800, 1280], new Map([['strandproof.ruler', line]]))
        .switchOn()
        .pxPerMm(),
    ).toBeNull();
  });

  it('forgets rather than draws a millimetre that no glass has', () => {
    const ruler = makeGlass().switchOn();
    ruler.keep(6);
    ruler.keep(0);
    expect(ruler.pxPerMm()).toBeNull();
  });

  it('holds until the page is left where nothing can be kept', () => {
    const full: RulerParts['kept'] = {
      getItem: () => null,
      setItem: () => {
        throw new DOMException('full', 'QuotaExceededError');
      },
    };
    const ruler = createRoot((dispose) => {
      onTestFinished(dispose);
      return createRuler({ ...makeGlass().parts, kept: full });
    });
    ruler.keep(6);
    expect(ruler.pxPerMm()).toBe(6);
  });
});

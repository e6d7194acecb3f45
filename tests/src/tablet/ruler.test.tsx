import { createRoot, createSignal } from 'solid-js';
import { describe, expect, it, onTestFinished } from 'vitest';
import type { GlassSides } from '../../../shared/units/card';
import { createRuler, type RulerParts } from '../../../src/tablet/ruler';

/** A tablet that keeps what it is told, on a glass whose scale the test moves. */
function makeGlass(sides: GlassSides = [800, 1280], kept = new Map<string, string>()) {
  const [scale, setScale] = createSignal(1);
  const parts: RulerParts = {
    kept: { getItem: (key) => kept.get(key) ?? null, setItem: (key, line) => void kept.set(key, line) },
    readScale: scale,
    sides,
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
  return { switchOn, zoom, kept, parts };
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

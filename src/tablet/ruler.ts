import { type Accessor, createSignal, onCleanup } from 'solid-js';
import * as v from 'valibot';
import { type GlassSides, readDotsPerMm } from '../../shared/units/card';
import { type Kept, keep, ofTablet, readKept } from './keep';

/** How large is a millimetre on this glass? Known once a card was laid on it. */
export interface RulerInUse {
  /** px of the page to one mm; null while no card was laid on this glass. */
  readonly pxPerMm: Accessor<number | null>;
  /** Dots of the glass to one px of the page as it is drawn now. */
  readonly dotsPerPx: Accessor<number>;
  /** How many dots this glass has along each side: how large it would be tells a card from a slip. */
  readonly sides: GlassSides;
  readonly keep: (dotsPerMm: number) => void;
}

/** What a browser has of it. */
export interface RulerParts {
  readonly kept: Kept;
  /** Dots to one px of the page: the glass, times every zoom there is. */
  readonly readScale: () => number;
  /** Which glass is this? Its dots along each side, either way round. */
  readonly sides: GlassSides;
}

const KEY = 'strandproof.ruler';
const schema = v.object({ dotsPerMm: v.number(), of: v.string() });

/** Where a browser does not tell the zoom of the page, its style does. */
const readPageZoom = (): number => {
  const root = document.documentElement;
  const told: number | undefined = root.currentCSSZoom;
  return told ?? (Number.parseFloat(getComputedStyle(root).getPropertyValue('zoom')) || 1);
};

const countDots = (px: number): number => Math.round(px * window.devicePixelRatio);

const findParts = (): RulerParts => ({
  kept: ofTablet,
  readScale: () => window.devicePixelRatio * readPageZoom() * (window.visualViewport?.scale ?? 1),
  sides: [countDots(window.screen.width), countDots(window.screen.height)],
});

const nameGlass = (sides: GlassSides): string => [...sides].sort((one, other) => one - other).join('x');

/** What was kept of this very glass; anything else, another glass or a damaged line, is none. */
function readDots({ kept, sides }: RulerParts): number | null {
  const line = readKept(kept, KEY, schema);
  if (line?.of !== nameGlass(sides)) return null;
  const told = readDotsPerMm(line.dotsPerMm, sides);
  return told.ok ? told.value : null;
}

/**
 * The ruler of this glass. Kept beside the records and not among the settings: those are the salon's, hold on every
 * tablet and are named by each log, and this is one piece of glass. Lost, it is asked for again.
 * Lives as long as the reactive root that made it. Checked in tests/src/tablet/ruler.test.tsx.
 */
export function createRuler(parts: RulerParts = findParts()): RulerInUse {
  const [dotsPerMm, setDotsPerMm] = createSignal(readDots(parts));
  const [dotsPerPx, setDotsPerPx] = createSignal(parts.readScale());
  const look = () => setDotsPerPx(parts.readScale());
  const places = [window, window.visualViewport];
  for (const place of places) place?.addEventListener('resize', look);
  onCleanup(() => {
    for (const place of places) place?.removeEventListener('resize', look);
  });
  return {
    dotsPerPx,
    pxPerMm: () => {
      const dots = dotsPerMm();
      return dots === null ? null : dots / dotsPerPx();
    },
    sides: parts.sides,
    keep: (told) => {
      const read = readDotsPerMm(told, parts.sides);
      const believed = read.ok ? read.value : null;
      setDotsPerMm(believed);
      keep(parts.kept, KEY, { dotsPerMm: believed, of: nameGlass(parts.sides) });
    },
  };
}

import { type Accessor, createSignal, onCleanup } from 'solid-js';
import * as v from 'valibot';
import { readDotsPerMm } from '../../shared/units/card';
import { type Kept, keep, readKept } from './keep';

/** How large is a millimetre on this glass? Known once a card was laid on it. */
export interface RulerInUse {
  /** px of the page to one mm; null while no card was laid on this glass. */
  readonly pxPerMm: Accessor<number | null>;
  /** Dots of the glass to one px of the page as it is drawn now. */
  readonly dotsPerPx: Accessor<number>;
  readonly keep: (dotsPerMm: number) => void;
}

/** What a browser has of it; `kept` is missing where it keeps nothing. */
export interface RulerParts {
  readonly kept: Kept | undefined;
  /** Dots to one px of the page: the glass, times every zoom there is. */
  readonly readScale: () => number;
  /** Which glass is this? Its dots either way round. */
  readonly glass: string;
}

const KEY = 'strandproof.ruler';
const schema = v.object({ dotsPerMm: v.number(), of: v.string() });

/** Where a browser does not tell the zoom of the page, its style does. */
const readPageZoom = (): number => {
  const root = document.documentElement;
  const told: number | undefined = root.currentCSSZoom;
  return told ?? (Number.parseFloat(getComputedStyle(root).getPropertyValue('zoom')) || 1);
};

const findParts = (): RulerParts => {
  const sides = [window.screen.width, window.screen.height].map((px) =>
    Math.round(px * window.devicePixelRatio),
  );
  return {
    kept: findStorage(),
    readScale: () => window.devicePixelRatio * readPageZoom() * (window.visualViewport?.scale ?? 1),
    glass: sides.sort((one, other) => one - other).join('x'),
  };
};

function findStorage(): Storage | undefined {
  try {
    return window.localStorage;
  } catch {
    return undefined;
  }
}

/** What was kept of this very glass; anything else, another glass or a damaged line, is none. */
function readDots({ kept, glass }: RulerParts): number | null {
  const line = readKept(kept, KEY, schema);
  return line?.of === glass ? readDotsPerMm(line.dotsPerMm) : null;
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
    keep: (told) => {
      const believed = readDotsPerMm(told);
      setDotsPerMm(believed);
      keep(parts.kept, KEY, { dotsPerMm: believed, of: parts.glass });
    },
  };
}

import { type Accessor, createMemo, createSignal, onCleanup } from 'solid-js';
import * as v from 'valibot';
import { type GlassSides, readDotsPerMm } from '../../shared/units/card';
import { countDots, type Glass, glassSchema, isSameGlass, nameGlass, readSides } from './glass';
import { type Kept, keep, ofTablet, readKept } from './keep';

/** How large is a millimetre on this glass? Known once a card was laid on it. */
export interface RulerInUse {
  /** px of the page to one mm; null while no card was laid on this glass. */
  readonly pxPerMm: Accessor<number | null>;
  /** Dots of the glass to one px of the page as it is drawn now. */
  readonly dotsPerPx: Accessor<number>;
  /** How many dots this glass has along each side: how large it would be tells a card from a slip. */
  readonly sides: Accessor<GlassSides>;
  readonly keep: (dotsPerMm: number) => void;
}

/** What a browser has of it. */
export interface RulerParts {
  readonly kept: Kept;
  /** Dots to one px of the page: the glass, times every zoom there is. */
  readonly readScale: () => number;
  /** Which glass is this now? A window may be moved to another one. */
  readonly readGlass: () => Glass;
}

const KEY = 'strandproof.ruler';
const schema = v.object({ dotsPerMm: v.number(), ...glassSchema.entries });
type KeptRuler = v.InferOutput<typeof schema>;

/** When a glass may have become another one: nothing tells of it, but whoever measures there touches it first. */
const LOOK_AT = ['resize', 'focus', 'pointerdown'] as const;

/** Where a browser does not tell the zoom of the page, its style does. */
const readPageZoom = (): number => {
  const root = document.documentElement;
  const told: number | undefined = root.currentCSSZoom;
  return told ?? (Number.parseFloat(getComputedStyle(root).getPropertyValue('zoom')) || 1);
};

const findParts = (): RulerParts => ({
  kept: ofTablet,
  readScale: () => window.devicePixelRatio * readPageZoom() * (window.visualViewport?.scale ?? 1),
  readGlass: () => ({
    screenPx: [window.screen.width, window.screen.height],
    dotsPerPx: window.devicePixelRatio,
    zoom: window.outerWidth / window.innerWidth || 1,
  }),
});

/** A millimetre that no glass has is none, nor is one of a damaged line. */
const isBelieved = (line: KeptRuler): boolean => readDotsPerMm(line.dotsPerMm, readSides(line)).ok;

const readLine = (kept: Kept): KeptRuler | null => {
  const line = readKept(kept, KEY, schema);
  return line !== null && isBelieved(line) ? line : null;
};

const isSameView = (one: Glass, other: Glass): boolean =>
  one.dotsPerPx === other.dotsPerPx &&
  one.zoom === other.zoom &&
  one.screenPx.join() === other.screenPx.join();

/**
 * The ruler of this glass. Kept beside the records and not among the settings: those are the salon's, hold on every
 * tablet and are named by each log, and this is one piece of glass. Lost, or on another glass, it is asked for again.
 * Lives as long as the reactive root that made it. Checked in tests/src/tablet/ruler.test.tsx.
 */
export function createRuler(parts: RulerParts = findParts()): RulerInUse {
  const [line, setLine] = createSignal(readLine(parts.kept));
  const [dotsPerPx, setDotsPerPx] = createSignal(parts.readScale());
  const [glass, setGlass] = createSignal(parts.readGlass(), { equals: isSameView });
  const look = () => {
    setDotsPerPx(parts.readScale());
    setGlass(parts.readGlass());
  };
  for (const happens of LOOK_AT) window.addEventListener(happens, look, true);
  window.visualViewport?.addEventListener('resize', look);
  onCleanup(() => {
    for (const happens of LOOK_AT) window.removeEventListener(happens, look, true);
    window.visualViewport?.removeEventListener('resize', look);
  });
  return {
    dotsPerPx,
    pxPerMm: createMemo(() => {
      const here = line();
      return here === null || !isSameGlass(here, glass()) ? null : here.dotsPerMm / dotsPerPx();
    }),
    sides: createMemo(() => countDots(glass())),
    keep: (told) => {
      look();
      const next = { dotsPerMm: told, ...nameGlass(glass()) };
      const believed = isBelieved(next) ? next : null;
      setLine(believed);
      keep(parts.kept, KEY, believed);
    },
  };
}

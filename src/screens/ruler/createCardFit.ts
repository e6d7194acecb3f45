import { createMemo, createSignal } from 'solid-js';
import {
  CARD_WIDTH_MM,
  computeGlassMm,
  findDotsRange,
  type GlassRefusal,
  readDotsPerMm,
} from '../../../shared/units/card';
import type { RulerInUse } from '../../tablet/ruler';

/**
 * Where the lines stand before anybody moved them, px of the page to a mm. Assumed because 149 px an inch is a tablet of
 * ten inches that is 1280 px wide, for which everything here is drawn.
 */
const ASSUMED_FIRST_PX_PER_MM = 149 / 25.4;

/**
 * So far beyond what is believed the lines still move, as a share of it. Assumed because she is to see that they fit
 * what lies there, and read why it is no card.
 */
const ASSUMED_LINES_BEYOND = 0.5;

/** Why the ruler is not kept like this, and how large the glass would be across its corners, mm. */
export interface CardFault {
  readonly code: GlassRefusal;
  readonly glassMm: number;
}

/** A card is laid on the glass, and the lines are moved until they lie along its edges; then the ruler is kept. */
export function createCardFit(ruler: RulerInUse, onKept: () => void) {
  const range = createMemo(() => findDotsRange(ruler.sides()));
  const clamp = (dots: number, least: number, largest: number) => Math.min(Math.max(dots, least), largest);
  const first = (ruler.pxPerMm() ?? ASSUMED_FIRST_PX_PER_MM) * ruler.dotsPerPx();
  const [cardDots, setCardDots] = createSignal(clamp(first, range().fewest, range().most) * CARD_WIDTH_MM);
  const leastDots = () => range().fewest * ASSUMED_LINES_BEYOND * CARD_WIDTH_MM;
  const mostDots = () => range().most * (1 + ASSUMED_LINES_BEYOND) * CARD_WIDTH_MM;
  const told = createMemo(() => readDotsPerMm(cardDots() / CARD_WIDTH_MM, ruler.sides()));
  return {
    /** px of the page to one mm, were the lines to lie along the card now. */
    pxPerMm: () => cardDots() / CARD_WIDTH_MM / ruler.dotsPerPx(),
    /** The narrowest and the widest the lines go, px of the page: beyond both ends of what is believed. */
    leastPx: () => leastDots() / ruler.dotsPerPx(),
    mostPx: () => mostDots() / ruler.dotsPerPx(),
    isLeast: () => cardDots() <= leastDots(),
    isMost: () => cardDots() >= mostDots(),
    /** So many dots of the glass. */
    move: (dots: number) => setCardDots((before) => clamp(before + dots, leastDots(), mostDots())),
    /** No glass is like that: what lies between the lines is no card. */
    fault: (): CardFault | null => {
      const read = told();
      if (read.ok) return null;
      return { code: read.error, glassMm: computeGlassMm(cardDots() / CARD_WIDTH_MM, ruler.sides()) };
    },
    keep: (): void => {
      const read = told();
      if (!read.ok) return;
      ruler.keep(read.value);
      onKept();
    },
  };
}

export type CardFit = ReturnType<typeof createCardFit>;

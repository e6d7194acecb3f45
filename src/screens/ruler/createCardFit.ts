import { createSignal } from 'solid-js';
import {
  ASSUMED_FEWEST_DOTS_PER_MM,
  ASSUMED_MOST_DOTS_PER_MM,
  CARD_WIDTH_MM,
  computeDotsPerMm,
} from '../../../shared/units/card';
import type { RulerInUse } from '../../tablet/ruler';

/**
 * Where the lines stand before anybody moved them, px of the page to a mm. Assumed because 149 px an inch is a tablet of
 * ten inches that is 1280 px wide, for which everything here is drawn.
 */
const ASSUMED_FIRST_PX_PER_MM = 149 / 25.4;

/** A card is laid on the glass, and the lines are moved until they lie along its edges; then the ruler is kept. */
export function createCardFit(ruler: RulerInUse) {
  const first = ruler.pxPerMm() ?? ASSUMED_FIRST_PX_PER_MM;
  const [cardDots, setCardDots] = createSignal(first * CARD_WIDTH_MM * ruler.dotsPerPx());
  const leastDots = ASSUMED_FEWEST_DOTS_PER_MM * CARD_WIDTH_MM;
  const mostDots = ASSUMED_MOST_DOTS_PER_MM * CARD_WIDTH_MM;
  return {
    /** px of the page to one mm, were the lines to lie along the card now. */
    pxPerMm: () => cardDots() / CARD_WIDTH_MM / ruler.dotsPerPx(),
    /** The narrowest and the widest a card is on any glass, px of the page. */
    leastPx: () => leastDots / ruler.dotsPerPx(),
    mostPx: () => mostDots / ruler.dotsPerPx(),
    isLeast: () => cardDots() <= leastDots,
    isMost: () => cardDots() >= mostDots,
    /** So many dots of the glass, never beyond what glass is. */
    move: (dots: number) => setCardDots((before) => Math.min(Math.max(before + dots, leastDots), mostDots)),
    keep: () => {
      const dotsPerMm = computeDotsPerMm(cardDots());
      if (dotsPerMm !== null) ruler.keep(dotsPerMm);
    },
  };
}

export type CardFit = ReturnType<typeof createCardFit>;

import { createContext, useContext } from 'solid-js';
import type { RulerInUse } from '../../tablet/ruler';

const Ruler = createContext<RulerInUse | undefined>(undefined);

/** The ruler of the glass in front of her, for every screen that measures. */
export const RulerProvider = Ruler.Provider;

/** Nothing where there is no glass to measure on: then nothing is offered to be measured. */
export const useRuler = (): RulerInUse | undefined => useContext(Ruler);

import { createContext, useContext } from 'solid-js';
import type { HandOver } from '../../tablet/handOver';

const Ways = createContext<HandOver | undefined>(undefined);

/** The ways out of this tablet beside a download. */
export const HandOverProvider = Ways.Provider;

/** Nothing where the browser has none: then a download is all there is. */
export const useHandOver = (): HandOver | undefined => useContext(Ways);

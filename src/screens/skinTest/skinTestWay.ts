import { createContext, useContext } from 'solid-js';

const Way = createContext<() => void>(() => undefined);

/** Where the page of her skin test is opened from, for every screen of one client. */
export const SkinTestWayProvider = Way.Provider;

/** Opens the page of her skin test over the step. */
export const useSkinTestWay = (): (() => void) => useContext(Way);

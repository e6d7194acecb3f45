import { type Accessor, createContext, useContext } from 'solid-js';

/** Who is shown was made up: the invented salon, or practice; null where somebody is really there. */
export type Invented = 'demo' | 'practice' | null;

const InInvented = createContext<Accessor<Invented>>(() => null);

/** Tells every part inside it whether what it shows was made up. */
export const InventedProvider = InInvented.Provider;

/** Was this made up? Whatever leaves the tablet has to say so. */
export const useInvented = (): Accessor<Invented> => useContext(InInvented);

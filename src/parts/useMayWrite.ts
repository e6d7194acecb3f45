import { type Accessor, createContext, useContext } from 'solid-js';

const MayWrite = createContext<Accessor<boolean>>(() => true);

/** Tells every part inside it whether this window writes. */
export const MayWriteProvider = MayWrite.Provider;

/** Does this window write? Where it only watches, whatever would be written is shown disabled. */
export const useMayWrite = (): Accessor<boolean> => useContext(MayWrite);

import { type Accessor, createContext, useContext } from 'solid-js';

const IsDemo = createContext<Accessor<boolean>>(() => false);

/** Tells every part inside it whether this is the invented salon. */
export const IsDemoProvider = IsDemo.Provider;

/** Is this the invented salon? Whatever leaves the tablet has to say so. */
export const useIsDemo = (): Accessor<boolean> => useContext(IsDemo);

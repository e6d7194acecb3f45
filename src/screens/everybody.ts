import { type Accessor, createContext, useContext } from 'solid-js';
import type { Consultation } from '../../machines/consultation/consultation';

const Everybody = createContext<Accessor<readonly Consultation[]> | undefined>(undefined);

/** All who are open at this station, for what one client's page does to the others. */
export const EverybodyProvider = Everybody.Provider;

/** This client alone where nobody says who else is there. */
export const useEverybody = (here: Accessor<Consultation>): Accessor<readonly Consultation[]> =>
  useContext(Everybody) ?? (() => [here()]);

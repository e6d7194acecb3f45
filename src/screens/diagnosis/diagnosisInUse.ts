import { createContext, useContext } from 'solid-js';
import type { TabletFactsInUse } from '../../tablet/createTabletFacts';

const Facts = createContext<TabletFactsInUse | undefined>(undefined);

/** What can be read of this tablet, for the diagnosis, and when it last handed the station out. */
export const TabletFactsProvider = Facts.Provider;

export const useTabletFacts = (): TabletFactsInUse | undefined => useContext(Facts);

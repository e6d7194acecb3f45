import { createContext, useContext } from 'solid-js';
import type { UpdatesInUse } from '../../tablet/createUpdates';

const Updates = createContext<UpdatesInUse | undefined>(undefined);

/** Which build runs on this tablet and which waits, for the bar and the settings. */
export const UpdatesProvider = Updates.Provider;

/** Nothing where no newer build can wait. */
export const useUpdates = (): UpdatesInUse | undefined => useContext(Updates);

import { createContext, useContext } from 'solid-js';
import { findWords, type Words } from '../words/words';

const WordsContext = createContext<Words>(findWords('en'));

/** Gives every part and screen inside it the words of one language. */
export const WordsProvider = WordsContext.Provider;

/** The words this part speaks. Taken once: the station makes its screens anew when the language changes. */
export const useWords = (): Words => useContext(WordsContext);

import { createContext, useContext } from 'solid-js';

const Saying = createContext<(sentence: string) => string>((sentence) => sentence);

/** Gives every screen inside it the sentences of lessons in the language of the station. */
export const LessonSayingProvider = Saying.Provider;

/** How is a sentence of a lesson said here? As it was written, where nothing says otherwise. */
export const useLessonSaying = (): ((sentence: string) => string) => useContext(Saying);

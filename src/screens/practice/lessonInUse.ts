import { type Accessor, createContext, useContext } from 'solid-js';
import type { Lesson } from '../../../machines/practice/lesson';
import type { PracticeRecord } from '../../../machines/practice/practiceEvent';
import type { Sitting } from '../../../machines/practice/strength';

/** The lesson whose client is in view: who she truly is, how this sitting stands, and what a trainee may do beside the routine. */
export interface LessonInUse {
  readonly lesson: Lesson;
  readonly sat: PracticeRecord;
  readonly sitting: Sitting;
  /** She is asked closer about this question, as `client.reactions`. */
  readonly askCloser: (path: string) => void;
}

const InLesson = createContext<Accessor<LessonInUse | null>>(() => null);

/** Tells every part inside it which lesson is played; none in a salon. */
export const LessonProvider = InLesson.Provider;

/** Which lesson is played here? null in a salon: then nothing of it is shown. */
export const useLesson = (): Accessor<LessonInUse | null> => useContext(InLesson);

import type { FlagId, Lesson } from '../../machines/practice/lesson';
import type { Failing } from '../../machines/practice/passing';
import type { Decision } from '../../shared/judgement/decisions';

/** How one trainee goes through a lesson, as plain data: what is asked closer, and what is decided. */
export interface LessonStory {
  readonly title: string;
  /** Questions that are asked closer, by path. */
  readonly asksCloser: 'all' | readonly string[];
  /** What is decided; against the table it is answered for by name. */
  readonly decides: 'asSuggested' | Decision;
  /** Judgement stops are lifted by name instead of heeded. */
  readonly liftsStops?: true;
  /** She is finished as she asks for it; where this is not said, without a hot tool. */
  readonly finishesAsAsked?: true;
}

/** One lesson with a story that passes, and one that fails and says why: a flag that was missed, or what else is not right. */
export interface LessonSeed {
  readonly lesson: Lesson;
  readonly passes: LessonStory;
  readonly fails: LessonStory & { readonly because: FlagId | Failing };
}

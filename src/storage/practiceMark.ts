import { isMarked, setMark, type Top, takeMark } from './topFiles';

/** A file at the top of the origin private file system: this tablet shows practice. What was practised lies elsewhere. */
const MARK = 'practice-is-on';

/** Is this tablet in practice? */
export const isPracticeOn = (storage: Top): Promise<boolean> => isMarked(storage, MARK);

/** The last step of entering: with the next start it is practice that is shown. */
export const markPractice = (storage: Top): Promise<void> => setMark(storage, MARK);

/** Leaving: with the next start the salon is shown. What was practised stays where it is. */
export const unmarkPractice = (storage: Top): Promise<void> => takeMark(storage, MARK);

import { createContext, useContext } from 'solid-js';
import type { Learnt } from '../../../shared/learning/learnt';
import type { Settings } from '../../../shared/records/settings';
import type { LearningInUse } from '../../station/learning/createLearning';

const Learning = createContext<LearningInUse | undefined>(undefined);

/** What this station's own strands taught, for every screen that shows a chance. */
export const LearningProvider = Learning.Provider;

/** Nothing where nobody learns: then what is assumed is shown. */
export const useLearning = (): LearningInUse | undefined => useContext(Learning);

/** What the shown chance goes by; null where it is what is assumed: no strand yet, turned off, or not reckoned. */
export function findLearnt(learning: LearningInUse | undefined, { learns }: Settings): Learnt | null {
  const taught = learning?.taught();
  if (!learns || taught?.kind !== 'taught' || taught.what.learnt.strands === 0) return null;
  return taught.what.learnt;
}

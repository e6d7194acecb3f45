import { askForms } from '../../../shared/records/forms/asked';
import { askSteps } from '../../../shared/records/steps';
import type { Place } from '../../parts/form/sheet/places';
import type { Words } from '../../words/words';

/** Which question is at this path, as `hotTools.habits.0.wetness`, and how is it asked? null where none is. */
export function findAsked(path: string, words: Words): Pick<Place, 'question' | 'words'> | null {
  const [first, ...names] = path.split('.');
  const step = askSteps.find((each) => each === first);
  if (step === undefined) return null;
  let form: Readonly<Record<string, Place['question']>> = askForms[step];
  let asked: Readonly<Record<string, Place['words']>> = words.asked[step];
  let found: Pick<Place, 'question' | 'words'> | null = null;
  for (const name of names) {
    // The number of a row.
    if (/^\d+$/.test(name)) continue;
    const question = form[name];
    if (question === undefined) return null;
    found = { question, words: asked[name] ?? { ask: name } };
    if (question.kind === 'list') {
      form = question.of;
      asked = found.words.rows ?? {};
    }
  }
  return found;
}

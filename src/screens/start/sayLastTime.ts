import type { LastTime } from '../../../shared/records/lastTime';
import type { Words } from '../../words/words';

/** When she was last here, and what was done: "March 3, 2026 · Gloss, Roots". */
export function sayLastTime({ endedAtMs, answers }: LastTime, words: Words): string {
  const { service, reach } = words.asked.client;
  const said = answers.client;
  const done = [
    said?.service === undefined ? '' : service.options[said.service],
    said?.reach === undefined ? '' : reach.options[said.reach],
  ].filter((text) => text !== '');
  return [words.moments.date(endedAtMs), done.join(', ')].filter((text) => text !== '').join(' · ');
}

import { For, Show } from 'solid-js';
import type { AskedPart } from '../../../machines/practice/debrief';
import { useWords } from '../../parts/useWords';
import type { DebriefPart } from './DebriefPage';
import { findAsked } from './findAsked';
import { sayWhole } from './sayHeard';

/** Each question where her first answer was not all: asked closer or not, what was written down, and what is true. */
export function DebriefAsked(props: DebriefPart) {
  const words = useWords();
  const said = () => words.practice;
  const ask = ({ path }: AskedPart) => findAsked(path, words)?.words.ask ?? path;
  const say = ({ path }: AskedPart, answer: AskedPart['told']): string => {
    const asked = findAsked(path, words);
    const saying = { words, units: props.settings.units };
    if (asked === null) return said().none;
    return sayWhole(asked, answer, saying) || said().none;
  };
  return (
    <section class="panel panel-wide" data-panel="asked">
      <h2>{said().askedTitle}</h2>
      <Show when={props.told.asked.length > 0} fallback={<p>{said().none}</p>}>
        <ul>
          <For each={props.told.asked}>
            {(part) => (
              <li data-asked={part.path} data-truly={part.isToldTruly}>
                <strong>{ask(part)}</strong>{' '}
                {part.wasAskedCloser ? said().closerAsked : said().closerNotAsked}.{' '}
                <Show when={!part.isToldTruly} fallback={said().toldTruly}>
                  {said().told(say(part, part.told))}. {said().isTrue(say(part, part.true))}
                </Show>
              </li>
            )}
          </For>
        </ul>
      </Show>
    </section>
  );
}

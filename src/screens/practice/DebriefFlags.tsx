import { For } from 'solid-js';
import { Caution } from '../../parts/Caution';
import { useWords } from '../../parts/useWords';
import { saySource } from '../../words/saySource';
import type { DebriefPart } from './DebriefPage';
import { useLessonSaying } from './sayingLesson';

const kinds = { seen: 'clear', hinted: 'plain', missed: 'attention' } as const;

/** Each red flag of the lesson: seen or missed, why it matters, and its source. */
export function DebriefFlags(props: DebriefPart) {
  const words = useWords();
  const say = useLessonSaying();
  const said = () => words.practice;
  const missedFirst = () =>
    [...props.told.flagsDue].sort(
      (one, other) => Number(other.how === 'missed') - Number(one.how === 'missed'),
    );
  return (
    <section class="panel panel-wide" data-panel="flags">
      <h2>{said().flagsTitle}</h2>
      <For each={missedFirst()} fallback={<p>{said().none}</p>}>
        {({ flag, isAbsolute, how }) => (
          <Caution kind={how === 'missed' && isAbsolute ? 'stop' : kinds[how]}>
            <p data-flag={flag.id} data-how={how}>
              <strong>
                {said().flagHow[how]}
                {isAbsolute ? ` · ${said().absolute}` : ''}:
              </strong>{' '}
              {say(flag.why)}
            </p>
            <p>{saySource(say(flag.mark), words)}</p>
          </Caution>
        )}
      </For>
    </section>
  );
}

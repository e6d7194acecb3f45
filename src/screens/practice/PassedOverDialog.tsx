import { For } from 'solid-js';
import { BigButton } from '../../parts/BigButton';
import { Caution } from '../../parts/Caution';
import { Dialog } from '../../parts/Dialog';
import { useWords } from '../../parts/useWords';
import { saySource } from '../../words/saySource';
import type { PassedOver } from './createLessons';
import { useLessonSaying } from './sayingLesson';
import './lessons.css';

/** With hints: what the step that was just done left standing, why it matters, and the way back to it. */
export function PassedOverDialog(props: {
  readonly passedOver: PassedOver | null;
  readonly onBackTo: (passedOver: PassedOver) => void;
  readonly onGoOn: () => void;
}) {
  const words = useWords();
  const say = useLessonSaying();
  const said = () => words.practice;
  return (
    <Dialog isOpen={props.passedOver !== null} title={said().passedOver} onClose={() => props.onGoOn()}>
      <div class="passed-over" data-panel="passed-over">
        <p>{said().passedOverWhat}</p>
        <For each={props.passedOver?.flags}>
          {(flag) => (
            <Caution>
              <p data-flag={flag.id}>
                <strong>{say(flag.why)}</strong>
              </p>
              <p>{saySource(say(flag.mark), words)}</p>
            </Caution>
          )}
        </For>
        <div class="dialog-actions">
          <BigButton
            act="back-to-passed-over"
            onPress={() => props.passedOver !== null && props.onBackTo(props.passedOver)}
          >
            {words.leaving.goingBack.go(words.rail.steps[props.passedOver?.step ?? 'client'])}
          </BigButton>
          <BigButton kind="primary" act="go-on-after-hint" onPress={() => props.onGoOn()}>
            {said().gotIt}
          </BigButton>
        </div>
      </div>
    </Dialog>
  );
}

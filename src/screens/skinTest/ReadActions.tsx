import { Show } from 'solid-js';
import { BigButton } from '../../parts/BigButton';
import { HoldButton } from '../../parts/HoldButton';
import { useWords } from '../../parts/useWords';

/** What is seen: a reaction is held, whenever it shows; nothing is said once it is time. */
export function ReadActions(props: {
  readonly mayReact: boolean;
  readonly isReadable: boolean;
  readonly onRead: (seen: 'nothing' | 'reaction') => void;
}) {
  const words = useWords();
  return (
    <>
      <Show when={props.mayReact}>
        <HoldButton
          label={words.skinTest.reactionSeen}
          act="skin-test-reaction"
          onHeld={() => props.onRead('reaction')}
        />
      </Show>
      <Show when={props.isReadable}>
        <BigButton kind="primary" act="skin-test-nothing" onPress={() => props.onRead('nothing')}>
          {words.skinTest.nothingSeen}
        </BigButton>
      </Show>
    </>
  );
}

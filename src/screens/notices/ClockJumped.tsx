import { Show } from 'solid-js';
import type { ClockJump } from '../../../shared/records/clockJump';
import { BigButton } from '../../parts/BigButton';
import { useWords } from '../../parts/useWords';
import { sayJump } from '../../words/sayJump';
import type { JumpToTell } from './viewJumps';

/** The tablet slept or its clock was put ahead: where a skin test waits, a person says which. */
export function ClockJumped(props: {
  readonly told: JumpToTell;
  readonly onSlept: (jump: ClockJump) => void;
  readonly onPutAhead: (jump: ClockJump) => void;
}) {
  const words = useWords();
  return (
    <li data-notice="clockJumped">
      <p>{sayJump(props.told, words)}</p>
      <div class="notice-answers">
        <Show when={props.told.holdsSkinTest}>
          <BigButton act="clock-put-ahead" onPress={() => props.onPutAhead(props.told.jump)}>
            {words.notices.putAhead}
          </BigButton>
        </Show>
        <BigButton act="clock-slept" onPress={() => props.onSlept(props.told.jump)}>
          {props.told.holdsSkinTest ? words.notices.slept : words.notices.dismiss}
        </BigButton>
      </div>
    </li>
  );
}

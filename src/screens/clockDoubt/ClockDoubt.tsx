import { createSignal, Show } from 'solid-js';
import type { Result } from '../../../shared/result';
import { formatCountdown } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { Caution } from '../../parts/Caution';
import { Refusal } from '../../parts/Refusal';
import { useWords } from '../../parts/useWords';
import type { SubmitRefusal } from '../../station/submitRefusal';
import './clockDoubt.css';
import type { ClockDoubt as Doubt } from './viewClockDoubt';

/** The tablet's clock lies before what was already written: a person says which of the two is right. */
export function ClockDoubt(props: {
  readonly doubt: Doubt;
  readonly nowMs: number;
  /** Moves every open clock along; resolves when that is written or refused, with null where nobody gave a name. */
  readonly correct: () => Promise<Result<void, SubmitRefusal> | null>;
}) {
  const words = useWords();
  const said = () => words.clockDoubt;
  const [state, setState] = createSignal<'asking' | 'moving' | 'tried'>('asking');
  const [refusal, setRefusal] = createSignal<SubmitRefusal | null>(null);
  const correct = async () => {
    if (state() === 'moving') return;
    setRefusal(null);
    setState('moving');
    const corrected = await props.correct();
    setRefusal(corrected === null || corrected.ok ? null : corrected.error);
    setState(corrected?.ok === true ? 'tried' : 'asking');
  };
  return (
    <main class="clock-doubt" data-step="clockDoubt">
      <h1>{said().title}</h1>
      <p class="clock-doubt-times">
        {said().newest(words.moments.dayAndTime(props.doubt.newestAtMs))}
        <br />
        {said().now(words.moments.dayAndTime(props.nowMs))}
        <br />
        {said().behind(formatCountdown(props.doubt.behindMs))}
      </p>
      <p>{said().why}</p>
      <Caution kind="stop">
        <p>{said().rinseFirst}</p>
      </Caution>
      <Show when={state() !== 'asking'}>
        <div role="status">
          <Caution>
            <p>{state() === 'moving' ? said().waiting : said().stillWrong}</p>
          </Caution>
        </div>
      </Show>
      <Refusal refusal={refusal()} />
      <p class="soft">{said().noHint}</p>
      <div class="clock-doubt-actions">
        <p class="soft">{said().yesHint}</p>
        <BigButton kind="primary" act="clock-is-right" onPress={() => void correct()}>
          {said().yes}
        </BigButton>
      </div>
    </main>
  );
}

import { createSignal, type JSX, Show } from 'solid-js';
import { BigButton } from '../../parts/BigButton';
import { useWords } from '../../parts/useWords';
import type { UpdatesInUse } from '../../tablet/createUpdates';
import { sayBuild } from './sayBuild';
import './update.css';

/** One quiet line at a bar where nothing runs: a newer version, taken with one tap or put off until the next start. */
export function UpdateLine(props: {
  /** Nothing where none is to be taken now. */
  readonly updates: UpdatesInUse | undefined;
  /** What stands there else: there is room for one. */
  readonly children: JSX.Element;
}) {
  /** A build that says nothing of itself is an empty text, and waits all the same. */
  const offered = () => {
    const { updates } = props;
    return updates !== undefined && !updates.isPutOff() && updates.waiting() !== null ? updates : null;
  };
  return (
    <Show when={offered()} fallback={props.children}>
      {(updates) => <Offer updates={updates()} />}
    </Show>
  );
}

function Offer(props: { readonly updates: UpdatesInUse }) {
  const words = useWords();
  const [state, setState] = createSignal<'offered' | 'taken' | 'inUse' | 'notTaken'>('offered');
  const take = async () => {
    setState('taken');
    setState(await props.updates.take().catch(() => 'notTaken' as const));
  };
  const say = (waiting: string) => {
    const now = state();
    if (now === 'inUse' || now === 'notTaken') return words.updates[now];
    return words.updates.offer(sayBuild(waiting, words), sayBuild(props.updates.build, words));
  };
  return (
    <div class="update-line" data-update={state()}>
      <p role="status">{say(props.updates.waiting() ?? '')}</p>
      <BigButton act="take-update" isWay isDisabled={state() === 'taken'} onPress={() => void take()}>
        {state() === 'taken' ? words.updates.taking : words.updates.take}
      </BigButton>
      <BigButton
        kind="quiet"
        act="put-off-update"
        isWay
        isDisabled={state() === 'taken'}
        onPress={props.updates.putOff}
      >
        {words.updates.later}
      </BigButton>
    </div>
  );
}

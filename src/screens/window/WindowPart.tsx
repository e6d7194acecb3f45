import { createSignal, Match, Switch } from 'solid-js';
import { BigButton } from '../../parts/BigButton';
import { useWords } from '../../parts/useWords';
import type { StationState } from '../../station/stationState';
import './window.css';

/** What part this window plays, where it is not the one that writes. */
export function WindowPart(props: { readonly mode: StationState['mode']; readonly askTakeOver: () => void }) {
  const words = useWords();
  return (
    <Switch>
      <Match when={props.mode === 'starting'}>
        <p class="window-part" role="status" data-mode="starting">
          {words.windowPart.starting}
        </p>
      </Match>
      <Match when={props.mode === 'watching'}>
        <Watching askTakeOver={props.askTakeOver} />
      </Match>
      <Match when={props.mode === 'noStore'}>
        <div class="window-part" role="alert" data-mode="noStore">
          <div>
            <p>
              <strong>{words.windowPart.noStore}</strong> {words.windowPart.noStoreWhat}
            </p>{' '}
            <p>{words.windowPart.noStoreClears}</p>
          </div>
          <BigButton act="reload" onPress={() => location.reload()}>
            {words.windowPart.reload}
          </BigButton>
        </div>
      </Match>
    </Switch>
  );
}

/** This window only watches; that it asked for the place is true for this watch alone. */
function Watching(props: { readonly askTakeOver: () => void }) {
  const words = useWords();
  const [isAsked, setIsAsked] = createSignal(false);
  return (
    <div class="window-part" role="status" data-mode="watching">
      <p>
        {words.windowPart.watching} {isAsked() ? words.windowPart.asked : ''}
      </p>
      <BigButton
        act="take-over"
        onPress={() => {
          setIsAsked(true);
          props.askTakeOver();
        }}
      >
        {words.windowPart.askTakeOver}
      </BigButton>
    </div>
  );
}

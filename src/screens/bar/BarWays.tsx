import { type JSX, Show } from 'solid-js';
import { BigButton } from '../../parts/BigButton';
import { useWords } from '../../parts/useWords';

/** The row above the bar: who is at the tablet, and the ways to everything that is no client at a chair. */
export function BarWays(props: {
  readonly by: string;
  readonly isWriter: boolean;
  readonly parked: string;
  /** Somebody should be back by now. */
  readonly isParkedLate: boolean;
  readonly onWho: () => void;
  readonly onParked: () => void;
  readonly onDay: () => void;
  readonly onSettings: () => void;
  readonly onStart: () => void;
  /** Further ways, before the parked ones. */
  readonly children?: JSX.Element;
}) {
  const words = useWords();
  return (
    <nav class="bar-ways">
      <Show when={props.isWriter}>
        <BigButton kind={props.by === '' ? 'attention' : 'quiet'} act="who" onPress={() => props.onWho()}>
          {props.by === '' ? words.bar.tapYourName : props.by}
        </BigButton>
      </Show>
      {props.children}
      <BigButton
        kind={props.isParkedLate ? 'attention' : 'quiet'}
        act="parked"
        onPress={() => props.onParked()}
      >
        {props.parked}
      </BigButton>
      <BigButton kind="quiet" act="day" onPress={() => props.onDay()}>
        {words.bar.day}
      </BigButton>
      <Show when={props.isWriter}>
        <BigButton kind="quiet" act="settings" onPress={() => props.onSettings()}>
          {words.bar.settings}
        </BigButton>
        <BigButton kind="primary" act="start" onPress={() => props.onStart()}>
          {words.bar.start}
        </BigButton>
      </Show>
    </nav>
  );
}

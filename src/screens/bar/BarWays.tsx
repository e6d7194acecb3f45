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
  /** Absent in practice: it has neither figures of a day nor settings of its own. */
  readonly onDay?: (() => void) | undefined;
  readonly onSettings?: (() => void) | undefined;
  readonly onStart: () => void;
  /** What the way to start somebody is called, where it is another one. */
  readonly start?: string | undefined;
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
      <Show when={props.onDay}>
        {(toDay) => (
          <BigButton kind="quiet" act="day" onPress={() => toDay()()}>
            {words.bar.day}
          </BigButton>
        )}
      </Show>
      <Show when={props.isWriter}>
        <Show when={props.onSettings}>
          {(toSettings) => (
            <BigButton kind="quiet" act="settings" onPress={() => toSettings()()}>
              {words.bar.settings}
            </BigButton>
          )}
        </Show>
        <BigButton kind="primary" act="start" onPress={() => props.onStart()}>
          {props.start ?? words.bar.start}
        </BigButton>
      </Show>
    </nav>
  );
}

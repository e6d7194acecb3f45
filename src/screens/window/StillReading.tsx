import { type JSX, Show } from 'solid-js';
import { BigButton } from '../../parts/BigButton';
import { PlainPage } from '../../parts/PlainPage';
import { useWords } from '../../parts/useWords';
import type { StationState } from '../../station/stationState';

type Months = StationState['months'];

/** How far the months of before were looked through. */
export function StillReading(props: { readonly months: Months }) {
  const words = useWords();
  return (
    <p class="still-reading" role="status" data-still-reading={props.months.read}>
      <strong>{words.windowPart.stillReading(String(props.months.read), String(props.months.all))}</strong>
    </p>
  );
}

/** A page that shows what closed earlier: before all of that is read it says so, and opens by itself. */
export function OncePastIsRead(props: {
  readonly months: Months;
  readonly title: string;
  readonly onBar: () => void;
  readonly children: JSX.Element;
}) {
  const words = useWords();
  return (
    <Show when={props.months.read < props.months.all} fallback={props.children}>
      <PlainPage
        step="stillReading"
        kicker={words.windowPart.opensByItself}
        title={props.title}
        actions={
          <BigButton act="bar" isWay onPress={props.onBar}>
            {words.general.bar}
          </BigButton>
        }
      >
        <StillReading months={props.months} />
      </PlainPage>
    </Show>
  );
}

import { Show } from 'solid-js';
import type { Settings } from '../../../../shared/records/settings';
import { formatQuantity } from '../../../../shared/units/format';
import { BigButton } from '../../../parts/BigButton';
import { useWords } from '../../../parts/useWords';
import type { StationState } from '../../../station/stationState';
import { countBenchDue } from './viewBench';

/** The way from the bar to what is to be taken out or read at the bench, across days; nothing while nothing is due. */
export function BenchDueButton(props: {
  readonly bench: StationState['bench'];
  readonly settings: Settings;
  readonly nowMs: number;
  readonly onOpen: () => void;
}) {
  const words = useWords();
  const due = () => countBenchDue(props.bench, props.nowMs);
  const write = (count: number) => formatQuantity(count, 'count', props.settings.units, words.locale);
  return (
    <Show when={due() > 0}>
      <BigButton kind="attention" act="bench-due" onPress={() => props.onOpen()}>
        {words.bench.wayDue(write(due()))}
      </BigButton>
    </Show>
  );
}

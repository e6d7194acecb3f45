import { For, Show } from 'solid-js';
import type { Consultation } from '../../../machines/consultation/consultation';
import { formatQuantity } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import { BigButton } from '../../parts/BigButton';
import { useWords } from '../../parts/useWords';
import { sayWhose } from './sayWhose';
import { type BarView, PLACES } from './viewBar';

/** Who is away between visits, who waits for a place, and who sits beyond the places of the bar. */
export function ParkedList(props: {
  readonly view: Pick<BarView, 'parked' | 'waiting'>;
  readonly units: UnitSettings;
  readonly onOpen: (id: string) => void;
}) {
  const words = useWords();
  const sayWhen = ({ record }: Consultation) => {
    if (record.ended !== null) return words.bar.notWritten;
    if (record.parked !== null) return words.bar.backAt(words.moments.dayAndTime(record.parked.untilAtMs));
    const write = (count: number) => formatQuantity(count, 'count', props.units, words.locale);
    return record.chair > PLACES
      ? words.bar.beyondPlaces(write(PLACES))
      : words.bar.isWaiting(write(record.chair));
  };
  const all = () => [...props.view.waiting, ...props.view.parked];
  return (
    <Show when={all().length > 0} fallback={<p>{words.bar.nobodyParked}</p>}>
      <ul class="parked-list">
        <For each={all()}>
          {(consultation) => (
            <li data-consultation={consultation.id}>
              <span>
                <strong>{sayWhose(consultation, words, props.units)}</strong>
                <br />
                {sayWhen(consultation)}
              </span>
              <BigButton act="open-parked" onPress={() => props.onOpen(consultation.id)}>
                {words.bar.open}
              </BigButton>
            </li>
          )}
        </For>
      </ul>
    </Show>
  );
}

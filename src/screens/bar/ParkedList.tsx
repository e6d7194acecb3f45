import { createMemo, For, Show } from 'solid-js';
import type { Consultation } from '../../../machines/consultation/consultation';
import type { Settings } from '../../../shared/records/settings';
import { formatQuantity } from '../../../shared/units/format';
import { useWords } from '../../parts/useWords';
import { sayInLine } from './sayLane';
import { sayWhose } from './sayWhose';
import { type BarView, isBackLate, PLACES } from './viewBar';

/** Who waits for a place or sits beyond the places of the bar, and who is away between visits, with her day. */
export function ParkedList(props: {
  readonly view: Pick<BarView, 'parked' | 'waiting'>;
  readonly settings: Settings;
  readonly nowMs: number;
  readonly onOpen: (id: string) => void;
}) {
  const words = useWords();
  const sayWhen = (consultation: Consultation) => {
    const { record } = consultation;
    if (record.ended !== null) return words.bar.notWritten;
    if (record.parked !== null) {
      const when = words.moments.dayAndTime(record.parked.untilAtMs);
      return isBackLate(consultation, props.nowMs) ? words.bar.wasDueAt(when) : words.bar.backAt(when);
    }
    const { text } = sayInLine(consultation, props.nowMs, words, props.settings);
    const chair = formatQuantity(record.chair, 'count', props.settings.units, words.locale);
    return record.chair > PLACES ? text : `${words.bar.isWaiting(chair)} · ${text}`;
  };
  const all = createMemo(() => [...props.view.waiting, ...props.view.parked]);
  const ids = createMemo(() => all().map(({ id }) => id));
  const find = (id: string) => all().find((each) => each.id === id);
  return (
    <Show when={ids().length > 0} fallback={<p>{words.bar.nobodyParked}</p>}>
      <ul class="parked-list">
        <For each={ids()}>
          {(id) => (
            <Show when={find(id)}>
              {(consultation) => (
                <li data-consultation={id}>
                  <button
                    type="button"
                    class="parked-client"
                    data-act="open-parked"
                    data-late={isBackLate(consultation(), props.nowMs) ? '' : undefined}
                    onClick={() => props.onOpen(id)}
                  >
                    <strong>{sayWhose(consultation(), words, props.settings.units)}</strong>
                    <span>{sayWhen(consultation())}</span>
                    <span class="place-go" aria-hidden="true" />
                  </button>
                </li>
              )}
            </Show>
          )}
        </For>
      </ul>
    </Show>
  );
}

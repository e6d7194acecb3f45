import { createMemo, For, Show } from 'solid-js';
import type { Consultation } from '../../../machines/consultation/consultation';
import type { Settings } from '../../../shared/records/settings';
import { formatQuantity } from '../../../shared/units/format';
import { useWords } from '../../parts/useWords';
import { sayInLine } from './sayLane';

/** So many stand in the row below the lanes, in both directions of the screen; the others are one tap away. */
const SHOWN = 2;

/** Who has no lane of her own, the most urgent first: in one row below the lanes, each of them one tap away. */
export function WaitingRow(props: {
  readonly waiting: readonly Consultation[];
  readonly settings: Settings;
  readonly nowMs: number;
  readonly onOpen: (id: string) => void;
  readonly onAll: () => void;
}) {
  const words = useWords();
  const write = (count: number) => formatQuantity(count, 'count', props.settings.units, words.locale);
  const ids = createMemo(() => props.waiting.slice(0, SHOWN).map(({ id }) => id));
  const find = (id: string) => props.waiting.find((each) => each.id === id);
  const more = () => props.waiting.length - SHOWN;
  const sayNow = (consultation: Consultation) => sayInLine(consultation, props.nowMs, words, props.settings);
  return (
    <section class="waiting-row" aria-label={words.bar.waiting}>
      <h2 class="waiting-title">{words.bar.waiting}</h2>
      <For each={ids()}>
        {(id) => (
          <Show when={find(id)}>
            {(consultation) => (
              <button
                type="button"
                class="waiting-client"
                data-act="open-waiting"
                data-consultation={id}
                data-tone={sayNow(consultation()).tone}
                onClick={() => props.onOpen(id)}
              >
                <strong>
                  {words.bar.waitingAt(write(consultation().record.chair), consultation().record.ticket)}
                </strong>
                <span>{sayNow(consultation()).text}</span>
              </button>
            )}
          </Show>
        )}
      </For>
      <Show when={more() > 0}>
        <button type="button" class="waiting-client" data-act="all-waiting" onClick={() => props.onAll()}>
          <strong>{words.bar.moreWaiting(write(more()))}</strong>
        </button>
      </Show>
    </section>
  );
}

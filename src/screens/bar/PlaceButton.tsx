import { createMemo, Show } from 'solid-js';
import type { Consultation } from '../../../machines/consultation/consultation';
import type { Settings } from '../../../shared/records/settings';
import { formatQuantity } from '../../../shared/units/format';
import { SmallRail } from '../../parts/SmallRail';
import { useWords } from '../../parts/useWords';
import { findKnot } from '../knot';
import { screenOf, stepOf } from '../screenOf';
import { sayBarDue } from './sayBarDue';
import { sayLane } from './sayLane';
import { listDueOf } from './viewBar';

/** From so many letters on a ticket is written smaller, so that it keeps to its line. */
const LONG_TICKET = 8;

/** One client at her place: who, where on the strand, and what to do now or the clock that runs. */
export function PlaceButton(props: {
  readonly consultation: Consultation;
  readonly settings: Settings;
  readonly nowMs: number;
  readonly onOpen: (id: string) => void;
}) {
  const words = useWords();
  const write = (count: number) => formatQuantity(count, 'count', props.settings.units, words.locale);
  const step = () => stepOf(props.consultation.state);
  const saysStep = () => {
    const here = step();
    return here === null ? words.bar.stopped : words.rail.steps[here];
  };
  const knot = createMemo(() => findKnot(props.consultation.record, props.settings, props.nowMs));
  const due = createMemo(() => listDueOf(props.consultation, props.nowMs));
  const lane = createMemo(() => sayLane(props.consultation, words, props.nowMs, props.settings, knot()));
  /** What a stop says stands before its clocks, which the screen behind it shows. */
  const running = createMemo(() => {
    const [first] = due();
    return first === undefined ? null : sayBarDue(first, props.nowMs, words, props.settings.units);
  });
  const more = () => due().length - 1;

  return (
    <button
      type="button"
      class="place"
      data-chair={props.consultation.record.chair}
      data-consultation={props.consultation.id}
      data-screen={screenOf(props.consultation.state)}
      onClick={() => props.onOpen(props.consultation.id)}
    >
      <span class="place-who">
        <span
          class="place-ticket"
          data-long={props.consultation.record.ticket.length > LONG_TICKET ? '' : undefined}
        >
          {words.bar.place(write(props.consultation.record.chair), props.consultation.record.ticket)}
        </span>
        <SmallRail here={step()} knot={knot()} />
        <span class="place-step">
          {saysStep()}
          <Show when={more() > 0}>
            {' '}
            <span class="place-more">{words.bar.moreClocks(write(more()))}</span>
          </Show>
        </span>
        <span class="only-heard">{knot() === null ? words.rail.okToMix : words.rail.noMix}</span>
      </span>
      <span class="place-now" data-tone={running()?.tone ?? lane().tone}>
        <Show
          when={running()}
          fallback={
            <>
              <span class="place-what">{lane().what}</span>
              <Show when={lane().todo}>{(todo) => <span class="place-says">{todo()}</span>}</Show>
              <span class="place-go" aria-hidden="true" />
            </>
          }
        >
          {(next) => (
            <>
              <span class="place-what">{next().name}</span>
              <span class="place-says">{next().says}</span>
              <span class="place-digits">{next().digits}</span>
            </>
          )}
        </Show>
      </span>
    </button>
  );
}

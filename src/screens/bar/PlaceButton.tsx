import { createMemo, Show } from 'solid-js';
import type { Consultation } from '../../../machines/consultation/consultation';
import type { Settings } from '../../../shared/records/settings';
import { formatQuantity } from '../../../shared/units/format';
import { sayNextDue } from '../../parts/clockSaid';
import { SmallRail } from '../../parts/SmallRail';
import { useWords } from '../../parts/useWords';
import { findKnot } from '../knot';
import { screenOf, stepOf } from '../screenOf';
import { listClocks } from './viewBar';

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
  const screen = () => screenOf(props.consultation.state);
  const knot = createMemo(() => findKnot(props.consultation.record, props.settings, props.nowMs));
  const clocks = createMemo(() => listClocks(props.consultation, props.nowMs));
  const due = createMemo(() => {
    const [first] = clocks();
    return first === undefined
      ? null
      : sayNextDue(first.clock, first.strandNumber, props.nowMs, words, props.settings.units);
  });
  const doNow = () => {
    const here = step();
    if (screen() === 'reaction') return words.bar.reaction;
    if (screen() === 'ended') return words.bar.notWritten;
    return here === null ? words.bar.stopped : words.rail.steps[here];
  };
  const tone = () => {
    return ['reaction', 'stopped', 'ended'].includes(screen()) ? 'over' : (due()?.tone ?? 'idle');
  };

  return (
    <button
      type="button"
      class="place"
      data-chair={props.consultation.record.chair}
      data-consultation={props.consultation.id}
      data-screen={screen()}
      onClick={() => props.onOpen(props.consultation.id)}
    >
      <span class="place-who">
        <span class="place-ticket">
          {words.bar.place(write(props.consultation.record.chair), props.consultation.record.ticket)}
        </span>
        <SmallRail here={step()} knot={knot()} />
        <span class="only-heard">{knot() === null ? words.rail.okToMix : words.rail.noMix}</span>
      </span>
      <span class="place-now" data-tone={tone()}>
        <Show
          when={due()}
          fallback={
            <>
              <span class="place-what">{doNow()}</span>
              <span class="place-go" aria-hidden="true" />
            </>
          }
        >
          {(next) => (
            <>
              <span class="place-what">{screen() === 'reaction' ? words.bar.reaction : next().name}</span>
              <span class="place-says">
                {next().says}
                <Show when={clocks().length > 1}> {words.bar.moreClocks(write(clocks().length - 1))}</Show>
              </span>
              <span class="place-digits">{next().digits}</span>
            </>
          )}
        </Show>
      </span>
    </button>
  );
}

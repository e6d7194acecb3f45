import { createMemo, For, Show } from 'solid-js';
import type { Zone } from '../../../shared/records/zones';
import { formatQuantity } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { Caution } from '../../parts/Caution';
import { ClockFace } from '../../parts/ClockFace';
import { useWords } from '../../parts/useWords';
import type { StepProps } from '../stepProps';
import type { ProcessingView } from '../strandTest/viewProcessing';
import './stopped.css';

/** What was in the mix when she was stopped: it still comes off, and what it said is still recorded. */
export function StrandsLeft(
  props: Pick<StepProps, 'nowMs' | 'settings'> & {
    readonly view: ProcessingView;
    readonly onTakeOff: (zone: Zone) => void;
  },
) {
  const words = useWords();
  const said = () => words.strandTest.processing;
  const running = createMemo(() => props.view.running.map(({ zone }) => zone));
  const find = (zone: Zone) => props.view.running.find((each) => each.zone === zone);
  const write = (count: number) => formatQuantity(count, 'count', props.settings.units, words.locale);
  return (
    <>
      <For each={running()}>
        {(zone, index) => (
          <Show when={find(zone)}>
            {(one) => (
              <div class="strand-left" data-zone={zone}>
                <ClockFace
                  clock={one().clock}
                  strandNumber={one().strand.number}
                  nowMs={props.nowMs}
                  units={props.settings.units}
                  size="small"
                />
                <Show when={index() > 0}>
                  <BigButton act={`take-off-${zone}`} onPress={() => props.onTakeOff(zone)}>
                    {said().takeOff(words.general.zones[zone])}
                  </BigButton>
                </Show>
              </div>
            )}
          </Show>
        )}
      </For>
      <For each={props.view.off}>
        {(strand) => (
          <Caution kind="plain">
            <p>{words.leaving.strandOff(words.clock.strandName(write(strand.number), strand.zone))}</p>
          </Caution>
        )}
      </For>
    </>
  );
}

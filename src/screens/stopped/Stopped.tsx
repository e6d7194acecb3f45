import { createMemo, For } from 'solid-js';
import { BigButton } from '../../parts/BigButton';
import { Caution } from '../../parts/Caution';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import { EndForm } from '../leaving/EndForm';
import type { StepProps } from '../stepProps';
import { Correction } from './Correction';
import { listCorrectable, listStandingStops } from './viewStopped';

/** She is stopped: which rule, why, what clears it; a named correction, or an end. */
export function Stopped(props: StepProps) {
  const words = useWords();
  const stops = createMemo(() => listStandingStops(props.consultation.record, props.settings));
  return (
    <StepPage
      page={props.page}
      title={words.leaving.stoppedTitle}
      actions={
        <BigButton kind="primary" act="bar-primary" onPress={() => props.page.onBar()}>
          {words.general.bar}
        </BigButton>
      }
    >
      <p class="panel-figure">{words.leaving.stoppedLead}</p>
      <For each={stops()}>
        {({ rule }) => (
          <div data-rule={rule}>
            <Caution kind="stop">
              <h2>{words.rules[rule].what}</h2>
              <p>{words.rules[rule].why}</p>
              <p>
                <strong>{words.leaving.clears}</strong> {words.rules[rule].clears}
              </p>
            </Caution>
          </div>
        )}
      </For>
      <EndForm {...props} />
      <Correction {...props} answers={listCorrectable(stops())} />
    </StepPage>
  );
}

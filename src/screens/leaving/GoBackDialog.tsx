import { Show } from 'solid-js';
import { askSteps, type BackStep } from '../../../shared/records/steps';
import { formatQuantity } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { Caution } from '../../parts/Caution';
import { Dialog } from '../../parts/Dialog';
import { Refusal } from '../../parts/Refusal';
import { useWords } from '../../parts/useWords';
import type { TapRefusal } from '../explainRefusal';
import type { StepProps } from '../stepProps';
import { listStanding } from './whatFalls';

/** Said before she goes back: what stays, what falls, and what an answer that is changed there would cost. */
export function GoBackDialog(
  props: Pick<StepProps, 'consultation' | 'settings'> & {
    readonly to: BackStep | null;
    readonly refusal: TapRefusal | null;
    readonly onGo: () => void;
    readonly onStay: () => void;
  },
) {
  const words = useWords();
  const said = () => words.leaving.goingBack;
  const strands = () =>
    listStanding(props.consultation.record).map(({ number }) =>
      said().strand(formatQuantity(number, 'count', props.settings.units, words.locale)),
    );
  const isAsking = () => askSteps.some((step) => step === props.to);
  return (
    <Dialog
      isOpen={props.to !== null}
      title={props.to === null ? '' : said().title(words.rail.steps[props.to])}
      onClose={() => props.onStay()}
    >
      <div data-panel="going-back" class="going-back">
        <Show when={props.consultation.record.decision !== null}>
          <Caution>
            <p data-falls="decision">{said().decisionFalls}</p>
          </Caution>
        </Show>
        <Show when={strands().length > 0}>
          <Caution kind="plain">
            <p data-stays="strands">
              <strong>{said().stay(strands())}</strong> <Show when={isAsking()}>{said().untilChanged}</Show>
            </p>
          </Caution>
        </Show>
        <Refusal refusal={props.refusal} />
        <div class="dialog-actions">
          <BigButton act="stay-here" isWay onPress={() => props.onStay()}>
            {said().stayHere}
          </BigButton>
          <BigButton kind="primary" act="go-back" onPress={() => props.onGo()}>
            {props.to === null ? '' : said().go(words.rail.steps[props.to])}
          </BigButton>
        </div>
      </div>
    </Dialog>
  );
}

import { Match, Switch } from 'solid-js';
import type { Zone } from '../../../shared/records/zones';
import { BigButton } from '../../parts/BigButton';
import { useWords } from '../../parts/useWords';
import { FinishHere, mayFinish } from '../finish/FinishHere';
import type { Sender } from '../sender';
import type { StepProps } from '../stepProps';
import type { ProcessingView } from '../strandTest/viewProcessing';

/** What comes first for somebody who is stopped: off with the strand, its outcome, her heat plan, or else the bar. */
export function StoppedActions(
  props: StepProps & {
    readonly view: ProcessingView;
    readonly sender: Sender;
    readonly onTakeOff: (zone: Zone) => void;
    readonly onOutcome: (zone: Zone) => void;
  },
) {
  const words = useWords();
  return (
    <Switch
      fallback={
        <BigButton kind="primary" act="bar-primary" isWay onPress={() => props.page.onBar()}>
          {words.general.bar}
        </BigButton>
      }
    >
      <Match when={props.view.running[0]?.zone}>
        {(zone) => (
          <BigButton kind="primary" act="take-off" onPress={() => props.onTakeOff(zone())}>
            {words.strandTest.processing.takeOff(words.general.zones[zone()])}
          </BigButton>
        )}
      </Match>
      <Match when={props.view.off[0]?.zone}>
        {(zone) => (
          <BigButton kind="primary" act="outcome" onPress={() => props.onOutcome(zone())}>
            {words.leaving.recordOutcome(words.general.zones[zone()])}
          </BigButton>
        )}
      </Match>
      <Match when={mayFinish(props)}>
        <FinishHere {...props} kind="primary" />
      </Match>
    </Switch>
  );
}

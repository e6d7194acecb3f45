import { createMemo, Show } from 'solid-js';
import type { Consultation } from '../../machines/consultation/consultation';
import type { StationInUse } from '../station/createStation';
import { ConsultationScreen } from './consultation/ConsultationScreen';
import type { SubmitAllFor, SubmitFor } from './submitting';
import type { Who } from './who';

/** The client in view. What is still on its way when she is closed reads her as she was last. */
export function ClientInView(props: {
  readonly id: string;
  readonly station: Pick<StationInUse, 'state' | 'nowMs' | 'finishClosing'>;
  readonly who: Who;
  readonly submit: SubmitFor;
  readonly submitAll: SubmitAllFor;
  readonly onBar: () => void;
}) {
  const state = () => props.station.state();
  const last = createMemo<Consultation | undefined>((before) => state().open.get(props.id) ?? before);
  return (
    <Show when={last()}>
      {(consultation) => (
        <ConsultationScreen
          consultation={consultation()}
          settings={state().settings.settings}
          nowMs={props.station.nowMs()}
          by={props.who.by()}
          isWriter={state().mode === 'writing'}
          submit={(raw, name) => props.submit(props.id, raw, name)}
          submitAll={(raws) => props.submitAll(props.id, raws)}
          closed={state().closed}
          finishClosing={() => props.station.finishClosing(props.id)}
          onWho={props.who.ask}
          onBar={props.onBar}
        />
      )}
    </Show>
  );
}

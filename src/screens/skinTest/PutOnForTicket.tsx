import { createSignal, Show } from 'solid-js';
import type { Settings } from '../../../shared/records/settings';
import { PlainPage } from '../../parts/PlainPage';
import { useWords } from '../../parts/useWords';
import type { StationState } from '../../station/stationState';
import type { Submit } from '../stepProps';
import type { Frame } from './frame';
import { PutOn, type SkinTestAsked } from './PutOn';

/** A skin test put on without any consultation: whose first, then where and how. */
export function PutOnForTicket(props: {
  readonly settings: Settings;
  readonly nowMs: number;
  readonly clients: StationState['open'];
  readonly submit: Submit;
  readonly onDone: () => void;
}) {
  const words = useWords();
  const [asked, setAsked] = createSignal<SkinTestAsked>('now');
  const tickets = () => [...new Set([...props.clients.values()].map(({ record }) => record.ticket))];
  const frame: Frame = (framed) => (
    <PlainPage step="skinTests" kicker={words.skinTests.title} title={framed.title} actions={framed.actions}>
      {framed.children}
    </PlainPage>
  );
  return (
    <Show when={asked()} keyed>
      {(which) => (
        <PutOn
          submit={props.submit}
          settings={props.settings}
          nowMs={props.nowMs}
          asked={which}
          draft="put-on"
          title={words.skinTests.putOnTitle}
          frame={frame}
          tickets={tickets()}
          onOther={setAsked}
          onDone={props.onDone}
          onCancel={props.onDone}
        />
      )}
    </Show>
  );
}

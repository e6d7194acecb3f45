import { Match, Show, Switch } from 'solid-js';
import type { Consultation } from '../../../machines/consultation/consultation';
import type { LastTime } from '../../../shared/records/lastTime';
import type { ConsultationRecord } from '../../../shared/records/record';
import { BigButton } from '../../parts/BigButton';
import { PageActions } from '../../parts/PageActions';
import { useWords } from '../../parts/useWords';
import { isPastRead, type StationState } from '../../station/stationState';
import { StillReading } from '../window/StillReading';
import { sayLastTime } from './sayLastTime';

/** Who is that, as far as the ticket tells: somebody who is open, who was here before, or nobody known. */
export function StartActions(props: {
  readonly months: StationState['months'];
  /** Somebody has tapped to start her: it goes on once the past is read. */
  readonly isWaiting: boolean;
  readonly same: Consultation | undefined;
  readonly last: LastTime | null;
  readonly sayWhere: (record: ConsultationRecord) => string;
  readonly onCancel: () => void;
  /** With the id of last time where she is said to be the same client. */
  readonly onGo: (lastTimeId?: string) => void;
  readonly onThere: (id: string) => void;
}) {
  const words = useWords();
  return (
    <PageActions>
      <Show when={!isPastRead(props)}>
        <div class="last-time">
          <StillReading months={props.months} />
          <Show when={props.isWaiting}>
            <p role="status">{words.windowPart.startsByItself}</p>
          </Show>
        </div>
      </Show>
      <Show when={props.same}>
        {(found) => (
          <p class="last-time" role="status" data-same-ticket={found().id}>
            <strong>{props.sayWhere(found().record)}</strong> {words.start.sameTicket}
          </p>
        )}
      </Show>
      <Show when={props.last}>
        {(last) => (
          <p class="last-time" role="status" data-last-time={last().id}>
            <strong>{words.start.sameAs(sayLastTime(last(), words))}</strong>
          </p>
        )}
      </Show>
      <BigButton act="cancel" isWay onPress={props.onCancel}>
        {words.general.cancel}
      </BigButton>
      <Switch
        fallback={
          <BigButton kind="primary" act="open" onPress={() => props.onGo()}>
            {words.start.go}
          </BigButton>
        }
      >
        <Match when={props.same}>
          {(found) => (
            <>
              <BigButton act="open-anyway" onPress={() => props.onGo()}>
                {words.start.goAnyway}
              </BigButton>
              <BigButton kind="primary" act="go-there" onPress={() => props.onThere(found().id)}>
                {words.start.goThere}
              </BigButton>
            </>
          )}
        </Match>
        <Match when={props.last}>
          {(last) => (
            <>
              <BigButton act="open" onPress={() => props.onGo()}>
                {words.start.goOther}
              </BigButton>
              <BigButton kind="primary" act="open-same" onPress={() => props.onGo(last().id)}>
                {words.start.goSame}
              </BigButton>
            </>
          )}
        </Match>
      </Switch>
    </PageActions>
  );
}

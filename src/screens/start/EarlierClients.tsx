import { createMemo, For, Show } from 'solid-js';
import { type EarlierClient, listEarlier, readEarlier } from '../../../shared/records/earlierClients';
import type { Settings } from '../../../shared/records/settings';
import { formatQuantity } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { createPages } from '../../parts/createPages';
import { PlainPage } from '../../parts/PlainPage';
import { useWords } from '../../parts/useWords';
import type { StationState } from '../../station/stationState';
import { sayLastTime } from './sayLastTime';
import './earlierClients.css';

/** Everybody whose ticket begins so, newest first; a tap takes her ticket over, and says no more than that. */
export function EarlierClients(props: {
  readonly closed: StationState['closed'];
  readonly typed: string;
  readonly settings: Settings;
  readonly onChoose: (ticket: string) => void;
  readonly onBack: () => void;
}) {
  const words = useWords();
  const write = (count: number) => formatQuantity(count, 'count', props.settings.units, words.locale);
  const all = createMemo(() => listEarlier(props.closed, props.typed));
  const { shown, page, pages, turn } = createPages(all);
  const read = createMemo(() => shown().map((each) => readEarlier(props.closed, each)));
  const sayOf = ({ last, chair, endedAtMs }: EarlierClient): string =>
    [
      ...(chair === null ? [] : [words.start.earlierAt(write(chair))]),
      last === null ? words.moments.date(endedAtMs) : sayLastTime(last, words),
      ...(chair === null ? [words.start.earlierUnread] : []),
    ].join(' · ');
  return (
    <PlainPage
      step="earlierClients"
      kicker={words.start.earlierLead}
      title={words.start.earlierTitle}
      actions={
        <>
          <BigButton act="back-to-start" isWay onPress={props.onBack}>
            {words.general.back}
          </BigButton>
          <Show when={pages() > 1}>
            <BigButton act="more-earlier" isWay onPress={turn}>
              {words.start.earlierPage(write(page()), write(pages()))}
            </BigButton>
          </Show>
        </>
      }
    >
      <div class="earlier-clients">
        <For each={read()}>
          {(client) => (
            <BigButton act="earlier-client" isWay onPress={() => props.onChoose(client.ticket)}>
              <strong>{client.ticket}</strong>
              <span>{sayOf(client)}</span>
            </BigButton>
          )}
        </For>
      </div>
    </PlainPage>
  );
}

import { createEffect, createSignal, For, Show } from 'solid-js';
import { formatQuantity } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import { BigButton } from '../../parts/BigButton';
import { Dialog } from '../../parts/Dialog';
import { useWords } from '../../parts/useWords';
import type { Notice } from '../../station/notice';
import { type FindWhose, findLogName, findWhose, sayNotice } from '../../words/sayNotice';
import './notices.css';

/** What the station has to tell about its own memory: the newest in one line, all of them one tap away. */
export function Notices(props: {
  readonly notices: readonly Notice[];
  readonly units: UnitSettings;
  readonly whose: FindWhose;
  readonly onDismiss: (notice: Notice) => void;
}) {
  const words = useWords();
  const [isOpen, setIsOpen] = createSignal(false);
  const say = (notice: Notice) => sayNotice(notice, words, props.units, props.whose);
  const count = () => formatQuantity(props.notices.length, 'count', props.units, words.locale);
  createEffect(() => {
    if (props.notices.length === 0) setIsOpen(false);
  });
  return (
    <>
      <Show when={props.notices.at(-1)}>
        {(newest) => (
          <div class="notice-bar" role="status">
            <p class="notice-newest">
              <strong>{words.notices.count(count())}</strong> {say(newest())}
            </p>
            <BigButton act="read-notices" onPress={() => setIsOpen(true)}>
              {words.notices.read}
            </BigButton>
          </div>
        )}
      </Show>
      <Dialog isOpen={isOpen()} title={words.notices.title} onClose={() => setIsOpen(false)}>
        <ul class="notice-list">
          <For each={props.notices}>
            {(notice) => (
              <li
                data-notice={notice.kind}
                data-log={findLogName(notice)}
                data-whose={findWhose(notice, words, props.whose)}
              >
                <p>{say(notice)}</p>
                <BigButton act="dismiss" onPress={() => props.onDismiss(notice)}>
                  {words.notices.dismiss}
                </BigButton>
              </li>
            )}
          </For>
        </ul>
      </Dialog>
    </>
  );
}

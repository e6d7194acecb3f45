import { createEffect, createSignal, For, Show } from 'solid-js';
import type { ClockJump } from '../../../shared/records/clockJump';
import { formatQuantity } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import { BigButton } from '../../parts/BigButton';
import { Dialog } from '../../parts/Dialog';
import { useWords } from '../../parts/useWords';
import type { Notice } from '../../station/notice';
import { sayJump } from '../../words/sayJump';
import { type FindWhose, findLogName, findWhose, sayNotice } from '../../words/sayNotice';
import { ClockJumped } from './ClockJumped';
import './notices.css';
import type { JumpToTell } from './viewJumps';

/** What the station has to tell about its own memory: the newest in one line, all of them one tap away. */
export function Notices(props: {
  readonly notices: readonly Notice[];
  readonly units: UnitSettings;
  readonly whose: FindWhose;
  readonly onDismiss: (notice: Notice) => void;
  readonly jumps: readonly JumpToTell[];
  readonly onSlept: (jump: ClockJump) => void;
  readonly onPutAhead: (jump: ClockJump) => void;
}) {
  const words = useWords();
  const [isOpen, setIsOpen] = createSignal(false);
  const say = (notice: Notice) => sayNotice(notice, words, props.units, props.whose);
  const all = () => props.notices.length + props.jumps.length;
  const count = () => formatQuantity(all(), 'count', props.units, words.locale);
  /** A jump waits for an answer, so it is told first. */
  const first = () => {
    const [jump, notice] = [props.jumps.at(-1), props.notices.at(-1)];
    if (jump !== undefined) return sayJump({ ...jump, wasRunning: false, holdsSkinTest: false }, words);
    return notice === undefined ? null : say(notice);
  };
  createEffect(() => {
    if (all() === 0) setIsOpen(false);
  });
  return (
    <>
      <Show when={first()}>
        {(newest) => (
          <div class="notice-bar" role="status">
            <p class="notice-newest">
              <strong>{words.notices.count(count())}</strong> {newest()}
            </p>
            <BigButton act="read-notices" onPress={() => setIsOpen(true)}>
              {words.notices.read}
            </BigButton>
          </div>
        )}
      </Show>
      <Dialog isOpen={isOpen()} title={words.notices.title} onClose={() => setIsOpen(false)}>
        <ul class="notice-list">
          <For each={props.jumps}>
            {(told) => <ClockJumped told={told} onSlept={props.onSlept} onPutAhead={props.onPutAhead} />}
          </For>
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

import { createEffect, createSignal, For, on, Show } from 'solid-js';
import { BigButton } from '../../parts/BigButton';
import { Dialog } from '../../parts/Dialog';
import { useWords } from '../../parts/useWords';
import type { TabletInUse } from '../../tablet/createTablet';
import { type SoundCheck as Check, findSoundCheck } from '../../tablet/soundCheck';
import './alarm.css';

/** Has the sound been heard today? Nothing is offered before the first touch, nor where there is none. */
export const findOffer = (tablet: TabletInUse | undefined, nowMs: number): 'offer' | 'notHeard' | null =>
  tablet === undefined || tablet.sound() !== 'ready' ? null : findSoundCheck(tablet.soundCheck(), nowMs);

/** One quiet line at the bar until the sound was heard or put off; not heard, the line stays and says so. */
export function SoundCheckLine(props: { readonly offer: 'offer' | 'notHeard'; readonly onOpen: () => void }) {
  const words = useWords();
  return (
    <button
      type="button"
      class="sound-check"
      data-act="sound-check"
      data-check={props.offer}
      onClick={() => props.onOpen()}
    >
      {props.offer === 'offer' ? words.tablet.check.offer : words.tablet.check.notHeardNote}
    </button>
  );
}

/** The sound, tried where she works, and whether it was heard; what to do where it was not. */
export function SoundCheck(props: {
  readonly tablet: TabletInUse;
  readonly nowMs: number;
  readonly isOpen: boolean;
  readonly onClose: () => void;
}) {
  const words = useWords();
  const said = () => words.tablet.check;
  /** Was it played when it was last tried? null: not tried since this opened. */
  const [sounded, setSounded] = createSignal<boolean | null>(null);
  const isTried = () => sounded() === true;
  createEffect(
    on(
      () => props.isOpen,
      () => setSounded(null),
    ),
  );
  const offer = () => findOffer(props.tablet, props.nowMs);
  const answer = (given: Check['answer']) => {
    props.tablet.noteSoundCheck(given, props.nowMs);
    if (given !== 'notHeard') props.onClose();
  };
  const tryOut = async () => {
    setSounded(await props.tablet.tryOut(props.tablet.voice() === 'off' ? null : words.tablet.spokenTrial));
  };
  return (
    <Dialog isOpen={props.isOpen} title={said().title} onClose={props.onClose}>
      <div class="sound-check-parts">
        <p>{said().ask}</p>
        <div class="sound-check-told" role="status">
          <Show when={sounded() === false}>
            <p data-sounded="no">{words.tablet.notSounded}</p>
          </Show>
          <Show when={offer() === 'notHeard'}>
            <ul>
              <For each={said().whatToDo}>{(line) => <li>{line}</li>}</For>
            </ul>
            <p>{said().stays}</p>
          </Show>
        </div>
        <div class="sound-check-answers">
          <BigButton act="try-sound" kind={isTried() ? 'plain' : 'primary'} onPress={() => void tryOut()}>
            {said().offer}
          </BigButton>
          <BigButton act="sound-heard" isDisabled={!isTried()} onPress={() => answer('heard')}>
            {said().heard}
          </BigButton>
          <BigButton act="sound-not-heard" isDisabled={!isTried()} onPress={() => answer('notHeard')}>
            {said().notHeard}
          </BigButton>
          <Show when={offer() === 'offer'}>
            <BigButton kind="quiet" act="sound-later" onPress={() => answer('later')}>
              {said().later}
            </BigButton>
          </Show>
        </div>
      </div>
    </Dialog>
  );
}

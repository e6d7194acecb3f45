import { createEffect, createSignal, For, onCleanup, Show } from 'solid-js';
import { type Speed, speeds } from '../../../machines/practice/practiceEvent';
import { BigButton } from '../../parts/BigButton';
import { Dialog } from '../../parts/Dialog';
import { MayWriteProvider } from '../../parts/useMayWrite';
import { useWords } from '../../parts/useWords';
import './practiceRibbon.css';

/** Over every screen of practice: that it is practice, which lesson is under way, how fast its clock runs, and the way out. */
export function PracticeRibbon(props: {
  /** The lesson under way, in words; empty where none is. */
  readonly lesson: string;
  readonly speed: Speed;
  /** Only a window that writes sets it. */
  readonly mayWrite: boolean;
  readonly onSpeed: (times: Speed) => void;
  /** Answers whether it was left; then the station starts anew. */
  readonly onLeave: () => Promise<boolean>;
}) {
  const words = useWords();
  const said = () => words.practice;
  const [isAsked, setIsAsked] = createSignal(false);
  const [state, setState] = createSignal<'here' | 'leaving' | 'failed'>('here');
  createEffect(() => {
    document.title = said().windowTitle(words.demo.title);
  });
  onCleanup(() => {
    document.title = words.demo.title;
  });
  const leave = async () => {
    setState('leaving');
    setState((await props.onLeave()) ? 'leaving' : 'failed');
  };
  return (
    <>
      <aside class="practice-ribbon" data-practice="">
        <strong class="practice-mark">{said().mark}</strong>
        <span class="practice-said">{props.lesson === '' ? said().ribbon : props.lesson}</span>
        <fieldset class="practice-speeds" aria-label={said().speed}>
          <For each={speeds}>
            {(times) => (
              <button
                type="button"
                data-act={`speed-${times}`}
                aria-pressed={props.speed === times}
                disabled={!props.mayWrite}
                onClick={() => props.onSpeed(times)}
              >
                {said().speeds[times]}
              </button>
            )}
          </For>
        </fieldset>
        <button
          type="button"
          class="practice-leave"
          data-act="leave-practice"
          onClick={() => setIsAsked(true)}
        >
          {said().leave}
        </button>
      </aside>
      <Dialog isOpen={isAsked()} title={said().leaveTitle} onClose={() => setIsAsked(false)}>
        <p role={state() === 'failed' ? 'alert' : undefined}>
          {state() === 'failed' ? said().notLeft : said().leaveWhat}
        </p>
        <MayWriteProvider value={() => true}>
          <div class="dialog-actions">
            <BigButton act="stay-in-practice" onPress={() => setIsAsked(false)}>
              {said().stay}
            </BigButton>
            <BigButton
              kind="primary"
              act="leave-practice-now"
              isDisabled={state() === 'leaving'}
              onPress={() => void leave()}
            >
              {state() === 'leaving' ? said().leaving : said().leaveNow}
            </BigButton>
          </div>
        </MayWriteProvider>
      </Dialog>
    </>
  );
}

/** In the head of every dialog of practice, since it lies over the ribbon. */
export function PracticeMark(props: { readonly isOn: boolean }) {
  const words = useWords();
  return (
    <Show when={props.isOn}>
      <strong class="practice-mark" data-practice="">
        {words.practice.mark}
      </strong>
    </Show>
  );
}

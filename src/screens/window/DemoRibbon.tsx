import { createEffect, createSignal, onCleanup } from 'solid-js';
import { Dialog } from '../../parts/Dialog';
import { HoldButton } from '../../parts/HoldButton';
import { MayWriteProvider } from '../../parts/useMayWrite';
import { useWords } from '../../parts/useWords';
import type { DemoInUse } from '../../station/demo/createDemo';
import './window.css';

/** Over every screen of the demo: that it is one, and the way out of it. */
export function DemoRibbon(props: { readonly demo: DemoInUse }) {
  const words = useWords();
  const [isAsked, setIsAsked] = createSignal(false);
  const [state, setState] = createSignal<'here' | 'leaving' | 'failed'>('here');
  createEffect(() => {
    document.title = words.demo.windowTitle(words.demo.title);
  });
  onCleanup(() => {
    document.title = words.demo.title;
  });
  const remove = async () => {
    setState('leaving');
    setState((await props.demo.remove()) ? 'leaving' : 'failed');
  };
  return (
    <>
      <aside class="demo-ribbon" data-demo="">
        <strong>{words.demo.mark}</strong>
        <span>{words.demo.ribbon}</span>
        <button type="button" class="demo-leave" data-act="leave-demo" onClick={() => setIsAsked(true)}>
          {words.demo.leave}
        </button>
      </aside>
      <Dialog isOpen={isAsked()} title={words.demo.leaveTitle} onClose={() => setIsAsked(false)}>
        <p role={state() === 'failed' ? 'alert' : undefined}>
          {state() === 'failed' ? words.demo.notRemoved : words.demo.leaveWhat}
        </p>
        <MayWriteProvider value={() => true}>
          <div class="demo-remove">
            <HoldButton
              label={state() === 'leaving' ? words.demo.removing : words.demo.remove}
              act="remove-demo"
              isDisabled={state() === 'leaving'}
              onHeld={() => void remove()}
            />
          </div>
        </MayWriteProvider>
      </Dialog>
    </>
  );
}

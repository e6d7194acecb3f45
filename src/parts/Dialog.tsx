import { createContext, createEffect, createUniqueId, type JSX, Show, useContext } from 'solid-js';
import { BigButton } from './BigButton';
import './dialog.css';
import { useWords } from './useWords';

const InHead = createContext<() => JSX.Element>(() => null);

/** What stands in the head of every dialog inside it, since nothing below a dialog can be tapped. */
export const DialogHeadProvider = InHead.Provider;

/** A question that lies over the screen until it is answered or closed; Escape closes it. */
export function Dialog(props: {
  readonly isOpen: boolean;
  readonly title: string;
  readonly onClose: () => void;
  readonly children: JSX.Element;
}) {
  const words = useWords();
  const renderInHead = useContext(InHead);
  const titleId = createUniqueId();
  let place!: HTMLDialogElement;
  createEffect(() => {
    if (props.isOpen && !place.open) place.showModal();
    if (!props.isOpen && place.open) place.close();
  });
  return (
    <dialog ref={place} class="dialog" aria-labelledby={titleId} onClose={() => props.onClose()}>
      <Show when={props.isOpen}>
        <header class="dialog-head">
          <h2 id={titleId}>{props.title}</h2>
          {renderInHead()}
          <BigButton kind="quiet" act="close-dialog" isWay onPress={() => props.onClose()}>
            {words.general.close}
          </BigButton>
        </header>
        <div class="dialog-content">{props.children}</div>
      </Show>
    </dialog>
  );
}

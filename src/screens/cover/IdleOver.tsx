import { createEffect, createUniqueId, type JSX, Match, onCleanup, Switch } from 'solid-js';
import { BigButton } from '../../parts/BigButton';
import { useWords } from '../../parts/useWords';
import './cover.css';
import type { Idle } from './createIdle';

/**
 * Over the whole screen and every dialog on it: the warning, then the cover. A whole tap anywhere takes it away, and does
 * nothing to what lies below: that is inert until the finger is up. Checked in tests/browser/cover.test.ts.
 */
export function IdleOver(props: {
  readonly idle: Idle;
  /** Seconds, as they are written. */
  readonly left: string;
  /** The way to silence. */
  readonly beside: JSX.Element;
  /** What the cover shows. */
  readonly children: JSX.Element;
}) {
  const words = useWords();
  const titleId = createUniqueId();
  let place!: HTMLDialogElement;
  const phase = () => props.idle.phase();
  createEffect(() => {
    const isOver = phase() !== 'awake';
    if (isOver && !place.open) place.showModal();
    if (!isOver && place.open) place.close();
  });
  // On the page itself, since what is for paper stands beside the station.
  createEffect(() => document.documentElement.toggleAttribute('data-covered', phase() === 'covered'));
  onCleanup(() => document.documentElement.removeAttribute('data-covered'));
  const stay = (event: MouseEvent) => {
    if (event.target instanceof Element && event.target.closest('.silence') !== null) return;
    props.idle.stay();
  };
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: its button and Escape do the same for keys.
    <dialog
      ref={place}
      class="idle-over"
      data-idle={phase()}
      aria-labelledby={titleId}
      onClick={stay}
      onClose={() => props.idle.stay()}
    >
      <Switch>
        <Match when={phase() === 'warned'}>
          <div class="idle-warning">
            <h2 id={titleId}>{words.cover.warning}</h2>
            <p>
              {words.cover.warningHint}{' '}
              <span class="idle-left" aria-hidden="true">
                {words.cover.left(props.left)}
              </span>
            </p>
            <div class="dialog-actions">
              <BigButton kind="primary" act="stay" isWay onPress={() => undefined}>
                {words.cover.stay}
              </BigButton>
            </div>
          </div>
        </Match>
        <Match when={phase() === 'covered'}>
          <div class="cover">
            <header class="cover-head">
              <h1 id={titleId}>{words.cover.title}</h1>
              <p>{words.cover.hint}</p>
              <BigButton act="uncover" isWay onPress={() => undefined}>
                {words.cover.goOn}
              </BigButton>
              {props.beside}
            </header>
            {props.children}
          </div>
        </Match>
      </Switch>
    </dialog>
  );
}

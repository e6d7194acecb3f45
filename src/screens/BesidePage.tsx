import type { JSX } from 'solid-js';
import { PageActions } from '../parts/PageActions';

/** A page beside the clients: of what, whose, its content, and its actions with the primary one last. */
export function BesidePage(props: {
  /** Which way it belongs to. */
  readonly of: 'skinTests' | 'kept';
  readonly kicker: string;
  readonly title: string;
  readonly children: JSX.Element;
  readonly actions: JSX.Element;
}) {
  return (
    <main class="step-page" data-step={props.of}>
      <header class="step-head">
        <div class="step-title">
          <p class="kicker">{props.kicker}</p>
          <h1>{props.title}</h1>
        </div>
      </header>
      <section class="step-content" aria-label={props.title} tabindex="0">
        {props.children}
      </section>
      <PageActions>{props.actions}</PageActions>
    </main>
  );
}

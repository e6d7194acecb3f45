import type { JSX } from 'solid-js';
import { PageActions } from './PageActions';
import './page.css';

/** A page of no client who is here: what it is, its content, and its actions with the primary one last. */
export function PlainPage(props: {
  readonly step: string;
  readonly kicker: string;
  readonly title: string;
  readonly children: JSX.Element;
  readonly actions: JSX.Element;
}) {
  return (
    <main class="step-page" data-step={props.step}>
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

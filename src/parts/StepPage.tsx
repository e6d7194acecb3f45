import { For, type JSX, Show } from 'solid-js';
import type { BackStep } from '../../shared/records/steps';
import type { AnyRefusal } from '../words/sayRefusal';
import { BigButton } from './BigButton';
import { HoldButton } from './HoldButton';
import { PageActions } from './PageActions';
import './page.css';
import { Refusal } from './Refusal';
import { useWords } from './useWords';

/** What surrounds every step of one client: who she is, and the ways that are open from anywhere. */
export interface PageSurroundings {
  /** "Chair 3 · Q.F." */
  readonly kicker: string;
  /** Something is on skin: then "burning or reaction" is one tap away. */
  readonly isOnSkin: boolean;
  readonly onReaction: () => void;
  /** Strands in the mix: that one breaks is held from every view. */
  readonly breaking: readonly {
    readonly zone: string;
    readonly label: string;
    readonly onHeld: () => void;
  }[];
  /** Why the last of them was not written. */
  readonly notBroken: AnyRefusal | null;
  /** Ending, parking, going back. */
  readonly onMore: () => void;
  readonly onBar: () => void;
  /** Back to a step, past the question what that costs. */
  readonly onBackTo: (step: BackStep) => void;
}

/**
 * One step: whose, what, its content, and its actions with the primary one last, bottom right.
 * The content may scroll, also by keys; the head and the actions stay.
 */
export function StepPage(props: {
  readonly page: PageSurroundings;
  readonly title: string;
  /** Added to the kicker: "strand 1, hairline". */
  readonly also?: string;
  /** Nothing more can be done for this client: only the way to the bar is open. */
  readonly isOver?: boolean;
  readonly children: JSX.Element;
  readonly actions: JSX.Element;
}) {
  const words = useWords();
  return (
    <div class="step-page">
      <header class="step-head">
        <div class="step-title">
          <p class="kicker">
            {props.page.kicker}
            {props.also === undefined ? '' : ` · ${props.also}`}
          </p>
          <h1>{props.title}</h1>
        </div>
        <nav class="step-ways">
          <Show when={props.isOver !== true}>
            <BigButton kind="quiet" act="more-for-client" isWay onPress={() => props.page.onMore()}>
              {words.general.moreForClient}
            </BigButton>
          </Show>
          <BigButton kind="quiet" act="bar" isWay onPress={() => props.page.onBar()}>
            {words.general.bar}
          </BigButton>
        </nav>
      </header>
      <section class="step-content" aria-label={props.title} tabindex="0">
        {props.children}
      </section>
      <PageActions>
        {/* The first of the actions wherever something is on skin: always in the same corner. */}
        <Show when={props.page.isOnSkin}>
          <BigButton kind="danger" act="reaction" isWay onPress={() => props.page.onReaction()}>
            {words.general.reaction}
          </BigButton>
        </Show>
        <Show when={props.page.notBroken}>
          {(refusal) => (
            <div class="above-actions">
              <Refusal refusal={refusal()} />
            </div>
          )}
        </Show>
        <For each={props.page.breaking}>
          {(strand) => (
            <HoldButton label={strand.label} act="strand-broke" option={strand.zone} onHeld={strand.onHeld} />
          )}
        </For>
        {props.actions}
      </PageActions>
    </div>
  );
}

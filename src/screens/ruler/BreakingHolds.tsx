import { For, Show } from 'solid-js';
import { HoldButton } from '../../parts/HoldButton';
import { Refusal } from '../../parts/Refusal';
import type { PageSurroundings } from '../../parts/StepPage';

/** What of the page below goes on while the ruler covers it: strands in the mix, which break when they like. */
export type BehindRuler = Pick<PageSurroundings, 'breaking' | 'notBroken'>;

/** Each strand in the mix, to be held when it breaks, among the actions of the ruler and at none of their ends. */
export function BreakingHolds(props: { readonly behind: BehindRuler }) {
  return (
    <>
      <For each={props.behind.breaking}>
        {(strand) => (
          <HoldButton label={strand.label} act="strand-broke" option={strand.zone} onHeld={strand.onHeld} />
        )}
      </For>
      <Show when={props.behind.notBroken}>
        {(refusal) => (
          <div class="not-broken">
            <Refusal refusal={refusal()} />
          </div>
        )}
      </Show>
    </>
  );
}

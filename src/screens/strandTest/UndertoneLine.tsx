import { createMemo, Index, Show } from 'solid-js';
import { listUndertones } from '../../../shared/chemistry/undertone';
import { useWords } from '../../parts/useWords';
import './undertone.css';

/** The undertone that is to be expected at the level that was tapped, in a swatch and a word. Nobody is asked for it. */
export function UndertoneLine(props: { readonly level: number }) {
  const words = useWords();
  const undertones = createMemo(() => listUndertones(props.level));
  const said = () => words.strandTest.lift;
  return (
    <Show when={undertones().length > 0}>
      <p class="undertone-line" data-line="undertone">
        <svg viewBox="0 0 96 44" aria-hidden="true">
          <Index each={undertones()}>
            {(undertone, index) => (
              <rect
                class="undertone-swatch"
                data-undertone={undertone()}
                x={(index * 96) / undertones().length}
                width={96 / undertones().length}
                height="44"
              />
            )}
          </Index>
          <rect class="undertone-edge" x="1.5" y="1.5" width="93" height="41" />
        </svg>
        <span>{said().undertone(undertones().map((undertone) => said().undertones[undertone]))}</span>
      </p>
    </Show>
  );
}

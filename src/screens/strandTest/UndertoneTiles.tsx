import { createMemo, For, Show } from 'solid-js';
import {
  listNearUndertones,
  listUndertones,
  type Undertone,
  undertones,
} from '../../../shared/chemistry/undertone';
import { useWords } from '../../parts/useWords';
import { Tile, Tiles } from '../Tiles';
import './undertone.css';

/** What stands chosen at a look, and what a tap does. */
interface Choosing {
  readonly chosen: string;
  readonly onChoose: (option: string) => void;
}

/**
 * Which undertone does it show? The one to expect at the level that was tapped stands chosen, in a swatch and a word;
 * one tap says that it is a neighbour instead, and leaving it costs none. Nothing is expected where nobody knows the
 * level. Checked in tests/src/screens/strandTest/undertone.test.tsx.
 */
export function UndertoneTiles(props: Choosing & { readonly level: number; readonly onMore: () => void }) {
  const words = useWords();
  const said = () => words.strandTest.lift;
  const expected = createMemo(() => listUndertones(props.level));
  const near = createMemo(() => listNearUndertones(props.level));
  /** Named among all of them: it stands beside its neighbours, so that it can be seen and taken back. */
  const shown = createMemo(() =>
    undertones.filter((undertone) => near().includes(undertone) || props.chosen === undertone),
  );
  return (
    <Tiles question="undertone" label={words.strandTest.forms.look.undertone.ask}>
      <Show when={expected().length > 0}>
        <Tile
          option="asExpected"
          isPressed={props.chosen === 'asExpected'}
          onPress={() => props.onChoose('asExpected')}
        >
          <Swatch of={expected()} />
          {said().undertone(expected().map((undertone) => said().undertones[undertone]))}
        </Tile>
      </Show>
      <For each={shown()}>{(undertone) => <UndertoneTile {...props} undertone={undertone} />}</For>
      <Tile act="other-undertone" onPress={props.onMore}>
        {expected().length > 0 ? said().otherUndertone : said().nameUndertone}
      </Tile>
    </Tiles>
  );
}

/** All ten of them, darkest first. */
export function AllUndertones(props: Choosing) {
  const words = useWords();
  return (
    <Tiles question="undertone" label={words.strandTest.forms.look.undertone.ask} takesFocus>
      <For each={undertones}>{(undertone) => <UndertoneTile {...props} undertone={undertone} />}</For>
    </Tiles>
  );
}

function UndertoneTile(props: Choosing & { readonly undertone: Undertone }) {
  const words = useWords();
  return (
    <Tile
      option={props.undertone}
      isPressed={props.chosen === props.undertone}
      onPress={() => props.onChoose(props.undertone)}
    >
      <Swatch of={[props.undertone]} />
      {words.strandTest.lift.undertones[props.undertone]}
    </Tile>
  );
}

/** One undertone, or two side by side at half a level. */
const Swatch = (props: { readonly of: readonly Undertone[] }) => (
  <svg class="undertone-swatch" viewBox="0 0 96 32" preserveAspectRatio="none" aria-hidden="true">
    <For each={props.of}>
      {(undertone, index) => (
        <rect
          data-undertone={undertone}
          x={(index() * 96) / props.of.length}
          width={96 / props.of.length}
          height="32"
        />
      )}
    </For>
  </svg>
);

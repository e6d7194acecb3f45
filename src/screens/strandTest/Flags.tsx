import { createMemo, createSignal, For, Show } from 'solid-js';
import { type RedFlag, redFlags } from '../../../shared/judgement/risk';
import { formatQuantity } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import { Dialog } from '../../parts/Dialog';
import { useWords } from '../../parts/useWords';
import '../../parts/explain.css';
import './flags.css';

/** So many signs are named at once; of more the rest is one tap away. */
const NAMED = 3;

/** What the hand felt today is named before what was told. None has a published weight, so nothing is left out. */
const feltFirst: readonly RedFlag[] = ['breakage', 'slowStretch', 'curlLost'];
const inOrder = (flags: readonly RedFlag[]): readonly RedFlag[] =>
  [...feltFirst, ...redFlags.filter((flag) => !feltFirst.includes(flag))].filter((flag) =>
    flags.includes(flag),
  );

/**
 * What makes this hair suspect: the first three signs in short, and all of them behind "and 3 more".
 * Checked in tests/src/screens/strandTest/flags.test.tsx.
 */
export function Flags(props: {
  readonly flags: readonly RedFlag[];
  readonly units: UnitSettings;
  /** What stands before them. */
  readonly lead?: string;
}) {
  const words = useWords();
  const said = () => words.strandTest;
  const [isOpen, setIsOpen] = createSignal(false);
  const all = createMemo(() => inOrder(props.flags));
  const more = () => (all().length > NAMED + 1 ? all().length - NAMED : 0);
  const named = () => (more() === 0 ? all() : all().slice(0, NAMED));
  return (
    <div class="flags" data-more={more() > 0}>
      <span>
        {props.lead}{' '}
        <For each={named()}>
          {(flag) => (
            <span class="flag" data-flag={flag}>
              {more() > 0 ? said().flagsShort[flag] : said().flags[flag]}
            </span>
          )}
        </For>
      </span>
      <Show when={more() > 0}>
        <button
          type="button"
          class="explain"
          data-act="more-flags"
          aria-haspopup="dialog"
          onClick={() => setIsOpen(true)}
        >
          {said().moreFlags(formatQuantity(more(), 'count', props.units, words.locale))}
        </button>
        <Dialog isOpen={isOpen()} title={said().allFlags} onClose={() => setIsOpen(false)}>
          <ul>
            <For each={all()}>{(flag) => <li data-sign={flag}>{said().flags[flag]}</li>}</For>
          </ul>
          <p class="soft">{said().preparing.estimate}</p>
        </Dialog>
      </Show>
    </div>
  );
}

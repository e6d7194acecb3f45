import { For, Match, Show, Switch } from 'solid-js';
import { formatQuantity } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import { Caution } from '../../parts/Caution';
import { useWords } from '../../parts/useWords';
import type { Others } from '../../station/replicating';
import { sayOthers } from '../../words/sayOthers';

/** Other stations that share their records with this one. */
export interface OthersInUse {
  /** null: another window knows, or nothing is shared here. */
  readonly others: () => Others | null;
  readonly shareNow: () => void;
}

/** So many are named; the rest is counted. */
const NAMED = 3;

/** A document by its kind and record: its whole name is for nobody to read. */
const shorten = (id: string): string => (id.length > 40 ? `${id.slice(0, 39)}…` : id);

/** How this station stands with the others, and what of theirs was left out or waits, by name. Checked in tests/src/screens/settings/othersPage.test.tsx. */
export function OthersPage(props: {
  readonly others: Others;
  readonly units: UnitSettings;
  readonly nowMs: number;
}) {
  const words = useWords();
  const said = () => words.others;
  const write = (count: number) => formatQuantity(count, 'count', props.units, words.locale);
  const refused = () => ('refused' in props.others ? props.others.refused : []);
  const later = () => ('later' in props.others ? props.others.later : []);
  const left = () => [...refused(), ...later()];
  const sayLeft = () =>
    [
      refused().length > 0 ? said().refusedTitle(write(refused().length)) : '',
      later().length > 0 ? said().laterTitle(write(later().length)) : '',
    ]
      .filter((part) => part !== '')
      .join(' · ');
  /** What was left out or waits is what matters then, and takes the place of what is always so. */
  const hasLeft = () => left().length > 0;
  const trouble = () => (props.others.kind === 'apart' ? props.others.why : null);
  return (
    <>
      <section class="panel" data-panel="others" data-others={props.others.kind}>
        <h2>{sayOthers(props.others, words, props.units, props.nowMs)}</h2>
        <Switch>
          <Match when={props.others.kind === 'off'}>
            <p>{said().offHint}</p>
          </Match>
          <Match when={trouble()}>{(why) => <p>{said().troubles[why()]}</p>}</Match>
          <Match when={props.others.kind === 'inStep' && !hasLeft()}>
            <p>{said().inStepHint}</p>
          </Match>
        </Switch>
        <Show when={props.others.kind !== 'off' && !hasLeft()}>
          <p>{said().hint}</p>
        </Show>
      </section>
      <Show when={hasLeft()}>
        <section class="panel" data-panel="others-refused">
          <h2>{sayLeft()}</h2>
          <ul class="left-out">
            <For each={left().slice(0, NAMED)}>
              {({ id, why }) => <li>{said().refused(shorten(id), why)}</li>}
            </For>
          </ul>
          <Show when={left().length > NAMED}>
            <p>{said().andMore(write(left().length - NAMED))}</p>
          </Show>
          <Show when={left().some(({ why }) => why !== 'openHere')}>
            <p>{said().refusedHint}</p>
          </Show>
        </section>
      </Show>
      <Show when={props.others.kind !== 'off' && !hasLeft()}>
        <Caution kind="plain">
          <p>{said().care}</p>
        </Caution>
      </Show>
    </>
  );
}

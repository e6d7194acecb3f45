import { For, type JSX, Show } from 'solid-js';
import type { UnitSettings } from '../../../shared/units/quantity';
import { useWords } from '../../parts/useWords';
import { isCuttingDue, type KeptCutting } from './listCuttings';
import { sayWhose } from './sayWhose';

/** Which cuttings are kept, and when is each looked at again? Who is open still is one tap away. */
export function Cuttings(props: {
  readonly cuttings: readonly KeptCutting[];
  readonly units: UnitSettings;
  readonly nowMs: number;
  readonly onOpen: (id: string) => void;
}) {
  const words = useWords();
  const said = () => words.bar.cuttings;
  const renderLine = (cutting: KeptCutting): JSX.Element => {
    const when = words.moments.dayAndTime(cutting.lookAtMs);
    return (
      <>
        <strong>{sayWhose(cutting, words, props.units)}</strong>
        <span>{isCuttingDue(cutting, props.nowMs) ? said().lookNow(when) : said().lookAt(when)}</span>
        <Show when={cutting.open === null}>
          <span>{said().isClosed(cutting.record.stylist)}</span>
        </Show>
      </>
    );
  };
  return (
    <Show when={props.cuttings.length > 0}>
      <section data-panel="cuttings">
        <h3>{said().title}</h3>
        <p>{said().why}</p>
        <ul class="parked-list">
          <For each={props.cuttings}>
            {(cutting) => (
              <li data-cutting={cutting.id}>
                <Show
                  when={cutting.open !== null}
                  fallback={
                    <div
                      class="parked-client cutting-closed"
                      data-late={isCuttingDue(cutting, props.nowMs) ? '' : undefined}
                    >
                      {renderLine(cutting)}
                    </div>
                  }
                >
                  <button
                    type="button"
                    class="parked-client"
                    data-act="open-cutting"
                    data-late={isCuttingDue(cutting, props.nowMs) ? '' : undefined}
                    onClick={() => props.onOpen(cutting.id)}
                  >
                    {renderLine(cutting)}
                    <span class="place-go" aria-hidden="true" />
                  </button>
                </Show>
              </li>
            )}
          </For>
        </ul>
      </section>
    </Show>
  );
}

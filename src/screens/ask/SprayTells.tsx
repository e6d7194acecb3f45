import { For, Show } from 'solid-js';
import { Explain } from '../../parts/Explain';
import { useWords } from '../../parts/useWords';
import type { SprayTold } from './tellSpray';

/** What the list of today's spray tells at today's setting, worst first; all of it, with its sources, behind Why. */
export function SprayTells(props: { readonly told: SprayTold }) {
  const words = useWords();
  return (
    <section class="panel spray-tells" data-panel="spray-tells" aria-live="polite">
      <Show
        when={props.told.lines.length > 0}
        fallback={
          <p>
            {words.spray.noList} {props.told.maker?.says}
          </p>
        }
      >
        <header>
          <h2>{props.told.title}</h2>
          <Explain title={props.told.title}>
            <ul class="reached all-told" tabindex="0">
              <For each={props.told.whole}>
                {(finding) => (
                  <li data-finding={finding.id}>
                    {finding.says} {finding.more} <span class="soft">{finding.mark}</span>
                  </li>
                )}
              </For>
            </ul>
            <Show when={props.told.maker}>{(maker) => <p>{maker().says}</p>}</Show>
            <p>{words.spray.tellsOnly}</p>
          </Explain>
        </header>
        <ul class="reached">
          <For each={props.told.lines}>
            {(line) => (
              <li data-topic={line.topic} data-grave={line.isGrave}>
                {line.says}
              </li>
            )}
          </For>
        </ul>
      </Show>
    </section>
  );
}

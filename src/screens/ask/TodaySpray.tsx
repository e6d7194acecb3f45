import { For, Show } from 'solid-js';
import { Explain } from '../../parts/Explain';
import { useWords } from '../../parts/useWords';
import { saySource } from '../../words/saySource';
import type { TodaySprayView } from './viewTodaySpray';

/** What the list of today's spray tells at today's setting, worst first; all of it, with its sources, behind Why. */
export function TodaySpray(props: { readonly spray: TodaySprayView }) {
  const words = useWords();
  return (
    <section class="panel today-spray" data-panel="today-spray" aria-live="polite">
      <Show
        when={props.spray.lines.length > 0}
        fallback={
          <p>
            {words.spray.noList} {props.spray.maker?.says}
          </p>
        }
      >
        <header>
          <h2>{props.spray.title}</h2>
          <Explain title={props.spray.title}>
            <ul class="reached all-told" tabindex="0">
              <For each={props.spray.listAll()}>
                {(finding) => (
                  <li data-finding={finding.id}>
                    {finding.says} {finding.more} <span class="soft">{saySource(finding.mark, words)}</span>
                  </li>
                )}
              </For>
            </ul>
            <Show when={props.spray.maker}>{(maker) => <p>{maker().says}</p>}</Show>
            <p>{words.spray.tellsOnly}</p>
          </Explain>
        </header>
        <ul class="reached">
          <For each={props.spray.lines}>
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

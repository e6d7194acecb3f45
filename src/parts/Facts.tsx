import { For } from 'solid-js';

/** What is known, line by line: its name and its value. */
export function Facts(props: {
  readonly class: string;
  readonly facts: readonly (readonly [name: string, value: string])[];
}) {
  return (
    <dl class={props.class}>
      <For each={props.facts}>
        {([name, value]) => (
          <>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </>
        )}
      </For>
    </dl>
  );
}

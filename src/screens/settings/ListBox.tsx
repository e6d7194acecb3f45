import { nameRefusalId } from '../../parts/form/Field';

/** A long text, typed or pasted: it stays as it came, line breaks and all. */
export function ListBox(props: {
  readonly ask: string;
  readonly path: string;
  readonly value: string;
  readonly isRefused: boolean;
  readonly onChange: (text: string) => void;
}) {
  return (
    <textarea
      class="list-box"
      rows={8}
      autocomplete="off"
      autocapitalize="characters"
      spellcheck={false}
      aria-label={props.ask}
      aria-describedby={nameRefusalId(props.path)}
      aria-invalid={props.isRefused}
      value={props.value}
      onInput={(event) => props.onChange(event.currentTarget.value)}
    />
  );
}

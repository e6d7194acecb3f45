import { nameRefusalId } from './Field';

/** A short text, typed: a long name breaks into a second line rather than being cut; Enter is no letter of it. */
export function TextBox(props: {
  readonly ask: string;
  readonly path: string;
  readonly value: string;
  readonly isRefused: boolean;
  readonly onChange: (text: string) => void;
  readonly onEnter?: () => void;
}) {
  return (
    <textarea
      rows={1}
      class="text-box"
      autocomplete="off"
      aria-label={props.ask}
      aria-describedby={nameRefusalId(props.path)}
      aria-invalid={props.isRefused}
      value={props.value}
      onInput={(event) => props.onChange(event.currentTarget.value.replace(/[\r\n]+/g, ' '))}
      onKeyDown={(event) => {
        if (event.key !== 'Enter') return;
        event.preventDefault();
        props.onEnter?.();
      }}
    />
  );
}

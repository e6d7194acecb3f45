import { StatusMark } from './StatusMark';
import type { AnyStatus } from './skinTestView';

/** One test in a list of tests: what it is of and how it was made, and beside it how far it is, in shape and words. */
export function StatusRow(props: {
  readonly name: string;
  /** Two lines below the name. */
  readonly how: readonly [string, string];
  readonly status: AnyStatus;
  readonly what: string;
  readonly when: string;
  /** What the row is known by: `data-…`. */
  readonly data: Readonly<Record<`data-${string}`, string>>;
  readonly onOpen: () => void;
}) {
  return (
    <li>
      <button
        type="button"
        class="skin-test-row"
        data-status={props.status}
        onClick={() => props.onOpen()}
        {...props.data}
      >
        <span class="skin-test-who">
          <span class="skin-test-ticket">{props.name}</span>
          <span class="skin-test-how">{props.how[0]}</span>
          <span class="skin-test-how">{props.how[1]}</span>
        </span>
        <span class="skin-test-status">
          <span class="skin-test-what">
            <StatusMark status={props.status} /> {props.what}
          </span>
          <span>{props.when}</span>
        </span>
      </button>
    </li>
  );
}

import type { JSX } from 'solid-js';
import { Facts } from '../../parts/Facts';
import { useWords } from '../../parts/useWords';
import { StatusMark } from './StatusMark';
import type { AnyStatus } from './skinTestView';

/** How one skin test stands, what is known of it, and whose word counts. */
export function TestFigure(props: {
  readonly status: AnyStatus;
  readonly what: string;
  readonly when: string;
  /** Of which product line it is; empty where nobody noted it. */
  readonly line: string;
  readonly facts: readonly (readonly [string, string])[];
  readonly children?: JSX.Element;
}) {
  const words = useWords();
  return (
    <>
      <h2 class="skin-test-figure" data-status={props.status}>
        <StatusMark status={props.status} />
        <span>
          <strong>{props.what}</strong>
          {props.when === '' ? '' : ` · ${props.when}`}
        </span>
      </h2>
      <Facts class="skin-test-facts" facts={props.facts} />
      <p class="soft">{words.skinTests.makers}</p>
      <p class="soft">
        {words.skinTest.neverSafe} {words.skinTests.covers(props.line)}
      </p>
      {props.children}
    </>
  );
}

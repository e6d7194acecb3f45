import { For, Show } from 'solid-js';
import type { UnitSettings } from '../../../../shared/units/quantity';
import { useWords } from '../../useWords';
import type { Place } from './places';
import './ledger.css';
import { sayAnswer } from './sayAnswer';

const marks = {
  open: 'M4 12 A8 8 0 1 0 20 12 A8 8 0 1 0 4 12',
  said: 'M4 13 L10 19 L21 6',
  usual: 'M5 12 H19',
  summary: 'M6 9 H18 M6 15 H18',
  refused: 'M12 3 L22 21 H2 Z M12 9 V14 M12 17 V18.5',
} as const;

/** "Don't know" is the usual answer of what is hardly ever asked. */
const isNotAsked = ({ state, question }: Place): boolean =>
  state === 'usual' && 'or' in question && question.or === 'unknown';

/** All questions of the form in short, with what was answered; a tap on a line goes to its question. */
export function Ledger(props: {
  readonly places: readonly Place[];
  readonly here: string | null;
  /** The line after the questions: what they come to. */
  readonly summary: string | undefined;
  readonly units: UnitSettings;
  readonly onGoTo: (path: string | null) => void;
}) {
  const words = useWords();
  const paths = () => props.places.map(({ path }) => path);
  return (
    <nav class="ledger" aria-label={words.sheet.ledger} data-dense={props.places.length > 10}>
      <For each={paths()}>
        {(path) => {
          const place = () => props.places.find((each) => each.path === path);
          return (
            <Show when={place()}>
              {(line) => (
                <button
                  type="button"
                  class="ledger-line"
                  data-ledger={path}
                  data-state={line().state}
                  data-in-row={line().row !== null}
                  data-refused={line().state === 'refused' ? 'refused' : undefined}
                  aria-current={props.here === path ? 'step' : undefined}
                  onClick={() => props.onGoTo(path)}
                >
                  <svg class="ledger-mark" viewBox="0 0 24 24" aria-hidden="true">
                    <path d={marks[line().state]} />
                  </svg>
                  <span class="ledger-name">{line().words.short ?? line().words.ask}</span>
                  <span class="ledger-value">
                    <Show when={!isNotAsked(line())} fallback={words.sheet.notAsked}>
                      {sayAnswer(line().question, line().words, line().value, { words, units: props.units })}
                      <Show when={line().state === 'usual'}>
                        {' '}
                        <span class="ledger-usual">{words.sheet.usual}</span>
                      </Show>
                    </Show>
                  </span>
                  <span class="only-heard">{words.sheet.states[line().state]}</span>
                </button>
              )}
            </Show>
          );
        }}
      </For>
      <Show when={props.summary}>
        {(summary) => (
          <button
            type="button"
            class="ledger-line"
            data-ledger="summary"
            data-state="summary"
            aria-current={props.here === null ? 'step' : undefined}
            onClick={() => props.onGoTo(null)}
          >
            <svg class="ledger-mark" viewBox="0 0 24 24" aria-hidden="true">
              <path d={marks.summary} />
            </svg>
            <span class="ledger-name">{summary()}</span>
          </button>
        )}
      </Show>
    </nav>
  );
}

import { createEffect, createMemo, createSignal, For, on, Show } from 'solid-js';
import { formatQuantity } from '../../../../shared/units/format';
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
  closed: 'M9 5 L16 12 L9 19',
  opened: 'M5 9 L12 16 L19 9',
  refused: 'M12 3 L22 21 H2 Z M12 9 V14 M12 17 V18.5',
} as const;

/** "Don't know", or nothing written, is the usual answer of what is hardly ever asked: neither is a usual one of hers. */
const isNotAsked = ({ state, question }: Place): boolean =>
  state === 'usual' && 'or' in question && (question.or === 'unknown' || question.or === '');

const nameOf = ({ words }: Place): string => words.short ?? words.ask;

/** More lines than these do not stand one below the other, and so many only where the sheet is tall. */
const TALLEST = 12;
const TALL = 9;
/** From so many questions on, or so many of them hardly ever asked, what is hardly ever asked is folded away. */
const FOLDED_FROM = 10;
const FOLDED_MANY = 3;
/** So many answers of what is folded away are still said. */
const FEW = 2;

/**
 * All questions of the form in short, with what was answered; a tap on a line goes to its question. What is hardly ever
 * asked stands in one line, "More", which opens it. Checked in tests/src/parts/sheet.test.tsx.
 */
export function Ledger(props: {
  readonly places: readonly Place[];
  readonly here: string | null;
  /** The line after the questions: what they come to. */
  readonly summary: string | undefined;
  readonly units: UnitSettings;
  readonly onGoTo: (path: string | null) => void;
}) {
  const words = useWords();
  const [isOpened, setIsOpened] = createSignal(false);
  const mayFold = ({ question, isMore, state }: Place) =>
    state !== 'refused' && (isMore || ('or' in question && question.or !== undefined));
  const isFolding = () => {
    const { length } = props.places.filter(mayFold);
    return length >= FOLDED_MANY || (length > 1 && props.places.length >= FOLDED_FROM);
  };
  const folded = () => (isFolding() ? props.places.filter(mayFold) : []);
  const main = () => (isFolding() ? props.places.filter((place) => !mayFold(place)) : props.places);
  const isFoldedHere = createMemo(() => folded().some(({ path }) => path === props.here));
  /** It opens and closes by itself with the question that is asked; a tap on it always does something. */
  createEffect(on(isFoldedHere, (isHere) => setIsOpened(isHere)));
  const countLines = () =>
    main().length +
    (props.summary === undefined ? 0 : 1) +
    (isFolding() ? 1 + (isOpened() ? folded().length : 0) : 0);
  const say = ({ question, words: said, value }: Place) =>
    sayAnswer(question, said, value, { words, units: props.units });
  /** What somebody said of them; the rest is only counted. */
  const sayFolded = () => {
    const said = folded().filter(({ state }) => state === 'said');
    const usual = folded().length - said.length;
    const write = (count: number) => formatQuantity(count, 'count', props.units, words.locale);
    return [
      ...(said.length > FEW
        ? [words.sheet.answered(write(said.length))]
        : said.map((place) => `${nameOf(place)} ${say(place)}`)),
      ...(usual === 0 ? [] : [words.sheet.asUsual(write(usual))]),
    ].join(' · ');
  };
  const line = (path: string, isHidden: () => boolean) => (
    <Show when={props.places.find((each) => each.path === path)}>
      {(place) => (
        <button
          type="button"
          class="ledger-line"
          data-ledger={path}
          data-state={place().state}
          data-in-row={place().row !== null}
          data-folded={folded().includes(place()) ? 'folded' : undefined}
          data-refused={place().state === 'refused' ? 'refused' : undefined}
          aria-current={props.here === path ? 'step' : undefined}
          hidden={isHidden()}
          onClick={() => props.onGoTo(path)}
        >
          <Mark of={place().state} />
          <span class="ledger-name">{nameOf(place())}</span>
          <span class="ledger-value">
            <Show when={!isNotAsked(place())} fallback={words.sheet.notAsked}>
              {say(place())}
              <Show when={place().state === 'usual'}>
                {' '}
                <span class="ledger-usual">{words.sheet.usual}</span>
              </Show>
            </Show>
          </span>
          <span class="only-heard">{words.sheet.states[place().state]}</span>
        </button>
      )}
    </Show>
  );
  return (
    <nav
      class="ledger"
      aria-label={words.sheet.ledger}
      data-more={isFolding() && isOpened() ? 'open' : undefined}
      data-lines={countLines() > TALLEST ? 'most' : countLines() > TALL ? 'many' : 'few'}
    >
      <For each={main().map(({ path }) => path)}>{(path) => line(path, () => false)}</For>
      <Show when={isFolding()}>
        <button
          type="button"
          class="ledger-line"
          data-act="more-questions"
          data-state={folded().some(({ state }) => state === 'said') ? 'said' : 'usual'}
          aria-expanded={isOpened()}
          onClick={() => setIsOpened(!isOpened())}
        >
          <Mark of={isOpened() ? 'opened' : 'closed'} />
          <span class="ledger-name">{words.sheet.more}</span>
          <span class="ledger-value">{isOpened() ? '' : sayFolded()}</span>
        </button>
        <For each={folded().map(({ path }) => path)}>{(path) => line(path, () => !isOpened())}</For>
      </Show>
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
            <Mark of="summary" />
            <span class="ledger-name">{summary()}</span>
          </button>
        )}
      </Show>
    </nav>
  );
}

const Mark = (props: { readonly of: keyof typeof marks }) => (
  <svg class="ledger-mark" viewBox="0 0 24 24" aria-hidden="true">
    <path d={marks[props.of]} />
  </svg>
);

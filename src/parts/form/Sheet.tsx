import { createEffect, createMemo, createSignal, type JSX, Show, untrack } from 'solid-js';
import type { Form } from '../../../shared/records/form';
import type { FieldRefusal, Raw, RawForm } from '../../../shared/records/readForm';
import type { UnitSettings } from '../../../shared/units/quantity';
import type { AnyFormWords } from '../../words/formWords';
import { useMayWrite } from '../useMayWrite';
import { useWords } from '../useWords';
import type { Draft } from './draft';
import type { Picks, Waiting } from './field';
import './form.css';
import { isWide } from './sheet/columns';
import { Ledger } from './sheet/Ledger';
import { findNext, isOpen, listPlaces, type Place, readRows } from './sheet/places';
import { SheetQuestion } from './sheet/SheetQuestion';
import './sheet/sheet.css';
import { findFirstOfRow } from './sheet/places';
import { sayAnswer } from './sheet/sayAnswer';
import { type Together, TogetherQuestion } from './sheet/TogetherQuestion';

/**
 * A form, one question at a time: a tap answers and goes on to the next that nobody has answered; beside it the ledger
 * of all questions, a tap on a line goes back to it. Once all is said, `children` sum it up.
 * Takes what `FormFields` takes. Checked in tests/src/parts/sheet.test.tsx.
 */
export function Sheet(props: {
  readonly form: Form;
  readonly words: AnyFormWords;
  readonly draft: Draft;
  readonly onChange?: (name: string, value: Raw) => void;
  readonly refusals: readonly FieldRefusal[];
  readonly units: UnitSettings;
  readonly hasAgeLine: boolean;
  readonly nowMs: number;
  readonly picks?: Picks;
  readonly waiting?: Waiting;
  /** What is mostly answered alike, asked together first. */
  readonly together?: readonly Together[];
  /** Something has to be done before the next question: then what the answers come to is shown, and says what. */
  readonly isPaused?: boolean;
  /** The question it opens at, answered or not; left out: the first that is open. */
  readonly begin?: string;
  /** A way beside a question, in its corner: how else its answer can be found. */
  readonly corner?: (path: string) => JSX.Element;
  /** What stands below the heading of a question, or of those that are asked together. */
  readonly beside?: (places: readonly Place[]) => JSX.Element;
  /** The name of what the answers come to: its line at the end of the ledger. */
  readonly summary?: string;
  /** What the answers come to: shown once all is said, or when its line is tapped. */
  readonly children?: JSX.Element;
}) {
  const words = useWords();
  const mayWrite = useMayWrite();
  const places = createMemo(() =>
    listPlaces({
      form: props.form,
      words: props.words,
      raw: props.draft.raw(),
      refusals: props.refusals,
      units: props.units,
      context: { hasAgeLine: props.hasAgeLine },
    }),
  );
  const findTogether = (path: string | null): Together | undefined =>
    props.together?.find(
      ({ names }) =>
        path !== null &&
        names.includes(path) &&
        names.every((name) => places().some((each) => each.path === name && each.state === 'open')),
    );
  /** Where the tile of several questions stands for them, it is gone to by their names. */
  const goOn = (path: string | null): string | null => findTogether(path)?.names.join(' ') ?? path;
  const findGoal = (from: string | null) => (props.isPaused === true ? null : goOn(findNext(places(), from)));
  const [goal, setGoal] = createSignal(
    untrack(() => (props.isPaused === true ? null : (props.begin ?? goOn(findBeginning(places()))))),
  );
  const together = createMemo(() => findTogether(goal()?.split(' ')[0] ?? null));
  const isTogether = () => together() !== undefined && goal()?.includes(' ') === true;
  /** A question that is not asked any more is left for the next one. */
  const here = createMemo(() => {
    const path = goal();
    if (isTogether()) return path;
    return path === null || places().some((place) => place.path === path) ? path : findNext(places(), null);
  });
  const place = createMemo(() => places().find(({ path }) => path === here()));
  const [hasMoved, setHasMoved] = createSignal(false);
  const goTo = (path: string | null) => {
    setHasMoved(true);
    setGoal(path);
  };
  createEffect<boolean>((was) => {
    const isNow = props.isPaused === true;
    if (was && !isNow) untrack(() => goTo(findGoal(null)));
    return isNow;
  }, props.isPaused === true);
  const sayTogether = ({ names, option }: Together) => {
    for (const name of names) props.draft.set(name, option);
    const last = names.at(-1);
    if (last !== undefined) props.onChange?.(last, option);
    goTo(findGoal(last ?? null));
  };
  const change = (at: Place, value: Raw) => {
    const { row } = at;
    const name = row?.list ?? at.name;
    const next = row === null ? value : writeInRow(props.draft.raw(), row, at.name, value);
    props.draft.set(name, next);
    props.onChange?.(name, next);
  };
  const ofRow = (at: Place): string => {
    const { row } = at;
    const list = row === null ? undefined : props.form[row.list];
    if (row === null || list?.kind !== 'list') return '';
    const first = places().find(({ path }) => path === `${row.list}.${row.index}.${findFirstOfRow(list)}`);
    if (first === undefined || first.path === at.path) return '';
    return sayAnswer(first.question, first.words, first.value, { words, units: props.units });
  };
  /** Lines of a row show while that row is asked, so that the ledger stays short. */
  const lines = createMemo(() => {
    const row = place()?.row ?? null;
    return places().filter(
      (each) =>
        each.row === null || (row !== null && each.row.list === row.list && each.row.index === row.index),
    );
  });
  const needsWidth = () => {
    const question = place()?.question;
    return question !== undefined && 'options' in question && isWide(question.options.length);
  };

  return (
    <div
      class="sheet"
      data-sheet={here() ?? 'summary'}
      data-left={places().filter(isOpen).length}
      data-wide={needsWidth()}
      data-long={lines().length > LONG}
    >
      <Show when={needsWidth() || lines().length > LONG}>
        <button
          type="button"
          class="sheet-way all-questions"
          data-act="all-questions"
          onClick={() => goTo(null)}
        >
          {words.sheet.allQuestions}
        </button>
      </Show>
      <fieldset class="sheet-main form-part" disabled={!mayWrite() && here() !== null}>
        <Show when={here()} keyed fallback={<Summary>{props.children}</Summary>}>
          {(path) => (
            <Show
              when={place()}
              fallback={
                <Show when={together()}>
                  {(all) => (
                    <TogetherQuestion
                      together={all()}
                      takesFocus={untrack(hasMoved)}
                      beside={props.beside?.(places().filter((each) => all().names.includes(each.path)))}
                      onAll={() => sayTogether(all())}
                      onApart={() => goTo(all().names[0] ?? null)}
                    />
                  )}
                </Show>
              }
            >
              {(at) => (
                <SheetQuestion
                  place={at()}
                  of={ofRow(at())}
                  refusals={props.refusals}
                  units={props.units}
                  nowMs={props.nowMs}
                  picks={props.picks}
                  waiting={props.waiting}
                  takesFocus={untrack(hasMoved)}
                  corner={props.corner?.(path)}
                  beside={props.beside?.([at()])}
                  onChange={(value) => change(at(), value)}
                  onDone={() => goTo(findGoal(path))}
                  onGoTo={goTo}
                />
              )}
            </Show>
          )}
        </Show>
      </fieldset>
      <Ledger places={lines()} summary={props.summary} here={here()} units={props.units} onGoTo={goTo} />
    </div>
  );
}

/** A ledger of more lines than these gives way to the question on a small tablet, and is one tap away. */
const LONG = 8;

function Summary(props: { readonly children?: JSX.Element }) {
  return <div class="sheet-summary">{props.children}</div>;
}

/** The first question nobody has answered; where each has its usual answer and nobody has said anything, the first. */
function findBeginning(places: readonly Place[]): string | null {
  const open = findNext(places, null);
  if (open !== null) return open;
  return places.every(({ state }) => state === 'usual') ? (places[0]?.path ?? null) : null;
}

const writeInRow = (
  raw: RawForm,
  row: { readonly list: string; readonly index: number },
  name: string,
  value: Raw,
): readonly RawForm[] =>
  readRows(raw[row.list]).map((before, index) =>
    index === row.index ? { ...before, [name]: value } : before,
  );

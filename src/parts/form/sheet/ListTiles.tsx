import { createSignal, For, Show } from 'solid-js';
import type { ListQuestion } from '../../../../shared/records/form';
import type { RawForm } from '../../../../shared/records/readForm';
import { useWords } from '../../useWords';
import type { ControlProps } from './control';
import { findFirstOfRow, readRows } from './places';
import { sayRow } from './sayAnswer';
import { Tile, WayTile } from './Tile';
import { Tiles } from './Tiles';

/**
 * The same few questions for each of several things: the things themselves are the tiles, and a tap on one begins its
 * row. Rows stand above them in one line each; one taken out can be put back. Checked in tests/src/parts/sheet.test.tsx.
 */
export function ListTiles(props: ControlProps<ListQuestion> & { readonly onGoTo: (path: string) => void }) {
  const words = useWords();
  const rows = () => readRows(props.value);
  const first = () => findFirstOfRow(props.question);
  const firstQuestion = () => {
    const question = props.question.of[first()];
    return question?.kind === 'choice' ? question : null;
  };
  const [takenOut, setTakenOut] = createSignal<{ readonly row: RawForm; readonly index: number } | null>(
    null,
  );
  const say = (row: RawForm) =>
    sayRow(props.question.of, props.words.rows ?? {}, row, { words, units: props.units });
  /** The next question of the new row: its second, as the tile said the first. */
  const begin = (row: RawForm) => {
    const index = rows().length;
    setTakenOut(null);
    props.onChange([...rows(), row]);
    const names = Object.keys(props.question.of);
    props.onGoTo(`${props.path}.${index}.${(row[first()] === undefined ? first() : names[1]) ?? first()}`);
  };
  const takeOut = (index: number) => {
    const row = rows()[index];
    if (row === undefined) return;
    const left = rows().filter((_, place) => place !== index);
    props.onChange(left.length === 0 ? undefined : left);
    setTakenOut({ row, index });
  };
  const putBack = () => {
    const out = takenOut();
    if (out === null) return;
    props.onChange([...rows().slice(0, out.index), out.row, ...rows().slice(out.index)]);
    setTakenOut(null);
  };
  const isFull = () => rows().length >= props.question.max;
  const countTiles = () => (firstQuestion()?.options.length ?? 1) + 1;

  return (
    <>
      <Show when={rows().length > 0 || takenOut() !== null}>
        <ul class="sheet-rows">
          <For each={rows()}>
            {(row, index) => (
              <li class="sheet-row" data-row={index()}>
                <button
                  type="button"
                  class="sheet-row-said"
                  data-ledger={`${props.path}.${index()}.${first()}`}
                  onClick={() => props.onGoTo(`${props.path}.${index()}.${first()}`)}
                >
                  {say(row)}
                </button>
                <button
                  type="button"
                  class="sheet-way"
                  data-act="remove-row"
                  aria-label={words.sheet.takeOutNamed(say(row))}
                  onClick={() => takeOut(index())}
                >
                  {words.sheet.takeOut}
                </button>
              </li>
            )}
          </For>
          <Show when={takenOut()}>
            {(out) => (
              <li class="sheet-row taken-out" role="status">
                <span class="sheet-row-said">{words.sheet.takenOut(say(out().row))}</span>
                <button type="button" class="sheet-way" data-act="put-back-row" onClick={putBack}>
                  {words.sheet.putBack}
                </button>
              </li>
            )}
          </Show>
        </ul>
      </Show>
      <Tiles count={countTiles()}>
        <Show
          when={firstQuestion()}
          fallback={
            <WayTile
              act="add-row"
              label={props.words.addRow ?? ''}
              isDisabled={isFull()}
              onPress={() => begin({})}
            />
          }
        >
          {(question) => (
            <For each={isFull() ? [] : question().options}>
              {(option) => (
                <Tile
                  option={option}
                  label={props.words.rows?.[first()]?.options?.[option] ?? option}
                  isChosen={false}
                  onChoose={() => begin({ [first()]: option })}
                />
              )}
            </For>
          )}
        </Show>
        <Show
          when={rows().length === 0 && props.question.min === 0 && props.words.noRows}
          fallback={
            <WayTile
              act="that-is-all"
              label={words.sheet.thatIsAll}
              isPrimary
              isDisabled={rows().length === 0}
              onPress={() => props.onDone()}
            />
          }
        >
          {(noRows) => (
            <Tile
              option="none"
              label={noRows()}
              isChosen={Array.isArray(props.value)}
              onChoose={() => {
                setTakenOut(null);
                props.onChange([]);
                props.onDone();
              }}
            />
          )}
        </Show>
      </Tiles>
    </>
  );
}

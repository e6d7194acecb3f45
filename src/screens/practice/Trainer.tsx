import { createMemo, createSignal, For, Show } from 'solid-js';
import { findWallTime } from '../../../machines/practice/practiceClock';
import { type SittingTold, tellTrainees } from '../../../machines/practice/tellTrainees';
import { formatQuantity } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { createPages } from '../../parts/createPages';
import { PlainPage } from '../../parts/PlainPage';
import { useWords } from '../../parts/useWords';
import type { StationInUse } from '../../station/createStation';
import type { PracticeInUse } from '../../station/practice/createPractice';
import type { HandedFile } from '../../tablet/handOver';
import { saveText } from '../day/saveText';
import { HandOverWays } from '../handOver/HandOverWays';
import type { Who } from '../who';
import { CommonMisses } from './CommonMisses';
import type { LessonsInUse } from './createLessons';
import { OwnLessons } from './OwnLessons';
import { createInPieces } from './press/createInPieces';
import type { SittingKept } from './sittings';
import { TraineeTile } from './TraineeTile';
import { nameTraineeTable, writeTraineeTable } from './traineeTable';
import './trainer.css';

/** Who did which lesson when, and how it went; what is missed most; and both as a table for whoever trains. */
export function Trainer(props: {
  readonly station: Pick<StationInUse, 'state' | 'nowMs' | 'keepLesson' | 'removeLesson'>;
  readonly lessons: Pick<LessonsInUse, 'sittings' | 'tell' | 'all' | 'underWay'>;
  readonly who: Who;
  readonly school: ReturnType<PracticeInUse['school']>;
  readonly onDebrief: (id: string) => void;
  readonly onLessons: () => void;
}) {
  const words = useWords();
  const said = () => words.trainer;
  const state = () => props.station.state();
  const write = (count: number) =>
    formatQuantity(count, 'count', state().settings.settings.units, words.locale);
  const findWall = (atMs: number) => findWallTime(state().practice?.changes ?? [], atMs);
  const toTold = (sitting: SittingKept): SittingTold => {
    const { id, sat, lesson } = sitting;
    return {
      id,
      lessonId: sat.lessonId,
      title: lesson?.title ?? null,
      by: sat.by,
      beganAtMs: findWall(sat.beganAtMs),
      isExam: sat.isExam,
      ended: sat.ended?.how ?? null,
      told: props.lessons.tell(sitting),
    };
  };
  /** Each takes its time: fingers are answered in between. */
  const reckoned = createInPieces(
    () => props.lessons.sittings(),
    function* (sittings) {
      for (const sitting of sittings) yield toTold(sitting);
    },
  );
  const told = createMemo(() => {
    const all = reckoned()?.all;
    return all === undefined ? null : tellTrainees(all);
  });
  const rows = () => told()?.rows ?? [];
  const { shown, page, pages, turn } = createPages(rows);
  const [savedAs, setSavedAs] = createSignal<string | null>(null);
  const makeTable = (): HandedFile => {
    const taken = rows();
    const name = nameTraineeTable(findWall(props.station.nowMs()));
    return { name, type: 'text/csv', text: () => writeTraineeTable(taken) };
  };
  const save = async () => {
    setSavedAs(null);
    const file = makeTable();
    await saveText(file.name, file.text(), file.type);
    setSavedAs(file.name);
  };
  const [isOwn, setIsOwn] = createSignal(false);
  return (
    <Show when={!isOwn()} fallback={<OwnLessons {...props} onBack={() => setIsOwn(false)} />}>
      <PlainPage
        step="trainer"
        kicker={told() === null ? said().reckoning : said().sittings(write(rows().length))}
        title={said().title}
        actions={
          <>
            <Show when={pages() > 1}>
              <BigButton act="more-trainees" isWay onPress={turn}>
                {said().page(write(page()), write(pages()))}
              </BigButton>
            </Show>
            <BigButton act="own-lessons" isWay onPress={() => setIsOwn(true)}>
              {words.ownLessons.way}
            </BigButton>
            <BigButton act="save-trainees" isDisabled={rows().length === 0} onPress={save}>
              {said().save}
            </BigButton>
            <BigButton kind="primary" act="to-lessons" isWay onPress={() => props.onLessons()}>
              {words.practice.toLessons}
            </BigButton>
          </>
        }
      >
        <p class="lead">{said().lead}</p>
        <Show when={savedAs()}>
          {(name) => (
            <p role="status" data-line="saved">
              <strong>{said().saved(name())}</strong>
            </p>
          )}
        </Show>
        <Show
          when={told()}
          fallback={
            <p role="status" data-line="reckoning">
              {said().reckoning}
            </p>
          }
        >
          {(trainees) => (
            <Show when={rows().length > 0} fallback={<p data-line="nobody-yet">{said().nobodyYet}</p>}>
              <ul class="trainee-list">
                <For each={shown()}>
                  {(row) => <TraineeTile row={row} write={write} onDebrief={() => props.onDebrief(row.id)} />}
                </For>
              </ul>
              <CommonMisses told={trainees()} write={write} />
              <HandOverWays files={() => [makeTable()]} />
            </Show>
          )}
        </Show>
      </PlainPage>
    </Show>
  );
}

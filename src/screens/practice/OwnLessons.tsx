import { createSignal, For, Show } from 'solid-js';
import type { Lesson } from '../../../machines/practice/lesson';
import type { LessonRefusal } from '../../../machines/practice/lessonFile';
import { ASSUMED_LONGEST_LESSON_FILE } from '../../../machines/practice/longestLessonFile';
import { formatQuantity } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { PlainPage } from '../../parts/PlainPage';
import { useWords } from '../../parts/useWords';
import type { StationInUse } from '../../station/createStation';
import type { PracticeInUse } from '../../station/practice/createPractice';
import type { Words } from '../../words/words';
import { saveText } from '../day/saveText';
import type { Who } from '../who';
import type { LessonsInUse } from './createLessons';
import './trainer.css';

/** So many rows stand on one page. */
const PAGE = 4;
/** No character takes more bytes than four (published: RFC 3629). */
const MOST_BYTES = 4 * ASSUMED_LONGEST_LESSON_FILE;
/** So many faults are named at once: nobody mends more from a sentence. */
const FAULTS_NAMED = 3;

function sayRefused(refusal: LessonRefusal, { ownLessons }: Words): string {
  const { refused, faultAt, sayFailing } = ownLessons;
  switch (refusal.code) {
    case 'unmarked':
      return refused.unmarked(refusal.paths.join(', '));
    case 'faults':
      return refused.faults(
        refusal.faults
          .slice(0, FAULTS_NAMED)
          .map(({ path, code }) => faultAt(path, code))
          .join('; '),
      );
    case 'sameId':
      return refused.sameId(refusal.title);
    case 'cannotBePassed':
      return refused.cannotBePassed(refusal.failedBy.map(sayFailing).join(' '));
    default:
      return refused[refusal.code];
  }
}

/** Lessons of the salon's own: any lesson saved as a file to begin from, one brought in or refused by name, deleted, brought back. */
export function OwnLessons(props: {
  readonly station: Pick<StationInUse, 'state' | 'keepLesson' | 'removeLesson'>;
  readonly lessons: Pick<LessonsInUse, 'all' | 'underWay'>;
  readonly school: ReturnType<PracticeInUse['school']>;
  readonly who: Who;
  readonly onBack: () => void;
}) {
  const words = useWords();
  const said = () => words.ownLessons;
  const state = () => props.station.state();
  const settings = () => state().settings.settings;
  const write = (count: number) => formatQuantity(count, 'count', settings().units, words.locale);
  const own = () => state().practice?.own ?? [];
  const isOwn = ({ id }: Lesson) => own().some((each) => each.id === id);
  const rows = () => [...own(), ...(props.school?.lessons ?? [])];
  const isSatNow = ({ id }: Lesson) => props.lessons.underWay()?.sat.lessonId === id;
  const removed = () => state().practice?.removed[0];
  const [page, setPage] = createSignal(0);
  const pages = () => Math.max(1, Math.ceil(rows().length / PAGE));
  const here = () => Math.min(page(), pages() - 1);
  const [told, setTold] = createSignal('');
  const [wrong, setWrong] = createSignal('');
  let picker!: HTMLInputElement;
  const save = async (name: string, text: string) => {
    setWrong('');
    await saveText(name, text, 'application/json');
    setTold(said().saved(name));
  };
  const keep = (lesson: Lesson) =>
    props.who.asSomebody(async () => {
      const kept = await props.station.keepLesson(props.who.by(), lesson);
      setTold(kept.ok ? said().came(lesson.title) : '');
      setWrong(kept.ok ? '' : said().notKept);
    });
  const remove = ({ id }: Lesson) =>
    props.who.asSomebody(async () => {
      const gone = await props.station.removeLesson(props.who.by(), id);
      setTold('');
      setWrong(gone.ok ? '' : said().notKept);
    });
  const bring = async (file: File | undefined) => {
    const school = props.school;
    if (file === undefined || school === null) return;
    setTold('');
    setWrong('');
    if (file.size > MOST_BYTES) {
      picker.value = '';
      return void setWrong(said().refused.otherFile);
    }
    const text = await file.text().catch(() => null);
    picker.value = '';
    if (text === null) return void setWrong(said().notRead);
    const read = school.readFile(text, props.lessons.all() ?? [], settings());
    if (read.ok) keep(read.value);
    else setWrong(sayRefused(read.error, words));
  };
  return (
    <PlainPage
      step="ownLessons"
      kicker={said().kicker}
      title={said().title}
      actions={
        <>
          <BigButton act="back-to-trainer" isWay onPress={() => props.onBack()}>
            {words.general.back}
          </BigButton>
          <Show when={pages() > 1}>
            <BigButton act="more-lessons" isWay onPress={() => setPage((here() + 1) % pages())}>
              {said().page(write(here() + 1), write(pages()))}
            </BigButton>
          </Show>
          <BigButton
            act="save-key"
            isDisabled={props.school === null}
            onPress={() => void save('strandproof-lesson.schema.json', props.school?.writeSchema() ?? '')}
          >
            {said().key}
          </BigButton>
          <BigButton
            kind="primary"
            act="bring-lesson"
            isDisabled={props.school === null || state().mode !== 'writing'}
            onPress={() => picker.click()}
          >
            {said().bring}
          </BigButton>
        </>
      }
    >
      <p class="lead">{said().lead}</p>
      <input
        ref={picker}
        type="file"
        accept=".json,application/json"
        data-file="bring-lesson"
        hidden
        onChange={(event) => void bring(event.currentTarget.files?.[0])}
      />
      <p role="status" data-line="told">
        <strong>{told()}</strong>
      </p>
      <p role="alert" data-line="refused">
        <strong>{wrong()}</strong>
      </p>
      <Show when={removed()}>
        {(lesson) => (
          <BigButton act="undo-delete" onPress={() => keep(lesson())}>
            {said().undo(lesson().title)}
          </BigButton>
        )}
      </Show>
      <ul class="own-lessons">
        <For each={rows().slice(here() * PAGE, (here() + 1) * PAGE)}>
          {(lesson) => (
            <li data-lesson={lesson.id}>
              <span>
                <strong>{lesson.title}</strong> {isOwn(lesson) ? said().own : ''}
              </span>
              <Show when={isOwn(lesson) && !isSatNow(lesson)}>
                <BigButton act={`delete-${lesson.id}`} onPress={() => remove(lesson)}>
                  {said().remove}
                </BigButton>
              </Show>
              <BigButton
                act={`save-${lesson.id}`}
                onPress={() =>
                  void save(`strandproof-lesson-${lesson.id}.json`, props.school?.writeFile(lesson) ?? '')
                }
              >
                {said().save}
              </BigButton>
            </li>
          )}
        </For>
      </ul>
    </PlainPage>
  );
}

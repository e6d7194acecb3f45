import { createMemo, createSignal, For, Show } from 'solid-js';
import type { Lesson } from '../../../machines/practice/lesson';
import { findWallTime } from '../../../machines/practice/practiceClock';
import { formatQuantity } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { Caution } from '../../parts/Caution';
import { Dialog } from '../../parts/Dialog';
import { PlainPage } from '../../parts/PlainPage';
import { Refusal } from '../../parts/Refusal';
import { useMayWrite } from '../../parts/useMayWrite';
import { useWords } from '../../parts/useWords';
import type { StationInUse } from '../../station/createStation';
import type { SubmitRefusal } from '../../station/submitRefusal';
import { stepOf } from '../screenOf';
import type { Who } from '../who';
import type { LessonsInUse } from './createLessons';
import { type LastSitting, LessonTile } from './LessonTile';
import { useLessonSaying } from './sayingLesson';
import './lessons.css';

/** What is to be asked over the list. */
type Asked = { readonly what: 'begin'; readonly lesson: Lesson } | { readonly what: 'leaveOff' } | null;

/** The home of practice: every lesson with how it went last, and the one that is under way. */
export function Lessons(props: {
  readonly station: Pick<StationInUse, 'state'>;
  readonly who: Who;
  /** null while they are fetched. */
  readonly all: readonly Lesson[] | null;
  readonly lessons: LessonsInUse;
  readonly onOpen: (id: string) => void;
  readonly onDebrief: (id: string) => void;
  readonly onBar: () => void;
  /** What a press does; while no lesson is under way. */
  readonly onPressPage: () => void;
  /** Who did which lesson; while none is under way. */
  readonly onTrainer: () => void;
  readonly onBench: () => void;
}) {
  const words = useWords();
  const mayWrite = useMayWrite();
  const say = useLessonSaying();
  const said = () => words.practice;
  const [asked, setAsked] = createSignal<Asked>(null);
  const [refusal, setRefusal] = createSignal<SubmitRefusal | null>(null);
  const state = () => props.station.state();
  const changes = () => state().practice?.changes ?? [];
  const last = createMemo(() => {
    const found = new Map<string, LastSitting>();
    // Only the last of each lesson is told: a debrief takes its time.
    const newest = new Map(
      props.lessons.sittings().flatMap((each) => (each.sat.ended ? [[each.sat.lessonId, each]] : [])),
    );
    for (const sitting of newest.values()) {
      const { id, sat } = sitting;
      if (sat.ended === null) continue;
      const told = props.lessons.tell(sitting);
      const result =
        told?.isPassed === true ? 'passed' : sat.ended.how === 'leftOff' ? 'leftOff' : 'notPassed';
      found.set(sat.lessonId, { id, result, atMs: findWallTime(changes(), sat.ended.atMs), by: sat.by });
    }
    return found;
  });
  const write = (count: number) =>
    formatQuantity(count, 'count', state().settings.settings.units, words.locale);
  const sayPassed = () => {
    const all = props.all ?? [];
    const passed = all.filter(({ id }) => last().get(id)?.result === 'passed').length;
    return said().passedCount(write(passed), write(all.length));
  };
  const now = () => props.lessons.underWay();
  const sayNow = () => {
    const sitting = now();
    const consultation = sitting === null ? undefined : state().open.get(sitting.id);
    const step = consultation === undefined ? null : stepOf(consultation.state);
    if (sitting === null) return '';
    return said().nowAt(
      say(sitting.lesson?.title ?? sitting.sat.lessonId),
      step === null ? '' : words.rail.steps[step],
      sitting.sat.by,
    );
  };
  const toBegin = () => {
    const here = asked();
    return here?.what === 'begin' ? here.lesson : null;
  };
  const close = () => {
    setAsked(null);
    setRefusal(null);
  };
  const begin = (isExam: boolean) =>
    props.who.asSomebody(async () => {
      const lesson = toBegin();
      if (lesson === null) return;
      const begun = await props.lessons.begin(lesson, isExam);
      if (!begun.ok) return void setRefusal(begun.error);
      close();
      props.onOpen(begun.value);
    });
  const leaveOff = () =>
    props.who.asSomebody(async () => {
      const sitting = now();
      if (sitting === null) return;
      const left = await props.lessons.leaveOff(sitting.id);
      if (left.ok) close();
      else setRefusal(left.error);
    });
  return (
    <PlainPage
      step="lessons"
      kicker={sayPassed()}
      title={said().lessons}
      actions={
        <>
          <Show when={now() === null}>
            <BigButton act="press" onPress={() => props.onPressPage()}>
              {words.press.way}
            </BigButton>
            <BigButton act="bench" onPress={() => props.onBench()}>
              {words.bench.way}
            </BigButton>
            <BigButton act="trainer" onPress={() => props.onTrainer()}>
              {words.trainer.title}
            </BigButton>
          </Show>
          <BigButton act="bar" isWay onPress={() => props.onBar()}>
            {words.general.bar}
          </BigButton>
          <Show when={now()}>
            {(sitting) => (
              <>
                <BigButton act="leave-off" onPress={() => setAsked({ what: 'leaveOff' })}>
                  {said().leaveOff}
                </BigButton>
                <BigButton kind="primary" act="go-on-lesson" isWay onPress={() => props.onOpen(sitting().id)}>
                  {said().goOn}
                </BigButton>
              </>
            )}
          </Show>
        </>
      }
    >
      <Show when={now()}>
        {(sitting) => (
          <Caution kind={sitting().lesson === null ? 'attention' : 'plain'}>
            <div class="under-way" data-line="under-way">
              <p>
                <strong>{said().nowTitle}:</strong> {sayNow()}
              </p>
              <p>{sitting().lesson === null ? said().changed : said().oneAtATime}</p>
            </div>
          </Caution>
        )}
      </Show>
      <Show
        when={props.all}
        fallback={
          <p role="status" data-line="fetching">
            {said().fetching}
          </p>
        }
      >
        {(all) => (
          <Show when={all().length > 0} fallback={<p>{said().noLessons}</p>}>
            <ul class="lesson-list">
              <For each={all()}>
                {(lesson) => (
                  <LessonTile
                    lesson={lesson}
                    last={last().get(lesson.id) ?? null}
                    isDisabled={!mayWrite()}
                    onOpen={() => setAsked({ what: 'begin', lesson })}
                  />
                )}
              </For>
            </ul>
          </Show>
        )}
      </Show>
      <Dialog isOpen={toBegin() !== null} title={say(toBegin()?.title ?? '')} onClose={close}>
        <div class="begin-lesson" data-panel="begin-lesson">
          <p>{now() === null ? said().beginWhat : said().oneAtATime}</p>
          <Refusal refusal={refusal()} />
          <Show when={toBegin() !== null && last().get(toBegin()?.id ?? '')}>
            {(before) => (
              <BigButton
                act="last-debrief"
                isWay
                onPress={() => {
                  close();
                  props.onDebrief(before().id);
                }}
              >
                {said().lastDebrief}
              </BigButton>
            )}
          </Show>
          <div class="begin-ways">
            <div>
              <BigButton act="begin-exam" isDisabled={now() !== null} onPress={() => begin(true)}>
                {said().beginExam}
              </BigButton>
              <p>{said().examWhat}</p>
            </div>
            <div>
              <BigButton
                kind="primary"
                act="begin-hints"
                isDisabled={now() !== null}
                onPress={() => begin(false)}
              >
                {said().beginHints}
              </BigButton>
              <p>{said().hintsWhat}</p>
            </div>
          </div>
        </div>
      </Dialog>
      <Dialog isOpen={asked()?.what === 'leaveOff'} title={said().leaveOffTitle} onClose={close}>
        <p>{said().leaveOffWhat}</p>
        <Show when={refusal()}>
          <p role="alert" data-line="rinse-first">
            {said().rinseFirst}
          </p>
        </Show>
        <div class="dialog-actions">
          <BigButton act="stay-in-lesson" isWay onPress={close}>
            {said().goOn}
          </BigButton>
          <BigButton kind="primary" act="leave-off-now" onPress={leaveOff}>
            {said().leaveOff}
          </BigButton>
        </div>
      </Dialog>
    </PlainPage>
  );
}

import { Show } from 'solid-js';
import { hear } from '../../../machines/practice/asking';
import type { AskStep } from '../../../shared/records/steps';
import type { UnitSettings } from '../../../shared/units/quantity';
import type { Place } from '../../parts/form/sheet/places';
import { useMayWrite } from '../../parts/useMayWrite';
import { useWords } from '../../parts/useWords';
import { type LessonInUse, useLesson } from './lessonInUse';
import './heard.css';
import { sayHeard } from './sayHeard';
import { useLessonSaying } from './sayingLesson';

interface Asked {
  readonly step: AskStep;
  /** The question, or those that are asked together. */
  readonly places: readonly Place[];
  readonly units: UnitSettings;
}

/** In a lesson: what she says to this question, or what fingers find, and that she can be asked closer. */
export function HeardLine(props: Asked) {
  const lesson = useLesson();
  return <Show when={lesson()}>{(here) => <Heard {...props} here={here()} />}</Show>;
}

function Heard(props: Asked & { readonly here: LessonInUse }) {
  const words = useWords();
  const mayWrite = useMayWrite();
  const say = useLessonSaying();
  const said = () => words.practice;
  const isFelt = () => props.step === 'feelHair';
  const pathOf = (place: Place) => `${props.step}.${place.path}`;
  const isAskedCloser = (place: Place) => props.here.sat.askedCloser.includes(pathOf(place));
  const heard = () => {
    const saying = { words, units: props.units };
    const all = props.places.map((place) => {
      const path = pathOf(place);
      const told = hear(props.here.lesson, path, isAskedCloser(place));
      const inWords = { ...told, words: told.words === null ? null : say(told.words) };
      return sayHeard(path, inWords, place, saying);
    });
    return [...new Set(all)].filter((each) => each !== '').join(' · ');
  };
  const single = () => (props.places.length === 1 ? props.places[0] : undefined);
  return (
    <div class="heard" data-heard={props.places.map(pathOf).join(' ')}>
      <p aria-live="polite">
        <strong>{isFelt() ? said().fingersFind : said().sheSays}:</strong> {heard() || said().saysNothing}
      </p>
      <Show when={single()}>
        {(place) => (
          <Show
            when={!isAskedCloser(place())}
            fallback={<span class="heard-closer">{said().askedCloser}</span>}
          >
            <button
              type="button"
              class="heard-ask"
              data-act="ask-closer"
              disabled={!mayWrite()}
              onClick={() => props.here.askCloser(pathOf(place()))}
            >
              {isFelt() ? said().feelAgain : said().askCloser}
            </button>
          </Show>
        )}
      </Show>
    </div>
  );
}

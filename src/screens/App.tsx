import { createEffect, Show } from 'solid-js';
import { WordsProvider } from '../parts/useWords';
import type { StationInUse } from '../station/createStation';
import type { DemoInUse } from '../station/demo/createDemo';
import type { PracticeInUse } from '../station/practice/createPractice';
import type { TabletInUse } from '../tablet/createTablet';
import { findWords } from '../words/words';
import { LessonSayingProvider } from './practice/sayingLesson';
import { Screens } from './Screens';

/** The station on this tablet, in the language of its settings. */
export function App(props: {
  readonly station: StationInUse;
  readonly tablet?: TabletInUse | undefined;
  readonly demo?: DemoInUse | undefined;
  readonly practice?: PracticeInUse | undefined;
}) {
  const locale = () => props.station.state().settings.settings.locale;
  createEffect(() => {
    document.documentElement.lang = locale();
  });
  return (
    <Show when={locale()} keyed>
      {(spoken) => (
        <WordsProvider value={findWords(spoken)}>
          <LessonSayingProvider
            value={(sentence) => props.practice?.school()?.say(sentence, spoken) ?? sentence}
          >
            <Screens
              station={props.station}
              tablet={props.tablet}
              demo={props.demo}
              practice={props.practice}
            />
          </LessonSayingProvider>
        </WordsProvider>
      )}
    </Show>
  );
}

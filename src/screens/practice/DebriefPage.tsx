import { createMemo, For, Show } from 'solid-js';
import type { Debrief } from '../../../machines/practice/debrief';
import { findWallTime } from '../../../machines/practice/practiceClock';
import type { Settings } from '../../../shared/records/settings';
import { formatQuantity } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { PlainPage } from '../../parts/PlainPage';
import { useWords } from '../../parts/useWords';
import type { StationInUse } from '../../station/createStation';
import { DebriefAsked } from './DebriefAsked';
import { DebriefDecision } from './DebriefDecision';
import { DebriefFlags } from './DebriefFlags';
import { DebriefMaps } from './DebriefMaps';
import { DebriefTimes } from './DebriefTimes';
import './debrief.css';
import { useLessonSaying } from './sayingLesson';
import type { SittingKept } from './sittings';

/** What a part of the debrief reads. */
export interface DebriefPart {
  readonly told: Debrief;
  readonly settings: Settings;
}

/** How a lesson went, from its own logs: what was asked, seen and decided beside what was true, and the points of each part. */
export function DebriefPage(props: {
  readonly sitting: SittingKept;
  readonly station: Pick<StationInUse, 'state'>;
  readonly tell: (sitting: SittingKept) => Debrief | null;
  /** Begins the same lesson anew; absent where another is under way. */
  readonly onAgain: (() => void) | undefined;
  readonly onLessons: () => void;
}) {
  const words = useWords();
  const said = () => words.practice;
  const say = useLessonSaying();
  const state = () => props.station.state();
  const settings = () => state().settings.settings;
  const told = createMemo(() => props.tell(props.sitting));
  const kicker = () => {
    const { sat } = props.sitting;
    const atMs = findWallTime(state().practice?.changes ?? [], sat.beganAtMs);
    return [
      say(props.sitting.lesson?.title ?? sat.lessonId),
      sat.isExam ? said().exam : said().hints,
      words.moments.dayAndTime(atMs),
      sat.by,
    ].join(' · ');
  };
  return (
    <PlainPage
      step="debrief"
      kicker={kicker()}
      title={said().debrief}
      actions={
        <>
          <p class="soft">{said().notALicence}</p>
          <Show when={props.onAgain}>
            {(again) => (
              <BigButton act="again" onPress={() => again()()}>
                {said().again}
              </BigButton>
            )}
          </Show>
          <BigButton kind="primary" act="to-lessons" isWay onPress={() => props.onLessons()}>
            {said().toLessons}
          </BigButton>
        </>
      }
    >
      <Show when={told()} fallback={<p role="status">{said().noDebrief}</p>}>
        {(debrief) => (
          <div class="debrief">
            <Score told={debrief()} settings={settings()} />
            <DebriefDecision told={debrief()} settings={settings()} />
            <DebriefFlags told={debrief()} settings={settings()} />
            <DebriefAsked told={debrief()} settings={settings()} />
            <DebriefMaps told={debrief()} settings={settings()} />
            <DebriefTimes told={debrief()} settings={settings()} />
          </div>
        )}
      </Show>
    </PlainPage>
  );
}

/** Passed or not, and what each part gave. */
function Score(props: DebriefPart) {
  const words = useWords();
  const said = () => words.practice;
  const write = (count: number) => formatQuantity(count, 'count', props.settings.units, words.locale);
  return (
    <section class="panel" data-panel="score">
      <p class="debrief-result" data-passed={props.told.isPassed}>
        <svg viewBox="0 0 24 24" aria-hidden="true">
          <path d={props.told.isPassed ? tick : cross} />
        </svg>
        <strong>{props.told.isPassed ? said().passed : said().notPassed}</strong>{' '}
        <span>{said().score(write(props.told.score))}</span>
      </p>
      <Show when={!props.told.isPassed}>
        <ul class="debrief-why">
          <For each={props.told.failedBy}>
            {(failing) => <li data-failed-by={failing}>{said().failedBy[failing]}</li>}
          </For>
        </ul>
      </Show>
      <dl>
        <For each={props.told.parts}>
          {({ name, points, of }) => (
            <div data-part={name}>
              <dt>{said().scoreParts[name]}</dt>
              <dd>{said().pointsOf(write(points), write(of))}</dd>
            </div>
          )}
        </For>
      </dl>
    </section>
  );
}

const tick = 'M2 13 L6 9 L10 13 L19 3 L23 7 L10 21 Z';
const cross = 'M4 2 L12 10 L20 2 L22 4 L14 12 L22 20 L20 22 L12 14 L4 22 L2 20 L10 12 L2 4 Z';

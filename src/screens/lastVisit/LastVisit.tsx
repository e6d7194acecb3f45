import { createMemo, For, Show } from 'solid-js';
import type { ClosedRecord } from '../../../shared/records/closedRecord';
import type { Settings } from '../../../shared/records/settings';
import { Caution } from '../../parts/Caution';
import { Facts } from '../../parts/Facts';
import { StrandMap } from '../../parts/strandMap/StrandMap';
import { useWords } from '../../parts/useWords';
import { sayStrandMap } from '../map/sayStrandMap';
import { viewHair } from '../map/viewHair';
import './lastVisit.css';
import { sayBowlThen, sayFactsThen, sayOutcomeThen, sayStopsThen } from './sayLastVisit';
import { type LastVisit as Visit, viewLastVisit } from './viewLastVisit';

/** Last time at a glance: her strand then, each zone's outcome and formula, what was decided, and a stop that stands. */
export function LastVisit(props: { readonly closed: ClosedRecord; readonly settings: Settings }) {
  const words = useWords();
  const visit = createMemo(() => viewLastVisit(props.closed, props.settings));
  return (
    <Show when={visit()} fallback={<p class="big-word">{words.lastVisit.unread}</p>}>
      {(then) => <Told visit={then()} settings={props.settings} />}
    </Show>
  );
}

function Told(props: { readonly visit: Visit; readonly settings: Settings }) {
  const words = useWords();
  const answers = () => props.visit.record.answers;
  const view = createMemo(() => viewHair(answers(), props.settings));
  const map = createMemo(() => ({
    ...sayStrandMap(view(), answers(), words, props.settings.units, 'whereToSnip'),
    snips: [],
  }));
  const stops = () => sayStopsThen(props.visit, words);
  return (
    <div class="last-visit">
      <Show when={props.visit.hasStandingStop}>
        <div class="last-visit-stop" data-line="standing-stop">
          <Caution kind="stop">
            <p>
              <strong>{stops().join(' ')}</strong> {words.lastVisit.stopStands}
            </p>
          </Caution>
        </div>
      </Show>
      <div class="last-visit-her">
        <figure class="last-visit-map">
          <figcaption class="soft">{words.lastVisit.map}</figcaption>
          <StrandMap view={map()} />
        </figure>
        <Facts class="last-visit-facts" facts={sayFactsThen(props.visit, props.settings, words)} />
      </div>
      <div class="last-visit-zones">
        <For each={props.visit.zones} fallback={<p>{words.lastVisit.nothingTested}</p>}>
          {(then) => (
            <section data-zone={then.zone}>
              <h2>
                {words.lastVisit.zone(
                  words.general.zones[then.zone],
                  sayOutcomeThen(then, props.settings, words),
                )}
              </h2>
              <For each={then.bowls} fallback={<p>{words.lastVisit.nothingOn}</p>}>
                {(bowl) => (
                  <p data-bowl={bowl.bowl.kind}>
                    <For each={sayBowlThen(bowl, props.settings, words)}>{(line) => <span>{line}</span>}</For>
                  </p>
                )}
              </For>
            </section>
          )}
        </For>
        <p class="soft">
          {words.lastVisit.onlyLooked} {words.lastVisit.asksAnew}
        </p>
      </div>
    </div>
  );
}

import { For, Show } from 'solid-js';
import { formatQuantity } from '../../../shared/units/format';
import { msPerMinute } from '../../../shared/units/time';
import { useWords } from '../../parts/useWords';
import type { DebriefPart } from './DebriefPage';

/** How long each step took, and the looks that nobody made. */
export function DebriefTimes(props: DebriefPart) {
  const words = useWords();
  const said = () => words.practice;
  const write = (minutes: number) =>
    formatQuantity(Math.round(minutes), 'minutes', props.settings.units, words.locale);
  return (
    <>
      <section class="panel" data-panel="minutes">
        <h2>{said().minutesTitle}</h2>
        <dl>
          <For each={props.told.minutes}>
            {({ step, minutes }) => (
              <div data-step-minutes={step}>
                <dt>{words.rail.steps[step]}</dt>
                <dd>{write(minutes)}</dd>
              </div>
            )}
          </For>
        </dl>
      </section>
      <section class="panel" data-panel="missed-looks">
        <h2>{said().looksTitle}</h2>
        <For each={props.told.overruns}>
          {({ kind, zone, overMs }) => (
            <p data-left-on={kind}>
              {said().leftOn(
                said().lookOf[kind === 'head' ? 'head' : 'strand'],
                zone === null ? '' : words.general.zones[zone],
                write(overMs / msPerMinute),
              )}
            </p>
          )}
        </For>
        <Show when={props.told.missedLooks.length > 0} fallback={<p>{said().noLooksMissed}</p>}>
          <ul>
            <For each={props.told.missedLooks}>
              {({ of, zone, atMs }) => (
                <li>
                  {said().lookMissed(said().lookOf[of], words.general.zones[zone], words.moments.time(atMs))}
                </li>
              )}
            </For>
          </ul>
        </Show>
      </section>
    </>
  );
}

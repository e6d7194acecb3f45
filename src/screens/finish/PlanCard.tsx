import { For, Show } from 'solid-js';
import type { PlanAnswers } from '../../../shared/records/forms/bowl';
import type { BowlRecord, ConsultationRecord } from '../../../shared/records/record';
import type { Settings } from '../../../shared/records/settings';
import { brand } from '../../../shared/units/brand';
import { formatPercent, formatQuantity, formatTemperature } from '../../../shared/units/format';
import { msPerMinute } from '../../../shared/units/time';
import { useWords } from '../../parts/useWords';
import './finish.css';

/** So hot is an iron still said to be minutes after use, °C. published: J. Burn Care Res. 29:650–654, 2008. */
const STILL_HOT_C = 80;

/** Her heat plan as one card: what she does at home, to read aloud, to photograph and, later, to print. */
export function PlanCard(props: {
  readonly record: Pick<ConsultationRecord, 'ticket' | 'bowls' | 'clocks'>;
  readonly settings: Settings;
  /** null while a question of it is open. */
  readonly plan: PlanAnswers | null;
  readonly atMs: number;
}) {
  const words = useWords();
  const said = () => words.finish;
  const { units } = props.settings;
  const hot = (celsius: number) => formatTemperature(brand(celsius), units, words.locale);
  const write = (value: number, quantity: 'count' | 'minutes') =>
    formatQuantity(value, quantity, units, words.locale);
  /** Whole minutes it was really on, whatever it was weighed for. */
  const countMinutesOn = ({ clock, minutes }: BowlRecord): number => {
    const { startedAtMs, endedAtMs = null } = props.record.clocks.find(({ id }) => id === clock) ?? {};
    return startedAtMs === undefined || endedAtMs === null
      ? minutes
      : Math.floor((endedAtMs - startedAtMs) / msPerMinute);
  };
  const used = () => props.record.bowls.filter(({ state }) => state === 'rinsed');
  return (
    <Show when={props.plan} fallback={<p class="lead">{said().openYet}</p>}>
      {(plan) => (
        <article class="plan-card">
          <header>
            <h2>{said().cardTitle(props.record.ticket)}</h2>
            <p>{words.moments.dayAndTime(props.atMs)}</p>
          </header>
          <dl class="plan-figures">
            <div>
              <dt>{said().noHotter}</dt>
              <dd>{hot(plan().settingC)}</dd>
            </div>
            <div>
              <dt>{said().passes}</dt>
              <dd>{write(plan().passes, 'count')}</dd>
            </div>
            <div>
              <dt>{said().rest}</dt>
              <dd>{said().hours(write(plan().restH, 'count'))}</dd>
            </div>
            <div data-line="back">
              <dt>{said().back}</dt>
              <dd>{said().plan.back.options[plan().back]}</dd>
            </div>
          </dl>
          <ul class="plan-rules">
            <For each={[...said().rules, said().ironsStayHot(hot(STILL_HOT_C))]}>
              {(rule) => <li>{rule}</li>}
            </For>
          </ul>
          <Show when={used().length > 0}>
            <p class="plan-done">
              {said().done}{' '}
              <For each={used()}>
                {(bowl) => (
                  <span>
                    {said().bowl(
                      words.general.zones[bowl.zone],
                      bowl.line,
                      formatPercent(bowl.developerPercent, units, words.locale),
                      write(countMinutesOn(bowl), 'minutes'),
                    )}{' '}
                  </span>
                )}
              </For>
            </p>
          </Show>
        </article>
      )}
    </Show>
  );
}

import { createMemo, For, Show } from 'solid-js';
import { type HairToTell, listHairToTell } from '../../../shared/judgement/hairToTell';
import { needsProtectant } from '../../../shared/judgement/homeSetting';
import type { PlanAnswers } from '../../../shared/records/forms/bowl';
import type { BowlRecord, ConsultationRecord } from '../../../shared/records/record';
import type { Settings } from '../../../shared/records/settings';
import { brand } from '../../../shared/units/brand';
import { formatQuantity, formatTemperature } from '../../../shared/units/format';
import { msPerMinute } from '../../../shared/units/time';
import { useWords } from '../../parts/useWords';
import { sayBottlesOf } from '../bottleAndBowl';

/** So hot is an iron still said to be minutes after use, °C. published: J. Burn Care Res. 29:650–654, 2008. */
const STILL_HOT_C = 80;

/** What is told of her plan, on the glass and on paper. */
export interface PlanProps {
  readonly record: Pick<
    ConsultationRecord,
    'ticket' | 'answers' | 'strands' | 'decision' | 'bowls' | 'stretches' | 'clocks'
  >;
  readonly settings: Settings;
  readonly plan: PlanAnswers;
}

/** How hot, how often, how long nothing, and when she is back: the four figures of her plan. */
export function PlanFigures(props: Pick<PlanProps, 'settings' | 'plan'>) {
  const words = useWords();
  const said = () => words.finish;
  const write = (value: number) => formatQuantity(value, 'count', props.settings.units, words.locale);
  const hot = () => formatTemperature(brand(props.plan.settingC), props.settings.units, words.locale);
  return (
    <dl class="plan-figures">
      <div>
        <dt>{said().noHotter}</dt>
        <dd>{hot()}</dd>
      </div>
      <div>
        <dt>{said().passes}</dt>
        <dd>{write(props.plan.passes)}</dd>
      </div>
      <div>
        <dt>{said().rest}</dt>
        <dd>{said().hours(write(props.plan.restH))}</dd>
      </div>
      <div data-line="back">
        <dt>{said().back}</dt>
        <dd>{said().plan.back.options[props.plan.back]}</dd>
      </div>
    </dl>
  );
}

/** What she does and what she leaves, and whom she calls. */
export function PlanRules(props: Pick<PlanProps, 'settings' | 'plan'>) {
  const words = useWords();
  const said = () => words.finish;
  const hot = (celsius: number) => formatTemperature(brand(celsius), props.settings.units, words.locale);
  const passes = () =>
    props.plan.passes === 1
      ? null
      : formatQuantity(props.plan.passes, 'count', props.settings.units, words.locale);
  return (
    <ul class="plan-rules">
      <For
        each={[
          ...said().rules(passes(), needsProtectant(props.plan.settingC)),
          said().ironsStayHot(hot(STILL_HOT_C)),
          props.settings.contact === ''
            ? said().lateItchingAlone
            : said().lateItching(props.settings.contact),
        ]}
      >
        {(rule) => <li>{rule}</li>}
      </For>
    </ul>
  );
}

/** What was on today, for how long it really was, and what broke, gummed or had nothing on. */
export function PlanDone(props: Pick<PlanProps, 'record' | 'settings'>) {
  const words = useWords();
  const { units } = props.settings;
  /** Whole minutes it was really on, whatever it was weighed for. */
  const countMinutesOn = ({ clock, minutes }: BowlRecord): number => {
    const { startedAtMs, endedAtMs = null } = props.record.clocks.find(({ id }) => id === clock) ?? {};
    return startedAtMs === undefined || endedAtMs === null
      ? minutes
      : Math.floor((endedAtMs - startedAtMs) / msPerMinute);
  };
  const used = () => props.record.bowls.filter(({ state }) => state === 'rinsed');
  const hair = createMemo(() => listHairToTell(props.record));
  const sayHair = (told: HairToTell) => {
    const { isLeftOut, strand, hasBrokenOnHead, hasSnapped, isToCut } = told;
    const { hair: says } = words.finish;
    const parts = [
      isLeftOut && 'leftOut',
      strand,
      hasBrokenOnHead && 'brokeOnHead',
      hasSnapped && 'snapped',
      isToCut && 'toCut',
    ] as const;
    const chosen = parts.filter((part) => part !== false && part !== null);
    return says.line(
      words.general.zones[told.zone],
      chosen.map((part) => says.parts[part]),
    );
  };
  return (
    <Show when={used().length + hair().length > 0}>
      <p class="plan-done">
        {words.finish.done}{' '}
        <For each={used()}>
          {(bowl) => (
            <span>
              {words.finish.bowl(
                words.general.zones[bowl.zone],
                bowl.line,
                sayBottlesOf(bowl, words, units),
                formatQuantity(countMinutesOn(bowl), 'minutes', units, words.locale),
              )}{' '}
            </span>
          )}
        </For>
        <For each={hair()}>{(told) => <span data-hair={told.zone}>{sayHair(told)} </span>}</For>
      </p>
    </Show>
  );
}

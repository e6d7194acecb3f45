import { Match, Show, Switch } from 'solid-js';
import type { MixPermit } from '../../../shared/judgement/permit';
import type { Answers } from '../../../shared/records/forms/asked';
import type { BowlRecord, ConsultationRecord } from '../../../shared/records/record';
import type { Settings } from '../../../shared/records/settings';
import { findUseByMs } from '../../../shared/records/useWithin';
import type { Zone } from '../../../shared/records/zones';
import { brand } from '../../../shared/units/brand';
import { formatMass, formatPercent, formatQuantity } from '../../../shared/units/format';
import { Refusal } from '../../parts/Refusal';
import { useWords } from '../../parts/useWords';
import { sayBottlesOf, sayVolumes } from '../bottleAndBowl';
import { findStuff } from '../findStuff';
import { isFeltWeak, TonerWay } from '../toner/Toner';
import { SayFirst } from './SayFirst';
import { isFree, sayBowlState, type ZoneAtScale } from './viewMix';

/** One zone at the scale: how its bowl stands, and within which limits the next one may be mixed, or why not. */
export function ZoneCard(props: {
  readonly atScale: ZoneAtScale;
  readonly record: ConsultationRecord;
  /** Its bowl is the one that goes on next: it is said aloud first. */
  readonly isNext: boolean;
  readonly settings: Settings;
  readonly onToner: (zone: Zone) => void;
}) {
  const words = useWords();
  const bowl = () => {
    const { bowlState } = props.atScale;
    return bowlState === 'weighed' || bowlState === 'on' ? props.atScale.bowl : null;
  };
  const permit = () => (props.atScale.permit.ok ? props.atScale.permit.value : null);
  const isWeak = () => isFeltWeak(props.atScale);
  const refusal = () => (props.atScale.permit.ok ? null : props.atScale.permit.error);
  return (
    <section class="panel" data-zone={props.atScale.zone} data-bowl={props.atScale.bowlState}>
      <h2>
        {words.general.zones[props.atScale.zone]}
        {': '}
        {sayBowlState(props.atScale, words)}
      </h2>
      <Switch>
        <Match when={bowl()}>
          {(made) => (
            <Show
              when={props.isNext}
              fallback={<BowlSaid bowl={made()} answers={props.record.answers} settings={props.settings} />}
            >
              <SayFirst record={props.record} bowl={made()} settings={props.settings} />
            </Show>
          )}
        </Match>
        <Match when={permit()}>{(given) => <Limits permit={given()} settings={props.settings} />}</Match>
        <Match when={props.atScale.bowlState === 'rinsed' && refusal()}>
          {(why) => (
            <>
              <p class="soft">
                {isWeak()
                  ? words.refusals.permit.stretchFails.what
                  : words.refusals.permit[why().code].clears}
              </p>
              <TonerWay atScale={props.atScale} onToner={props.onToner} />
            </>
          )}
        </Match>
        <Match when={isFree(props.atScale.bowlState) && refusal()}>
          {(why) => <Refusal refusal={{ kind: 'permit', permit: why() }} />}
        </Match>
      </Switch>
    </section>
  );
}

/** What was weighed, as it was weighed. */
function BowlSaid(props: {
  readonly bowl: BowlRecord;
  readonly answers: Answers;
  readonly settings: Settings;
}) {
  const words = useWords();
  const write = (value: number, quantity: 'count' | 'minutes') =>
    formatQuantity(value, quantity, props.settings.units, words.locale);
  return (
    <ul class="listed">
      <li>
        <strong>{props.bowl.line}</strong>
        <Show when={props.bowl.batch !== ''}> {words.mix.batch(props.bowl.batch)}</Show>
      </li>
      <li>
        {words.mix.weighedColour(
          formatMass(brand(props.bowl.colourG), props.settings.units, words.locale),
          findStuff(props.settings, props.answers, props.bowl.line),
        )}
        {', '}
        {words.mix.limitRatio(write(props.bowl.ratio, 'count'))}
      </li>
      <li>
        {sayBottlesOf(props.bowl, words, props.settings.units)}
        {', '}
        {write(props.bowl.minutes, 'minutes')}
      </li>
      <li class="soft">{words.mix.weighedBy(props.bowl.by, words.moments.time(props.bowl.atMs))}</li>
      <Show when={props.bowl.state === 'weighed'}>
        <li>
          <strong>{words.mix.useBy(words.moments.time(findUseByMs(props.bowl, props.settings)))}</strong>
        </li>
      </Show>
    </ul>
  );
}

/** What the strand and the decision allow, each of them a limit of the permit. */
export function Limits(props: { readonly permit: MixPermit; readonly settings: Settings }) {
  const words = useWords();
  const write = (value: number, quantity: 'count' | 'minutes') =>
    formatQuantity(value, quantity, props.settings.units, words.locale);
  const tested = () => props.permit.tested;
  const parts = () => [
    words.mix.limitLine(tested().line),
    words.mix.limitDeveloper(
      formatPercent(props.permit.maxDeveloperPercent, props.settings.units, words.locale),
      sayVolumes(props.permit.maxDeveloperPercent, words, props.settings.units),
    ),
    words.mix.limitRatio(write(tested().ratio, 'count')),
    words.mix.limitMinutes(write(props.permit.maxMinutes, 'minutes')),
    words.mix.limitHeat[props.permit.maxHeat],
    ...(props.permit.isLowered ? [words.mix.onScalp] : []),
    words.mix.byStrand(write(props.permit.strand, 'count')),
  ];
  return (
    <p class="limits" data-panel="limits">
      <strong>{words.mix.limits}</strong> {parts().join(' · ')}
    </p>
  );
}

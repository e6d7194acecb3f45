import { createSignal, For, Show } from 'solid-js';
import {
  ASSUMED_COOL_MIN,
  type BenchKind,
  BOIL_SET_DRIES_FROM_H,
  BOIL_SET_DRIES_TO_H,
  BOIL_SET_MIN,
  benchKinds,
} from '../../../../shared/hair/benchTrial';
import { type BenchHair, benchStartedForm } from '../../../../shared/records/forms/bench';
import type { RawForm } from '../../../../shared/records/readForm';
import type { Result } from '../../../../shared/result';
import { formatQuantity } from '../../../../shared/units/format';
import type { UnitSettings } from '../../../../shared/units/quantity';
import { BigButton } from '../../../parts/BigButton';
import { PlainPage } from '../../../parts/PlainPage';
import { Refusal } from '../../../parts/Refusal';
import { useWords } from '../../../parts/useWords';
import type { SubmitRefusal } from '../../../station/submitRefusal';
import '../../layout.css';
import { Tile, Tiles } from '../../Tiles';
import './bench.css';

/** Which trial, on which cut hair; what it needs stands beside it before anything starts. */
export function StartTrial(props: {
  readonly units: UnitSettings;
  readonly start: (answers: RawForm) => Promise<Result<string, SubmitRefusal>>;
  readonly onStarted: (id: string) => void;
  readonly onBack: () => void;
}) {
  const words = useWords();
  const said = () => words.bench;
  const [kind, setKind] = createSignal<BenchKind | null>(null);
  const [hair, setHair] = createSignal<BenchHair | null>(null);
  const [refusal, setRefusal] = createSignal<SubmitRefusal | null>(null);
  const minutes = (count: number) => formatQuantity(count, 'minutes', props.units, words.locale);
  const hours = (count: number) => said().hours(formatQuantity(count, 'count', props.units, words.locale));
  const rules = (of: BenchKind) =>
    of === 'boilSet'
      ? said().rules.boilSet(minutes(BOIL_SET_MIN), hours(BOIL_SET_DRIES_FROM_H), hours(BOIL_SET_DRIES_TO_H))
      : said().rules.dryWet(minutes(ASSUMED_COOL_MIN));
  const start = async () => {
    const started = await props.start({ kind: kind(), hair: hair() });
    if (started.ok) props.onStarted(started.value);
    else setRefusal(started.error);
  };
  return (
    <PlainPage
      step="bench"
      kicker={said().kicker}
      title={said().startTitle}
      actions={
        <>
          <BigButton act="back-to-list" isWay onPress={props.onBack}>
            {words.general.back}
          </BigButton>
          <BigButton
            kind="primary"
            act="begin-trial"
            isDisabled={kind() === null || hair() === null}
            onPress={() => void start()}
          >
            {said().start}
          </BigButton>
        </>
      }
    >
      <div class="columns">
        <div class="column">
          <Tiles question="kind" label={said().asksKind} size="two">
            <For each={benchKinds}>
              {(each) => (
                <Tile option={each} isPressed={kind() === each} onPress={() => setKind(each)}>
                  {said().kinds[each]}
                </Tile>
              )}
            </For>
          </Tiles>
          <p class="bench-ask" aria-hidden="true">
            {said().asksHair}
          </p>
          <Tiles question="hair" label={said().asksHair} size="two">
            <For each={benchStartedForm.hair.options}>
              {(each) => (
                <Tile option={each} isPressed={hair() === each} onPress={() => setHair(each)}>
                  {said().hair[each]}
                </Tile>
              )}
            </For>
          </Tiles>
        </div>
        <section class="panel bench-rules">
          <Show when={kind()} fallback={<p>{said().chooseFirst}</p>}>
            {(of) => (
              <>
                <h2>{said().rulesTitle}</h2>
                <ul>
                  <For each={rules(of())}>{(rule) => <li>{rule}</li>}</For>
                </ul>
                <p class="soft">{said().marks[of()]}</p>
              </>
            )}
          </Show>
        </section>
      </div>
      <Refusal refusal={refusal()} />
    </PlainPage>
  );
}

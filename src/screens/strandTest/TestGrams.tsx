import { Match, Switch } from 'solid-js';
import type { Mixture } from '../../../shared/judgement/mixture';
import type { Settings } from '../../../shared/records/settings';
import type { Result } from '../../../shared/result';
import { brand } from '../../../shared/units/brand';
import { formatMass } from '../../../shared/units/format';
import { Refusal } from '../../parts/Refusal';
import { useWords } from '../../parts/useWords';
import { sayBottleAndBowl } from '../bottleAndBowl';
import type { TestMixRefusal } from './strandDraft';

/** The few grams for the strand, live from the fields; or why there are none. */
export function TestGrams(props: {
  readonly grams: Result<Mixture, TestMixRefusal>;
  readonly settings: Settings;
}) {
  const words = useWords();
  const said = () => words.strandTest.start;
  const made = () => (props.grams.ok ? props.grams.value : null);
  const refused = () => (props.grams.ok || props.grams.error.kind === 'open' ? null : props.grams.error);
  const write = (grams: number) => formatMass(brand(grams), props.settings.units, words.locale);
  return (
    <section class="grams-beside" data-panel="test-grams" aria-live="polite">
      <Switch fallback={<p class="soft">{said().gramsOpen}</p>}>
        <Match when={made()}>
          {(mixture) => (
            <>
              <p class="grams-said" data-figure="grams">
                {said().weigh(write(mixture().shades[0]?.amountG ?? 0), write(mixture().developerG))}
              </p>
              <p data-figure="strength">{sayBottleAndBowl(mixture(), words, props.settings.units)}</p>
            </>
          )}
        </Match>
        <Match when={refused()}>{(refusal) => <Refusal refusal={refusal()} />}</Match>
      </Switch>
    </section>
  );
}

import { Index, Match, Show, Switch } from 'solid-js';
import type { Mixture } from '../../../shared/judgement/mixture';
import type { Settings } from '../../../shared/records/settings';
import type { Result } from '../../../shared/result';
import { brand } from '../../../shared/units/brand';
import { formatMass } from '../../../shared/units/format';
import { Refusal } from '../../parts/Refusal';
import { useWords } from '../../parts/useWords';
import { sayBottleAndBowl } from '../bottleAndBowl';
import type { BowlRefusal } from './bowlDraft';

/** The grams of each, live from the fields; or why this is not mixed. */
export function BowlGrams(props: {
  readonly bowl: Result<Mixture, BowlRefusal>;
  readonly settings: Settings;
}) {
  const words = useWords();
  const made = () => (props.bowl.ok ? props.bowl.value : null);
  const refused = () => (props.bowl.ok || props.bowl.error.kind === 'open' ? null : props.bowl.error);
  const write = (grams: number) => formatMass(brand(grams), props.settings.units, words.locale);
  return (
    <section class="panel" data-panel="grams" aria-live="polite">
      <h2>{words.mix.grams}</h2>
      <Switch fallback={<p class="soft">{words.mix.fieldsOpen}</p>}>
        <Match when={made()}>
          {(mixture) => (
            <>
              <table class="grams">
                <tbody>
                  <Index each={mixture().shades}>
                    {(shade) => (
                      <tr>
                        <td>{shade().shade}</td>
                        <td data-figure="shade">{write(shade().amountG)}</td>
                      </tr>
                    )}
                  </Index>
                  <tr>
                    <td>{words.mix.developer}</td>
                    <td data-figure="developer">{write(mixture().developerG)}</td>
                  </tr>
                  <tr class="together">
                    <td>{words.mix.together}</td>
                    <td data-figure="total">{write(mixture().totalG)}</td>
                  </tr>
                </tbody>
              </table>
              <p data-figure="strength">{sayBottleAndBowl(mixture(), words, props.settings.units)}</p>
              <Show when={mixture().remainderG > 0}>
                <p class="soft">{words.mix.remainder(write(mixture().remainderG))}</p>
              </Show>
            </>
          )}
        </Match>
        <Match when={refused()}>{(refusal) => <Refusal refusal={refusal()} />}</Match>
      </Switch>
    </section>
  );
}

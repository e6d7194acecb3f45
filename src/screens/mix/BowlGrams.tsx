import { Index, Show } from 'solid-js';
import type { Mixture } from '../../../shared/judgement/mixture';
import type { Settings } from '../../../shared/records/settings';
import type { Zone } from '../../../shared/records/zones';
import type { Result } from '../../../shared/result';
import { brand } from '../../../shared/units/brand';
import { formatMass, formatPercent } from '../../../shared/units/format';
import { useWords } from '../../parts/useWords';
import { GramsBeside, type GramsRefusal } from '../GramsBeside';
import type { TwoBottles } from './bowlDraft';

type Bowl = Result<Mixture, GramsRefusal>;
const madeOf = (bowl: Bowl): Mixture | null => (bowl.ok ? bowl.value : null);

/** The grams of each, live from the fields. */
export function BowlGrams(props: {
  readonly zone: Zone;
  readonly bowl: Bowl;
  /** Two bottles instead of one; none where nobody chose them. */
  readonly bottles?: TwoBottles | null;
  readonly settings: Settings;
}) {
  const words = useWords();
  const write = (grams: number) => formatMass(brand(grams), props.settings.units, words.locale);
  const sayBottle = (percent: number) =>
    words.mix.weighIn.bottle(formatPercent(percent, props.settings.units, words.locale));
  return (
    <Show when={madeOf(props.bowl)}>
      {(mixture) => (
        <section class="panel grams-panel" data-panel="grams" data-weighs={props.zone}>
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
              <Show
                when={props.bottles}
                fallback={
                  <tr>
                    <td>{words.mix.developer}</td>
                    <td data-figure="developer">{write(mixture().developerG)}</td>
                  </tr>
                }
              >
                {(bottles) => (
                  <>
                    <tr>
                      <td>{sayBottle(bottles().strongPercent)}</td>
                      <td data-figure="strong">{write(bottles().strongG)}</td>
                    </tr>
                    <tr>
                      <td>{sayBottle(bottles().weakPercent)}</td>
                      <td data-figure="weak">{write(bottles().weakG)}</td>
                    </tr>
                  </>
                )}
              </Show>
              <tr class="together">
                <td>{words.mix.together}</td>
                <td data-figure="total">{write(mixture().totalG)}</td>
              </tr>
            </tbody>
          </table>
          <Show when={mixture().developerOffG !== 0}>
            <p class="soft" data-figure="developer-off">
              {words.mix.developerOff(
                write(Math.abs(mixture().developerOffG)),
                mixture().developerOffG > 0 ? 'more' : 'less',
              )}
            </p>
          </Show>
          <Show when={mixture().remainderG > 0}>
            <p class="soft">{words.mix.remainder(write(mixture().remainderG))}</p>
          </Show>
        </section>
      )}
    </Show>
  );
}

/** Beside the button: how much in all and how strong, or why this is not mixed. */
export function BowlBeside(props: {
  readonly bowl: Bowl;
  readonly bottles?: TwoBottles | null;
  readonly settings: Settings;
}) {
  const words = useWords();
  const from = () => {
    const { bottles, bowl } = props;
    const made = madeOf(bowl);
    if (made === null || bottles === undefined || bottles === null) return null;
    const { strongPercent, weakPercent } = bottles;
    return {
      developerPercent: made.bottlePercent,
      bottles: [{ percent: strongPercent }, { percent: weakPercent }],
    };
  };
  return (
    <GramsBeside
      panel="bowl-said"
      made={props.bowl}
      settings={props.settings}
      say={({ totalG }, write) => words.mix.inAll(write(totalG))}
      from={from()}
      open={words.mix.fieldsOpen}
    />
  );
}

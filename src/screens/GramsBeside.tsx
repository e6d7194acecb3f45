import { Match, Switch } from 'solid-js';
import type { Mixture, MixtureRefusal } from '../../shared/judgement/mixture';
import type { PermitRefusal } from '../../shared/judgement/permitRefusal';
import type { BowlAnswers } from '../../shared/records/forms/bowl';
import type { Settings } from '../../shared/records/settings';
import type { Result } from '../../shared/result';
import { brand } from '../../shared/units/brand';
import { formatMass } from '../../shared/units/format';
import { Refusal } from '../parts/Refusal';
import { useWords } from '../parts/useWords';
import { sayBottleAndBowl } from './bottleAndBowl';
import './layout.css';

/** Why there are no grams to show: fields are still open, or the gate or the scale refuses. */
export type GramsRefusal =
  | { readonly kind: 'open' }
  | { readonly kind: 'permit'; readonly permit: PermitRefusal }
  | { readonly kind: 'mixture'; readonly mixture: MixtureRefusal };

/** Beside the button, live from the fields: how much and how strong, or why this is not mixed. */
export function GramsBeside(props: {
  readonly panel: string;
  readonly made: Result<Mixture, GramsRefusal>;
  readonly settings: Settings;
  /** The grams in words. */
  readonly say: (mixture: Mixture, write: (grams: number) => string) => string;
  /** Which bottles it comes from, where there are two of them. */
  readonly from?: Pick<BowlAnswers, 'developerPercent' | 'bottles'> | null;
  /** Said while fields are open. */
  readonly open: string;
}) {
  const words = useWords();
  const made = () => (props.made.ok ? props.made.value : null);
  const refused = () => (props.made.ok || props.made.error.kind === 'open' ? null : props.made.error);
  const write = (grams: number) => formatMass(brand(grams), props.settings.units, words.locale);
  return (
    <section class="grams-beside" data-panel={props.panel} aria-live="polite">
      <Switch fallback={<p class="soft">{props.open}</p>}>
        <Match when={made()}>
          {(mixture) => (
            <>
              <div class="grams-said" data-figure="grams">
                {props.say(mixture(), write)}
              </div>
              <p data-figure="strength">
                {sayBottleAndBowl(mixture(), words, props.settings.units, props.from ?? undefined)}
              </p>
            </>
          )}
        </Match>
        <Match when={refused()}>{(refusal) => <Refusal refusal={refusal()} />}</Match>
      </Switch>
    </section>
  );
}
